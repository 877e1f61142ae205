/**
 * Stay back and crop: the framing is cut out of the wider picture of a fixed lens. The
 * standpoint, and with it the perspective, stays; pixels are what it costs.
 */
import { focalForFrame } from './framing';
import { imageDistance } from './lens';
import { above, andThen, mapResult, notPositive, refuse } from './result';
import type { Result, SensorSides } from './types';
import { type Metre, metres } from './units';

const PRINT_DOTS_PER_INCH = 300;
const INCH = 0.0254;

export interface CutRequest {
  /** Of the lens that is on the camera. */
  readonly focal: Metre;
  readonly fNumber: number;
  readonly focus: Metre;
  readonly sensor: SensorSides;
  /** Wanted, in the plane of focus. */
  readonly frameHeight: Metre;
  readonly megapixels: number;
}

export interface Cut {
  /** Side of the part kept over the side of the whole, and the same by area. */
  readonly linearShare: number;
  readonly areaShare: number;
  readonly megapixels: number;
  /** At 300 dots an inch. */
  readonly print: { readonly width: Metre; readonly height: Metre };
  /** The lens whose uncut picture it equals, blur included. */
  readonly asIf: { readonly focal: Metre; readonly fNumber: number };
}

/**
 * What cutting costs. Refuses a lens longer than the one that frames as wanted. The equal lens
 * has the same entrance pupil, hence N f'/f: it draws the same blur as a share of the picture.
 */
export function cutFrom(request: CutRequest): Result<Cut> {
  const { focal, fNumber, focus, sensor, frameHeight, megapixels } = request;
  const bad = notPositive(fNumber, sensor.width, megapixels);
  if (bad) return bad;
  return andThen(focalForFrame(frameHeight, focus, sensor.height), (needed) =>
    andThen(imageDistance(focal, focus), (image) => {
      if (above(focal, needed)) return refuse('lens-too-long', needed, focal);
      return mapResult(imageDistance(needed, focus), (neededImage) => {
        const linearShare = Math.min(1, image / neededImage);
        const pixelsHigh =
          linearShare * Math.sqrt((megapixels * 1e6 * sensor.height) / sensor.width);
        const height = (pixelsHigh / PRINT_DOTS_PER_INCH) * INCH;
        return {
          linearShare,
          areaShare: linearShare ** 2,
          megapixels: megapixels * linearShare ** 2,
          print: {
            width: metres((height * sensor.width) / sensor.height),
            height: metres(height),
          },
          asIf: { focal: needed, fNumber: (fNumber * needed) / focal },
        };
      });
    }),
  );
}
