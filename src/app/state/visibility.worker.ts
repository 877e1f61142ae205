/** Casts the rays of visibility off the page's own thread. The sitter is sent once, then places. */

import type { Vec3 } from '../../optics/types';
import { visibility } from '../../readings/visibility';
import type { SitterMesh } from '../../sitter/types';

export type Ask = { readonly meshes: readonly SitterMesh[] } | { readonly place: Vec3 };
export interface Answer {
  readonly place: Vec3;
  readonly value: ReturnType<typeof visibility>;
}

let meshes: readonly SitterMesh[] = [];

self.onmessage = ({ data }: MessageEvent<Ask>) => {
  if ('meshes' in data) meshes = data.meshes;
  else self.postMessage({ ...data, value: visibility(meshes, data.place) } satisfies Answer);
};
