/** Fetches, composes, morphs and poses sitters off the page's own thread. */
import { sculptureUrls } from '../../models/sculptures';
import { buildSitter } from '../../sitter/build';
import { sculptures } from '../../sitter/compose';
import { ImpossibleDimensions } from '../../sitter/impossible';
import type { Changes } from '../../sitter/resolve';
import type { Looks, Pose, Sitter, SitterModel } from '../../sitter/types';

/** One person as asked for. */
export interface Wanted {
  readonly model: Pick<SitterModel, 'sculpture' | 'forms' | 'dimensions'>;
  readonly looks: Looks;
  readonly changes: Changes;
  readonly pose: Pose;
}
export interface Ask extends Wanted {
  readonly id: number;
}
export type Answer = { readonly id: number } & (
  | { readonly sitter: Sitter }
  | {
      /** A file that did not come, or the dimension that cannot be. */
      readonly failed: string;
      readonly impossible: boolean;
    }
);

const sculptureFor = sculptures(async (name) => {
  const url = sculptureUrls[name];
  if (!url) throw new Error(`no file is called "${name}"`);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return new Uint8Array(await response.arrayBuffer());
});

async function build({ model, looks, changes, pose }: Wanted): Promise<Sitter> {
  const sculpture = await sculptureFor(model, looks);
  const { dimensions, landmarks, meshes, landmarkVertices } = buildSitter(
    sculpture,
    { dimensions: model.dimensions, looks },
    changes,
    pose,
  );
  return { dimensions, landmarks, meshes, landmarkVertices };
}

self.onmessage = async ({ data }: MessageEvent<Ask>) => {
  const { id } = data;
  try {
    const sitter = await build(data);
    // Positions and normals are made for each build; the rest stays here for the next one.
    const moved = sitter.meshes.flatMap(({ positions, normals }) => [
      positions.buffer as ArrayBuffer,
      normals.buffer as ArrayBuffer,
    ]);
    self.postMessage({ id, sitter } satisfies Answer, { transfer: moved });
  } catch (error) {
    const failed = error instanceof Error ? error.message : String(error);
    const impossible = error instanceof ImpossibleDimensions;
    self.postMessage({ id, failed, impossible } satisfies Answer);
  }
};
