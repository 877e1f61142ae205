/** The texts of the command line -> what is asked, in SI units. */
import type { FormatModel, Models } from '../models/types';
import { sensorSides } from '../optics/framing';
import type { Lens, Orientation, SensorSides } from '../optics/types';
import { metres } from '../optics/units';
import { type Parsed, parseAngle, parseFNumber, parseShare } from '../readings/parse';
import type { Changes } from '../sitter/resolve';
import type { LandmarkName, SitterModel } from '../sitter/types';
import type { Given, OptionName } from './args';
import { BadValue } from './bad-value';
import { changesOf } from './changes';
import { LANDMARKS } from './landmarks';
import { choice, length, positive, read } from './values';

export interface Request {
  readonly sitter: SitterModel;
  readonly changes: Changes;
  readonly turn: number;
  readonly nod: number;
  readonly gaze: 'ahead' | 'lens';
  readonly format: FormatModel;
  readonly sensor: SensorSides;
  readonly standpoints: readonly number[];
  readonly view:
    | { readonly frameHeight: number; readonly cutFrom: number | null }
    | { readonly focal: number };
  readonly eyesAt: number | null;
  readonly cameraHeight: number;
  readonly tilt: number;
  readonly fNumber: number;
  readonly lens: Lens | null;
  readonly backdrop: number;
  readonly printHeight: number;
  readonly megapixels: number;
  readonly ratios: readonly (readonly [LandmarkName, LandmarkName])[];
}

const number = (text: string): Parsed => {
  const parsed = parseFNumber(text);
  return parsed.ok ? parsed : { ok: false, why: `"${text}" is not a number above 0.` };
};

const insideFrame = (text: string): Parsed => {
  const parsed = parseShare(text);
  return parsed.ok && (parsed.value < 0 || parsed.value > 1)
    ? { ok: false, why: `"${text}" is not between 0 and 1.` }
    : parsed;
};

function ratiosOf(given: Given): Request['ratios'] {
  const landmark = (name: string | undefined): LandmarkName => {
    const found = LANDMARKS.find((known) => known === name);
    if (!found) throw new BadValue(`--ratio: "${name ?? ''}" is not a landmark. See --list.`);
    return found;
  };
  return (given.ratio ?? []).map((text) => {
    const [a, b] = text.split('/');
    return [landmark(a), landmark(b)];
  });
}

function viewOf(given: Given): Request['view'] {
  const [frame, focal, cut] = [given['frame-height'], given['focal-length'], given['cut-from']];
  if (frame && focal) throw new BadValue('--frame-height and --focal-length exclude each other.');
  if (focal?.[0] !== undefined) {
    if (cut) throw new BadValue('--cut-from needs --frame-height, not --focal-length.');
    return { focal: read('focal-length', focal[0], positive(length('mm'))) };
  }
  if (frame?.[0] === undefined) throw new BadValue('--frame-height or --focal-length is needed.');
  return {
    frameHeight: read('frame-height', frame[0], positive(length())),
    cutFrom: cut?.[0] === undefined ? null : read('cut-from', cut[0], positive(length('mm'))),
  };
}

function formatOf(given: Given, models: Models): FormatModel {
  const format = choice('format', given.format?.[0] ?? 'full-frame', models.formats);
  const [circle] = given['circle-of-confusion'] ?? [];
  if (circle === undefined) return format;
  const value = read('circle-of-confusion', circle, positive(length('mm')));
  return { ...format, circleOfConfusion: metres(value) };
}

const GAZES: ReadonlyMap<string, Request['gaze']> = new Map([
  ['ahead', 'ahead'],
  ['lens', 'lens'],
]);
const ORIENTATIONS: ReadonlyMap<string, Orientation> = new Map([
  ['portrait', 'portrait'],
  ['landscape', 'landscape'],
]);

/** @throws BadValue for the first text that cannot be taken. */
export function requestOf(given: Given, models: Models): Request {
  const optional = (name: OptionName, parse: (text: string) => Parsed, otherwise: number) => {
    const text = given[name]?.[0];
    return text === undefined ? otherwise : read(name, text, parse);
  };
  const standpoints = (given.standpoint ?? []).map((text) =>
    read('standpoint', text, positive(length())),
  );
  if (standpoints.length === 0)
    throw new BadValue('--standpoint is needed, once for each picture.');
  const sitter = choice('sitter', given.sitter?.[0] ?? 'adult-woman', models.sitters);
  const format = formatOf(given, models);
  const orientation = choice('orientation', given.orientation?.[0] ?? 'portrait', ORIENTATIONS);
  const eyesAt = given['eyes-at']?.[0];
  const lens = given.lens?.[0];
  return {
    sitter,
    changes: changesOf(sitter, given.set),
    turn: optional('turn', parseAngle, 0),
    nod: optional('nod', parseAngle, 0),
    gaze: choice('gaze', given.gaze?.[0] ?? 'ahead', GAZES),
    format,
    sensor: sensorSides(format, orientation),
    standpoints,
    view: viewOf(given),
    eyesAt: eyesAt === undefined ? null : read('eyes-at', eyesAt, insideFrame),
    cameraHeight: optional('camera-height', length(), 0),
    tilt: optional('tilt', parseAngle, 0),
    fNumber: optional('f-number', parseFNumber, 8),
    lens: lens === undefined ? null : choice('lens', lens, models.lenses),
    backdrop: optional('backdrop', positive(length()), 1.5),
    printHeight: optional('print-height', positive(length()), 0.3),
    megapixels: optional('megapixels', number, 24),
    ratios: ratiosOf(given),
  };
}
