/**
 * The one way from the files of models/ to numbers the program uses. There is no list of
 * files to keep: every file of a folder is read, so a new lens or sitter is a new file.
 */
import * as v from 'valibot';
import { mmToM } from '../optics/units';
import { dimensionsOf, frameHeightOf } from './framing';
import { describeIssue } from './issue';
import {
  backdropFile,
  dimensionsFile,
  formatFile,
  framingFile,
  lensFile,
  sitterFile,
} from './schema';
import type { BackdropModel, FormatModel, FramingModel, LensModel, Models } from './types';

/** Every fault of the files, a line each: file, field, what was expected. */
export class ModelsError extends Error {
  override readonly name = 'ModelsError';
  constructor(readonly faults: readonly string[]) {
    super(faults.join('\n'));
  }
}

/**
 * Reads the parsed JSON files of models/, keyed by path below it ("lenses/85-f1-8.json").
 * Throws a ModelsError that lists every fault found.
 */
export function parseModels(files: Readonly<Record<string, unknown>>): Models {
  const faults: string[] = [];

  const read = <T>(path: string, schema: v.GenericSchema<unknown, T>): T | null => {
    const parsed = v.safeParse(schema, files[path]);
    if (parsed.success) return parsed.output;
    for (const issue of parsed.issues) faults.push(`models/${path}: ${describeIssue(issue)}`);
    return null;
  };

  const readFolder = <Raw extends { readonly id: string }, T extends { readonly id: string }>(
    folder: string,
    schema: v.GenericSchema<unknown, Raw>,
    convert: (raw: Raw) => T,
    size: (model: T) => readonly number[],
  ): ReadonlyMap<string, T> => {
    const found: T[] = [];
    for (const path of Object.keys(files)) {
      const name = new RegExp(`^${folder}/([^/]+)\\.json$`).exec(path)?.[1];
      const raw = name === undefined ? null : read(path, schema);
      if (raw === null) continue;
      if (raw.id !== name) {
        faults.push(`models/${path}: id: expected the file's name "${name}", received "${raw.id}"`);
      }
      found.push(convert(raw));
    }
    if (found.length === 0) faults.push(`models/${folder}: expected at least one sound file`);
    found.sort((a, b) => bySize(size(a), size(b)) || a.id.localeCompare(b.id, 'en'));
    return new Map(found.map((model) => [model.id, model]));
  };

  const sitters = readFolder(
    'sitters',
    sitterFile,
    (sitter) => sitter,
    () => [],
  );
  // Framings are listed by what they hold of one and the same sitter.
  const [someone] = sitters.values();
  const formats = readFolder('formats', formatFile, toFormat, ({ longSide, shortSide }) => [
    Math.hypot(longSide, shortSide),
  ]);
  const lenses = readFolder('lenses', lensFile, toLens, ({ focal, widest }) => [
    ...focal,
    ...widest,
  ]);
  const framings = readFolder('framings', framingFile, toFraming, (framing) =>
    someone ? [frameHeightOf(framing, dimensionsOf(someone)).usual] : [],
  );
  const backdrops = readFolder('backdrops', backdropFile, toBackdrop, ({ width }) => [width]);
  const dimensions = read('dimensions.json', dimensionsFile)?.dimensions;
  if (faults.length > 0 || dimensions === undefined) throw new ModelsError(faults);
  return { formats, lenses, framings, backdrops, sitters, dimensions };
}

/** Compares lists of numbers by the first that differs. */
function bySize(a: readonly number[], b: readonly number[]): number {
  const i = a.findIndex((value, index) => value !== b[index]);
  return i < 0 ? 0 : (a[i] ?? 0) - (b[i] ?? 0);
}

function toFormat(raw: v.InferOutput<typeof formatFile>): FormatModel {
  return {
    id: raw.id,
    name: raw.name,
    longSide: mmToM(raw.long_side_mm),
    shortSide: mmToM(raw.short_side_mm),
    circleOfConfusion: mmToM(raw.circle_of_confusion_mm),
    circleOfConfusionRule: raw.circle_of_confusion_rule,
    source: raw.source,
    how: raw.how,
  };
}

function toLens(raw: v.InferOutput<typeof lensFile>): LensModel {
  return {
    id: raw.id,
    name: raw.name,
    focal: [mmToM(raw.focal_mm[0]), mmToM(raw.focal_mm[1])],
    widest: raw.widest_f_number,
    smallest: raw.smallest_f_number,
    nearestFocus: [mmToM(raw.nearest_focus_mm[0]), mmToM(raw.nearest_focus_mm[1])],
    length: mmToM(raw.length_mm),
    ...(raw.largest_magnification === undefined
      ? {}
      : { largestMagnification: raw.largest_magnification }),
    ...(raw.entrance_pupil_mm === undefined ? {} : { entrancePupil: mmToM(raw.entrance_pupil_mm) }),
    ...(raw.pupil_magnification === undefined
      ? {}
      : { pupilMagnification: raw.pupil_magnification }),
    source: raw.source,
    how: raw.how,
  };
}

function toBackdrop({
  width_mm: width,
  ...rest
}: v.InferOutput<typeof backdropFile>): BackdropModel {
  return { ...rest, width: mmToM(width) };
}

function toFraming(raw: v.InferOutput<typeof framingFile>): FramingModel {
  const { eyes_at: eyesAt, camera_height: cameraHeight, ...rest } = raw;
  return { ...rest, eyesAt, cameraHeight };
}
