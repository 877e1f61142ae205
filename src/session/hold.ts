/**
 * Crop match: the image distance that gives a picture the held size. A hold measures something of
 * the sitter as an angle seen from the camera; its size on the sensor is that span times s'.
 */
import { toCameraAxes } from '../optics/camera';
import { imageDistanceForAngles } from '../optics/framing';
import { focalForImageDistance } from '../optics/lens';
import type { SensorSides } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import { REGION, type Sitter } from '../sitter/types';
import type { Cast } from './cast';
import { type Lead, leadFor, lookingPupils } from './gaze';
import { type Place, placeOf } from './place';
import type { Crop, Hold, Picture, Session } from './types';

/** Half the breadth of the jaw's foremost part, in which the chin's outline is looked for, metres. */
const CHIN_REACH = 0.02;
/** Points nearer to the lens than this are not drawn, metres. */
const NEAREST_DRAWN = 0.01;

type Eye = Pick<Place, 'position' | 'tilt'>;

/**
 * Height of a point over its depth, from the optical axis; NaN when it is not before the lens.
 * The camera's axes hang linearly on the point, so three points give them for all: a mesh has
 * a hundred thousand.
 */
function riseFrom(eye: Eye): (y: number, z: number) => number {
  const origin = toCameraAxes(eye, [0, 0, 0]);
  const alongY = toCameraAxes(eye, [0, 1, 0]);
  const alongZ = toCameraAxes(eye, [0, 0, 1]);
  const [upAtOrigin, backAtOrigin] = [origin[1], origin[2]];
  const [upByY, backByY] = [alongY[1] - upAtOrigin, alongY[2] - backAtOrigin];
  const [upByZ, backByZ] = [alongZ[1] - upAtOrigin, alongZ[2] - backAtOrigin];
  return (y, z) => {
    const depth = -(backAtOrigin + y * backByY + z * backByZ);
    return depth < NEAREST_DRAWN ? Number.NaN : (upAtOrigin + y * upByY + z * upByZ) / depth;
  };
}

interface Outline {
  readonly top: number;
  readonly bottom: number;
}

/** The first picture's outline is asked for by every other one, at every step of a drag. */
const outlines = new WeakMap<Sitter, Map<string, Outline | null>>();
const OUTLINES_KEPT = 64;

/**
 * Tangents of the crown's and the chin's angle from the axis, as the outline is drawn: the
 * highest of the bare head and the lowest of the chin. Near the camera that crown is the
 * forehead's horizon, not the vertex. Null when crown or chin is not before the lens.
 */
export function headOutline(eye: Eye, sitter: Sitter): Outline | null {
  const known = outlines.get(sitter) ?? new Map<string, Outline | null>();
  outlines.set(sitter, known);
  const key = `${eye.position} ${eye.tilt}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  if (known.size >= OUTLINES_KEPT) known.clear();
  const outline = drawnOutline(eye, sitter);
  known.set(key, outline);
  return outline;
}

function drawnOutline(eye: Eye, sitter: Sitter): Outline | null {
  const { vertex, menton } = sitter.landmarks;
  const rise = riseFrom(eye);
  let top = rise(vertex[1], vertex[2]);
  let bottom = rise(menton[1], menton[2]);
  for (const { substance, positions, regions } of sitter.meshes) {
    if (substance !== 'skin') continue;
    for (let i = 0; i < regions.length; i++) {
      const region = regions[i];
      // The edge between face and neck runs under the chin, so its lowest point may lie on either.
      if (region !== REGION.face && region !== REGION.scalp && region !== REGION.neck) continue;
      const y = positions[3 * i + 1] ?? 0;
      const z = positions[3 * i + 2] ?? 0;
      const height = rise(y, z);
      if (height > top && region !== REGION.neck) top = height;
      else if (height < bottom) {
        const x = positions[3 * i] ?? 0;
        const squared = (x - menton[0]) ** 2 + (y - menton[1]) ** 2 + (z - menton[2]) ** 2;
        if (squared < CHIN_REACH ** 2) bottom = height;
      }
    }
  }
  return top > bottom ? { top, bottom } : null;
}

/** Size of the held measure on a plane at unit distance before the lens, or null when not in view. */
function spanOf(
  hold: Exclude<Hold, 'frame-height'>,
  eye: Eye,
  { sitter, gaze }: Lead,
): number | null {
  if (hold === 'head-height') {
    const head = headOutline(eye, sitter);
    return head === null ? null : head.top - head.bottom;
  }
  const pupils = lookingPupils(sitter, gaze, eye.position);
  const [left, right] = (['pupil_left', 'pupil_right'] as const).map((name) => {
    const [x, y, z] = toCameraAxes(eye, pupils[name]);
    return -z < NEAREST_DRAWN ? null : ([x / -z, y / -z] as const);
  });
  return left && right ? Math.hypot(left[0] - right[0], left[1] - right[1]) : null;
}

/** What of a session the crop hangs on. */
export type Framed = Pick<Session, 'crop' | 'pictures' | 'people'>;

export interface Held {
  readonly hold: Hold;
  /** What all pictures have equal: metres at the eye plane, or metres on the sensor. */
  readonly value: number;
}

/** s' that frames `frameHeight` in the plane at `depth`: h s / H. */
const imageForFrame = (frameHeight: number, depth: Metre, sensor: SensorSides): Metre =>
  metres((sensor.height * depth) / frameHeight);

/**
 * What the session's crop holds: the frame height itself, or the size the first picture gives
 * its measure at that frame height.
 */
export function heldBy(session: Framed, sensor: SensorSides, cast: Cast): Held {
  const { hold, frameHeight } = session.crop;
  const [first] = session.pictures;
  const whole: Held = { hold: 'frame-height', value: frameHeight };
  if (hold === 'frame-height' || !first) return whole;
  const place = placeOf(first, sensor);
  const span = spanOf(hold, place, leadFor(session, cast, first));
  if (span === null) return whole;
  return { hold, value: span * imageForFrame(frameHeight, place.depth, sensor) };
}

/** Image distance with which a camera at `place` gives the held measure its size. */
export function imageForHeld(
  held: Held,
  crop: Pick<Crop, 'frameHeight'>,
  place: Place,
  sensor: SensorSides,
  lead: Lead,
): Metre {
  if (held.hold !== 'frame-height') {
    const span = spanOf(held.hold, place, lead);
    const image = imageDistanceForAngles(metres(held.value), span ?? 0, 0);
    if (image.ok) return image.value;
  }
  return imageForFrame(crop.frameHeight, place.depth, sensor);
}

/** Focal length by which a picture of the session follows its crop, thin lens, metres. */
export function cropFocal(
  session: Framed,
  picture: Pick<Picture, 'standpoint' | 'cameraHeight' | 'tilt' | 'of'>,
  sensor: SensorSides,
  cast: Cast,
): Metre {
  const place = placeOf(picture, sensor);
  const held = heldBy(session, sensor, cast);
  const lead = leadFor(session, cast, picture);
  const image = imageForHeld(held, session.crop, place, sensor, lead);
  const focal = focalForImageDistance(image, place.depth);
  if (!focal.ok) throw new RangeError(`crop: ${focal.reason}`);
  return focal.value;
}
