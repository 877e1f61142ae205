/** What is asked -> one camera, with its readings, for each standpoint. */
import { cameraAt, eyeDepth, projectInPicture } from '../optics/camera';
import { focalForFrame } from '../optics/framing';
import type { Camera, Result } from '../optics/types';
import { type Metre, metres, radians } from '../optics/units';
import { formatFocal, formatLength } from '../readings/format';
import { landmarkRatio } from '../readings/measure-face';
import { orNull } from '../readings/measure-lens';
import { type Measures, measure } from '../readings/measures';
import type { PictureInput } from '../readings/types';
import { visibility } from '../readings/visibility';
import { looking } from '../session/gaze';
import { fitLens } from '../session/lens-fit';
import { type Limit, limitFrom } from '../session/limit';
import { limitSentence } from '../session/limit-words';
import { placeOf } from '../session/place';
import type { LandmarkName, Sitter } from '../sitter/types';
import { BadValue } from './bad-value';
import { LANDMARKS } from './landmarks';
import type { Request } from './request';

export interface PlacedLandmark {
  readonly name: LandmarkName;
  readonly position: readonly [number, number, number];
  /** From the picture's centre, metres on the sensor; null when not before the lens. */
  readonly image: readonly [u: number, v: number] | null;
}

export interface CliPicture {
  readonly measures: Measures;
  readonly landmarks: readonly PlacedLandmark[];
  readonly ratios: readonly { readonly name: string; readonly value: number | null }[];
  /** The limit of the chosen lens that this picture passes. */
  readonly lensLimit: Limit | null;
}

/** The value, or the refusal as a bad value of the standpoint it was asked for. */
function granted<T>(result: Result<T>, standpoint: number): T {
  if (result.ok) return result.value;
  const why = limitSentence(limitFrom(result, null, []), 'metric');
  throw new BadValue(`--standpoint ${standpoint} m: ${why}`);
}

function cameraFor(request: Request, standpoint: Metre): Camera {
  const { view, sensor, eyesAt, cameraHeight, tilt } = request;
  const { position, depth, refusals } = placeOf({ standpoint, cameraHeight, tilt }, sensor);
  const [refusal] = refusals;
  if (refusal) granted(refusal, standpoint);
  const place = {
    standpoint,
    height: metres(position[1]),
    tilt: radians(tilt),
    sensor,
    ...(eyesAt === null ? {} : { eyesAt }),
  };
  if ('focal' in view) {
    return granted(cameraAt({ ...place, focal: metres(view.focal) }), standpoint);
  }
  const focal = granted(focalForFrame(metres(view.frameHeight), depth, sensor.height), standpoint);
  if (view.cutFrom !== null && view.cutFrom > focal) {
    throw new BadValue(
      `--cut-from: from ${formatLength(standpoint, 'metric', 'distance')} the frame takes ${formatFocal(focal)}; a longer lens cannot hold it.`,
    );
  }
  return granted(cameraAt({ ...place, focal }), standpoint);
}

function limitOf(
  { lens, sensor, fNumber, view }: Request,
  { lens: figures }: Measures,
): Limit | null {
  if (!lens) return null;
  const { focal, focusDistance, magnification } = figures;
  const frameHeight = metres(sensor.height / magnification);
  return fitLens(lens, {
    focal,
    focus: focusDistance,
    fNumber,
    frameHeight,
    sensorHeight: sensor.height,
    isFocalFixed: 'focal' in view || view.cutFrom !== null,
    standpointPerFocus: figures.standpoint / focusDistance,
  }).limit;
}

/** A camera a standpoint. @throws BadValue where a standpoint cannot do what is asked. */
export const camerasOf = (request: Request): Camera[] =>
  request.standpoints.map((standpoint) => cameraFor(request, metres(standpoint)));

/** One picture a camera. */
export function picturesOf(
  request: Request,
  cameras: readonly Camera[],
  built: Sitter,
): CliPicture[] {
  return cameras.map((camera) => {
    const sitter = looking(built, request.gaze, camera.position);
    const input: PictureInput = {
      camera,
      format: request.format,
      sitter,
      lens: request.lens,
      cutFromFocal: 'focal' in request.view ? null : request.view.cutFrom,
      fNumber: request.fNumber,
      focusDistance: eyeDepth(camera),
      backdropDistance: request.backdrop,
      printHeight: request.printHeight,
      megapixels: request.megapixels,
    };
    const measures = measure(input, visibility(sitter, camera.position));
    return {
      measures,
      landmarks: LANDMARKS.map((name) => {
        const position = sitter.landmarks[name];
        const drawn = orNull(projectInPicture(camera, position));
        return { name, position, image: drawn && [drawn.u, drawn.v] };
      }),
      ratios: request.ratios.map(([a, b]) => ({
        name: `${a}/${b}`,
        value: landmarkRatio(input, a, b),
      })),
      lensLimit: limitOf(request, measures),
    };
  });
}
