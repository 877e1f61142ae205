/** Casts the rays of visibility off the page's own thread. The sitter is sent once, then places. */
import type { Vec3 } from '../../optics/types';
import { type Visibility, visibility } from '../../readings/visibility';
import type { Sitter } from '../../sitter/types';

export type Seen = Pick<Sitter, 'meshes' | 'landmarks'>;
export type Ask = { readonly sitter: Seen } | { readonly place: Vec3 };
export interface Answer {
  readonly place: Vec3;
  readonly value: Visibility;
}

let sitter: Seen | null = null;

self.onmessage = ({ data }: MessageEvent<Ask>) => {
  if ('sitter' in data) sitter = data.sitter;
  else if (sitter)
    self.postMessage({ ...data, value: visibility(sitter, data.place) } satisfies Answer);
};
