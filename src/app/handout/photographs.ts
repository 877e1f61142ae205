/** Pictures of pages, rendered once for each size and kept as long as they are used. */
import { runOf } from '../../session/kit';
import type { Session } from '../../session/types';
import type { Shown } from '../compare/shown';
import type { Darkroom } from '../darkroom/useDarkroom';
import { buildKey } from '../state/person';

/** Views a pixel of the pictures on screen; what is printed has more. */
const SAMPLES = 4;
/** The page answers only between tiles, pixels a side. */
const TILE = 512;

export interface PhotographRequest {
  readonly session: Session;
  readonly shown: Shown;
  /** Pixels across. */
  readonly width: number;
  readonly samples?: number;
  readonly signal?: AbortSignal;
}

export const heightFor = ({ shown, width }: Pick<PhotographRequest, 'shown' | 'width'>): number => {
  const { sensor } = shown.resolved.camera;
  return Math.round((width * sensor.height) / sensor.width);
};

/** Equal for requests whose pictures are equal. */
export const photographKey = ({ session, shown, width, samples }: PhotographRequest): string =>
  JSON.stringify([
    shown.resolved.camera,
    shown.picture.of,
    session.people.map((person) => [buildKey(person), person.gaze]),
    session.beside,
    session.light,
    runOf(session.room),
    width,
    samples ?? SAMPLES,
  ]);

/** Renders a picture onto a canvas. @throws AbortError when the signal is raised. */
export function photograph(
  darkroom: Darkroom,
  request: PhotographRequest,
): Promise<OffscreenCanvas> {
  const { session, shown, width, samples = SAMPLES, signal } = request;
  return darkroom.use(
    session,
    async ({ stage }) => {
      const height = heightFor(request);
      const canvas = new OffscreenCanvas(width, height);
      const pen = canvas.getContext('2d', { alpha: false });
      if (!pen) throw new Error('the browser gives no canvas');
      let y = 0;
      for await (const band of stage.renderPicture(shown.resolved.camera, width, height, {
        sitters: shown.company,
        samples,
        tileSide: TILE,
        ...(signal && { signal }),
      })) {
        const rows = new Uint8ClampedArray(band.buffer, band.byteOffset, band.length);
        pen.putImageData(new ImageData(rows, width), 0, y);
        y += band.length / (4 * width);
      }
      return canvas;
    },
    signal,
  );
}
