/**
 * Stay back and crop: the framing is cut out of the wider picture of a fixed lens. The
 * standpoint, and with it the perspective, stays; pixels are what it costs.
 */
import { focalForFrame, type Part } from './framing';
import { imageDistance } from './lens';
import { above, andThen, mapResult, notPositive, ok, refuse } from './result';
import type { Frustum, Result, SensorSides } from './types';
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

/**
 * Which part of the whole picture a wanted frame is. Refuses one that reaches beyond it: the
 * frame is then placed too far from the middle of that lens's picture.
 */
export function partWithin(whole: Frustum, wanted: Frustum): Result<Part> {
  const width = whole.right - whole.left;
  const height = whole.top - whole.bottom;
  const bad = notPositive(width, height);
  if (bad) return bad;
  const part = {
    x0: (wanted.left - whole.left) / width,
    x1: (wanted.right - whole.left) / width,
    y0: (whole.top - wanted.top) / height,
    y1: (whole.top - wanted.bottom) / height,
  };
  const beyond = Math.max(-part.x0, part.x1 - 1, -part.y0, part.y1 - 1);
  return above(1 + beyond, 1) ? refuse('lens-too-long', 0, beyond) : ok(part);
}
