/** One picture to read: full-frame, upright, thin lens, eyes in focus, unless told otherwise. */
import { loadModels } from '../../src/models/node';
import { cameraAt, eyeDepth } from '../../src/optics/camera';
import { focalForFrame, sensorSides } from '../../src/optics/framing';
import type { Lens } from '../../src/optics/types';
import { metres, radians } from '../../src/optics/units';
import type { PictureInput } from '../../src/readings/types';
import { landmarksFor } from '../../src/sitter/landmarks';
import { posedLandmarks, posing } from '../../src/sitter/pose';
import { type Changes, resolveDimensions } from '../../src/sitter/resolve';
import { DIMENSIONS, type Dimensions, type Pose, UPRIGHT } from '../../src/sitter/types';
import { value } from '../optics/value';

export const models = loadModels();

export interface Asked {
  readonly standpoint: number;
  readonly frameHeight?: number;
  readonly sitter?: string;
  readonly changes?: Changes;
  readonly pose?: Partial<Pose>;
  readonly height?: number;
  readonly tilt?: number;
  readonly eyesAt?: number;
  readonly fNumber?: number;
  readonly backdrop?: number;
  readonly lens?: Lens;
  readonly cutFrom?: number;
}

/** A model's dimensions in millimetres. */
export function dimensionsOf(id = 'adult-woman', changes: Changes = {}): Dimensions {
  const model = models.sitters.get(id);
  if (!model) throw new Error(`no sitter ${id}`);
  const own = Object.fromEntries(DIMENSIONS.map((name) => [name, model.dimensions[name].mm]));
  return resolveDimensions(own as Dimensions, changes);
}

export function picture(asked: Asked): PictureInput {
  const format = models.formats.get('full-frame');
  if (!format) throw new Error('no full-frame format');
  const sensor = sensorSides(format, 'portrait');
  const dimensions = dimensionsOf(asked.sitter, asked.changes);
  const upright = landmarksFor(dimensions);
  const pose = { ...UPRIGHT, ...asked.pose };
  const place = {
    standpoint: metres(asked.standpoint),
    height: metres(asked.height ?? 0),
    tilt: radians(asked.tilt ?? 0),
    sensor,
    ...(asked.eyesAt === undefined ? {} : { eyesAt: asked.eyesAt }),
  };
  // Where the eyes are does not hang on the focal length.
  const depth = eyeDepth(value(cameraAt({ ...place, focal: metres(asked.standpoint * 1e-3) })));
  const focal = value(focalForFrame(metres(asked.frameHeight ?? 0.42), depth, sensor.height));
  return {
    camera: value(cameraAt({ ...place, focal })),
    format,
    sitter: { dimensions, landmarks: posedLandmarks(upright, posing(upright, dimensions, pose)) },
    lens: asked.lens ?? null,
    cutFromFocal: asked.cutFrom ?? null,
    fNumber: asked.fNumber ?? 8,
    focusDistance: depth,
    backdropDistance: asked.backdrop ?? 1.2,
    printHeight: 0.3,
    megapixels: 24,
  };
}
