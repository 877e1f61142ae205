/** What each file of models/ must hold, in millimetres as written there. */
import * as v from 'valibot';
import {
  AGE_FORMS,
  BEARDS,
  CLOTHES,
  DIMENSIONS,
  HAIR_STYLES,
  SCULPTURE_NAMES,
  type SitterModel,
} from '../sitter/types';
import { LEVELS } from './types';

const text = v.pipe(v.string(), v.nonEmpty());
const positive = v.pipe(v.number(), v.finite(), v.gtValue(0));
const share = v.pipe(v.number(), v.finite(), v.gtValue(0), v.ltValue(1));
const sourced = { source: text, how: text };

/** Two numbers, shortest mark first. */
const ends = v.tuple([positive, positive]);
const rising = v.pipe(
  ends,
  v.check(([short, long]) => short <= long, 'expected the shorter mark first'),
);

export const formatFile = v.pipe(
  v.strictObject({
    id: text,
    name: text,
    long_side_mm: positive,
    short_side_mm: positive,
    circle_of_confusion_mm: positive,
    circle_of_confusion_rule: text,
    ...sourced,
  }),
  v.forward(
    v.check(
      (format) => format.short_side_mm <= format.long_side_mm,
      'expected at most long_side_mm',
    ),
    ['short_side_mm'],
  ),
);

export const lensFile = v.pipe(
  v.strictObject({
    id: text,
    name: text,
    focal_mm: rising,
    widest_f_number: ends,
    smallest_f_number: positive,
    nearest_focus_mm: ends,
    length_mm: positive,
    largest_magnification: v.optional(positive),
    entrance_pupil_mm: v.optional(positive),
    pupil_magnification: v.optional(positive),
    ...sourced,
  }),
  v.forward(
    v.check(
      (lens) => lens.smallest_f_number >= Math.max(...lens.widest_f_number),
      'expected at least the larger of widest_f_number',
    ),
    ['smallest_f_number'],
  ),
);

const level = v.picklist(LEVELS);
const rule = v.strictObject({
  from: level,
  to: v.union([level, v.tuple([level, level])]),
  room: v.pipe(v.number(), v.finite(), v.gtValue(-1), v.maxValue(2)),
});

export const framingFile = v.strictObject({
  id: text,
  name: text,
  orientation: v.picklist(['portrait', 'landscape']),
  eyes_at: share,
  least: rule,
  usual: rule,
  most: rule,
  cut: text,
  camera_height: text,
  ...sourced,
});

export const backdropFile = v.strictObject({
  id: text,
  name: text,
  width_mm: positive,
  use: v.exactOptional(text),
  ...sourced,
});

/** A share that may be none. */
const part = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
const colour = v.pipe(v.string(), v.hexColor());

export const sitterFile = v.strictObject({
  id: text,
  name: text,
  noun: text,
  pronoun: v.picklist(['her', 'him', 'them']),
  sculpture: v.picklist(SCULPTURE_NAMES),
  forms: v.strictObject(v.entriesFromList(AGE_FORMS, v.exactOptional(part))),
  looks: v.strictObject({
    hair: v.picklist(HAIR_STYLES),
    beard: v.picklist(BEARDS),
    glasses: v.boolean(),
    clothes: v.picklist(CLOTHES),
    smile: part,
    colours: v.strictObject({
      skin: colour,
      hair: colour,
      eyes: colour,
      top: colour,
      outer: colour,
      trousers: colour,
    }),
  }),
  dimensions: v.strictObject(
    v.entriesFromList(DIMENSIONS, v.strictObject({ mm: positive, ...sourced })),
  ),
}) satisfies v.GenericSchema<unknown, SitterModel>;

const percentiles = v.strictObject({
  p1: positive,
  p5: positive,
  p50: positive,
  p95: positive,
  p99: positive,
});

const survey = v.strictObject({
  citation: text,
  population: text,
  n: v.strictObject({ female: positive, male: positive }),
});

const definition = v.strictObject({
  name: text,
  kind: text,
  definition: text,
  survey: v.exactOptional(text),
  female: v.exactOptional(percentiles),
  male: v.exactOptional(percentiles),
  note: v.exactOptional(text),
});

export const dimensionsFile = v.pipe(
  v.strictObject({
    about: text,
    surveys: v.record(text, survey),
    otherSources: v.record(text, text),
    dimensions: v.strictObject(v.entriesFromList(DIMENSIONS, definition)),
  }),
  v.rawCheck(({ dataset, addIssue }) => {
    if (!dataset.typed) return;
    for (const [name, { survey: cited }] of Object.entries(dataset.value.dimensions)) {
      if (cited !== undefined && !(cited in dataset.value.surveys)) {
        addIssue({ message: `expected ${name} to name one of surveys, received "${cited}"` });
      }
    }
  }),
);
