/** Casts the rays of visibility off the page's own thread. The sitters are sent once, then places. */
import type { Vec3 } from '../../optics/types';
import { type Visibility, visibility } from '../../readings/visibility';
import type { Sitter } from '../../sitter/types';

export type Seen = Pick<Sitter, 'meshes' | 'landmarks'>;

/** A place to look from, and where who is in the picture too stands; metres, the sitter's frame. */
export interface Look {
  readonly place: Vec3;
  readonly beside: Vec3 | null;
}

export type Ask = { readonly sitter: Seen; readonly other: Seen | null } | { readonly look: Look };
export interface Answer {
  readonly look: Look;
  readonly value: Visibility;
}

let people: { readonly sitter: Seen; readonly other: Seen | null } | null = null;

self.onmessage = ({ data }: MessageEvent<Ask>) => {
  if ('sitter' in data) {
    people = data;
    return;
  }
  if (!people) return;
  const { look } = data;
  const { sitter, other } = people;
  const neighbours = other && look.beside ? [{ meshes: other.meshes, at: look.beside }] : [];
  self.postMessage({ look, value: visibility(sitter, look.place, neighbours) } satisfies Answer);
};
