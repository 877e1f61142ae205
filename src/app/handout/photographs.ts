/** Pictures of pages, rendered once for each size and kept as long as they are used. */
import { runOf } from '../../session/kit';
import type { Session } from '../../session/types';
import type { Shown } from '../compare/shown';
import { paintPicture } from '../darkroom/paint';
import type { Darkroom } from '../darkroom/useDarkroom';
import { buildKey } from '../state/person';

/** Views a pixel of the pictures on screen, and of those printed. */
const SAMPLES = 4;
const PRINTED_SAMPLES = 16;
export const DOTS_PER_INCH = 300;
const QUALITY = 0.92;
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

const heightFor = ({ shown, width }: Pick<PhotographRequest, 'shown' | 'width'>): number => {
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
      const box = { x: 0, y: 0, width, height };
      await paintPicture(pen, stage, shown, box, {
        samples,
        tileSide: TILE,
        ...(signal && { signal }),
      });
      return canvas;
    },
    signal,
  );
}

export const jpegOf = (canvas: OffscreenCanvas): Promise<Blob> =>
  canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });

/** A picture as it is printed, a JPEG so many pixels wide. @throws AbortError when the signal is raised. */
export async function printedPhotograph(
  darkroom: Darkroom,
  request: PhotographRequest,
  width: number,
  signal: AbortSignal,
): Promise<Blob> {
  const canvas = await photograph(darkroom, {
    ...request,
    width: Math.round(width),
    samples: PRINTED_SAMPLES,
    signal,
  });
  return jpegOf(canvas);
}
