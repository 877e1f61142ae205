/** How a picture gets its view: the focal length on the camera and the part of its picture kept. */
import { focalForFrame, frameForFocal } from '../optics/framing';
import { focalForImageDistance, imageDistance } from '../optics/lens';
import type { Lens, Refusal, SensorSides } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import { actingFocal } from './lens-fit';
import { LIMITS } from './limits';
import type { Place } from './place';
import type { Picture } from './types';

// A lens solved for may miss the frame it was solved for by rounding alone.
const ROUNDING = 1e-9;

export interface View {
  /** As it acts, of what is on the camera. */
  readonly focal: Metre;
  /** As asked for; longer than `focal` only when refused. */
  readonly wantedFocal: Metre;
  /** The longest that would do. */
  readonly longest: Metre;
  /** Side of the part kept over the side of the whole; 1 unless cut. */
  readonly share: number;
  readonly refusal: Refusal | null;
}

/** A fixed focal length, or the longest that still frames the least legal height. */
function fixedView(wanted: Metre, depth: Metre, sensor: SensorSides): View {
  const least = metres(LIMITS.frameHeight.least);
  const longest = focalForFrame(least, depth, sensor.height);
  if (!longest.ok || wanted <= longest.value) {
    return { focal: wanted, wantedFocal: wanted, longest: wanted, share: 1, refusal: null };
  }
  const frame = frameForFocal(wanted, depth, sensor.height);
  return {
    focal: longest.value,
    wantedFocal: wanted,
    longest: longest.value,
    share: 1,
    refusal: frame.ok
      ? { ok: false, reason: 'frame-too-small', limit: least, asked: frame.value }
      : frame,
  };
}

/**
 * The view of a picture whose crop asks for `wantedImage`. A fixed focal length is the mark of
 * the lens, when one is named, and else a thin lens's own.
 */
export function viewOf(
  view: Picture['view'],
  place: Place,
  sensor: SensorSides,
  wantedImage: Metre,
  lens: Lens | null,
): View {
  const needed = focalForImageDistance(wantedImage, place.depth);
  if (!needed.ok) throw new RangeError(`crop: ${needed.reason}`);
  const focal = needed.value;
  if (view.by === 'crop') {
    return { focal, wantedFocal: focal, longest: focal, share: 1, refusal: null };
  }
  const mark = metres(view.focal);
  const whole = fixedView(lens ? actingFocal(lens, mark, place.depth) : mark, place.depth, sensor);
  const image = imageDistance(whole.focal, place.depth);
  if (view.by === 'lens' || whole.refusal !== null || !image.ok) return whole;
  const share = image.value / wantedImage;
  if (share <= 1 + ROUNDING) return { ...whole, share: Math.min(1, share) };
  return {
    ...whole,
    longest: focal,
    refusal: { ok: false, reason: 'lens-too-long', limit: focal, asked: whole.focal },
  };
}
