/** What a session of the present version must hold. Ranges are not checked here but clamped after. */
import * as v from 'valibot';
import { ARMS, DIMENSIONS, STANCES } from '../sitter/types';
import { NOTES_LENGTH, TITLE_LENGTH } from './limits';
import { LETTERS, SESSION_VERSION, type Session } from './types';

const number = v.pipe(v.number(), v.finite());
const positive = v.pipe(number, v.gtValue(0));
const letter = v.picklist(LETTERS);
const id = v.pipe(v.string(), v.nonEmpty(), v.maxLength(100));

const view = v.variant('by', [
  v.strictObject({ by: v.literal('crop') }),
  v.strictObject({ by: v.literal('lens'), focal: positive }),
  v.strictObject({ by: v.literal('cut'), focal: positive }),
]);

const picture = v.strictObject({
  letter,
  standpoint: positive,
  view,
  fNumber: positive,
  cameraHeight: number,
  tilt: number,
  lens: v.nullable(id),
});

export const sessionSchema = v.strictObject({
  version: v.literal(SESSION_VERSION),
  title: v.pipe(v.string(), v.maxLength(TITLE_LENGTH)),
  units: v.picklist(['metric', 'imperial']),
  sitter: v.strictObject({
    model: id,
    changes: v.strictObject(
      v.entriesFromList(DIMENSIONS, v.exactOptional(v.pipe(number, v.gtValue(0)))),
    ),
    pose: v.strictObject({
      stance: v.optional(v.picklist(STANCES), 'standing'),
      arms: v.optional(v.picklist(ARMS), 'hanging'),
      lean: v.optional(number, 0),
      bodyTurn: number,
      headTurn: number,
      headNod: number,
      headTilt: number,
    }),
  }),
  body: v.strictObject({ format: id, megapixels: positive }),
  lenses: v.pipe(v.array(id), v.maxLength(100)),
  crop: v.strictObject({
    hold: v.picklist(['frame-height', 'head-height', 'pupil-distance']),
    frameHeight: positive,
    framing: v.nullable(id),
    orientation: v.picklist(['portrait', 'landscape']),
    eyesAt: number,
    eyesAcross: number,
  }),
  kept: v.picklist(['crop', 'lens', 'standpoint']),
  pictures: v.pipe(
    v.array(picture),
    v.minLength(1),
    v.maxLength(LETTERS.length),
    v.check(
      (pictures) =>
        pictures.every((each, i) => i === 0 || each.letter > (pictures[i - 1]?.letter ?? '')),
      'expected each letter once, in the order of the alphabet',
    ),
  ),
  light: v.strictObject({ azimuth: number, elevation: number, softness: number }),
  room: v.strictObject({ backdrop: number, cameraWall: number, behindCamera: number }),
  play: v.strictObject({ from: letter, to: letter, seconds: number }),
  printHeight: number,
  notes: v.pipe(v.string(), v.maxLength(NOTES_LENGTH)),
}) satisfies v.GenericSchema<unknown, Session>;
