/** Stills rendered in the page, as pixels. */
import type { Camera } from '../../src/optics/types';
import type { Look, StillOptions } from '../../src/stage';
import type { App } from './fixture';
import type { Image } from './image';

export type StillAsked = Omit<StillOptions, 'signal' | 'onProgress'> & { readonly look?: Look };

/** A mesh that is seen instead of the sitter: xyz triples, metres; triangles facing the camera. */
export interface Thing {
  readonly positions: readonly number[];
  readonly indices: readonly number[];
}

/** A camera's picture of the stage's own sitter, or of a thing in its place. */
export async function still(
  app: App,
  camera: Camera,
  [width, height]: readonly [number, number],
  options: StillAsked,
  thing: Thing | null = null,
): Promise<Image> {
  const text = await app.page.evaluate(
    async ([view, wide, high, how, only]) => {
      const hook = window.standpoint;
      if (!hook?.stage) throw new Error('the stage is not ready');
      const seen = (thing: NonNullable<typeof only>) => {
        const count = thing.positions.length / 3;
        const mesh = {
          name: 'thing',
          substance: 'shoes' as const,
          positions: Float32Array.from(thing.positions),
          normals: Float32Array.from(thing.positions, (_, i) => (i % 3 === 2 ? 1 : 0)),
          colours: new Uint8Array(3 * count),
          openness: new Uint8Array(count).fill(255),
          indices: Uint32Array.from(thing.indices),
          regions: new Uint8Array(count),
        };
        return { ...hook.cast['1'], meshes: [mesh], landmarkVertices: {} as never };
      };
      const options = only
        ? { ...how, sitters: [{ sitter: seen(only), at: [0, 0, 0] as const }] }
        : how;
      let binary = '';
      for await (const band of hook.stage.renderPicture(view, wide, high, options))
        for (let i = 0; i < band.length; i += 0x8000)
          binary += String.fromCharCode(...band.subarray(i, i + 0x8000));
      return btoa(binary);
    },
    [camera, width, height, options, thing] as const,
  );
  return { width, height, data: new Uint8Array(Buffer.from(text, 'base64')) };
}

/** Greatest difference in a channel, pixel by pixel. */
export function apart(a: Image, b: Image): number[] {
  if (a.data.length !== b.data.length || a.width !== b.width)
    throw new Error('pictures of two sizes');
  return Array.from({ length: a.width * a.height }, (_, i) =>
    Math.max(
      ...[0, 1, 2].map((c) =>
        Math.abs((a.data[4 * i + c] as number) - (b.data[4 * i + c] as number)),
      ),
    ),
  );
}
