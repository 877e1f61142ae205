/** What a session of the present version must hold. Ranges are not checked here but clamped after. */
import * as v from 'valibot';
import { ARMS, BEARDS, CLOTHES, DIMENSIONS, HAIR_STYLES, STANCES } from '../sitter/types';
import { LAMPS } from './light';
import { LEAST_SERIES, MOST, NOTES_LENGTH, TITLE_LENGTH } from './limits';
import { handout } from './schema-handout';
import { id, letter, many, name, number, orientation, positive, some } from './schema-parts';
import { kit, ownLens, plan, room } from './schema-plan';
import { LETTERS, PERSON_IDS, SESSION_VERSION, type Session } from './types';
import { USUAL } from './usual';

const view = v.variant('by', [
  v.strictObject({ by: v.literal('crop') }),
  v.strictObject({ by: v.literal('lens'), focal: positive }),
  v.strictObject({ by: v.literal('cut'), focal: positive }),
]);

const personId = v.picklist(PERSON_IDS);

export const picture = v.strictObject({
  letter,
  of: v.pipe(
    v.tupleWithRest([personId], personId),
    v.check((ids) => new Set(ids).size === ids.length, 'expected each person once'),
  ),
  standpoint: positive,
  view,
  fNumber: positive,
  cameraHeight: number,
  tilt: number,
  lens: v.nullable(id),
});

export const lamp = v.strictObject({
  azimuth: number,
  elevation: number,
  strength: number,
  distance: positive,
  size: positive,
});

const colour = v.exactOptional(v.pipe(v.string(), v.regex(/^#[0-9a-fA-F]{6}$/)));

export const person = v.strictObject({
  id: personId,
  model: id,
  changes: v.strictObject(
    v.entriesFromList(DIMENSIONS, v.exactOptional(v.pipe(number, v.gtValue(0)))),
  ),
  pose: v.strictObject({
    stance: v.picklist(STANCES),
    arms: v.picklist(ARMS),
    lean: number,
    bodyTurn: number,
    headTurn: number,
    headNod: number,
    headTilt: number,
  }),
  looks: v.strictObject({
    hair: v.exactOptional(v.picklist(HAIR_STYLES)),
    beard: v.exactOptional(v.picklist(BEARDS)),
    glasses: v.exactOptional(v.boolean()),
    clothes: v.exactOptional(v.picklist(CLOTHES)),
    smile: v.exactOptional(number),
    colours: v.exactOptional(
      v.strictObject({
        skin: colour,
        hair: colour,
        eyes: colour,
        top: colour,
        outer: colour,
        trousers: colour,
      }),
    ),
  }),
  gaze: v.union([v.picklist(['lens', 'ahead']), v.strictObject({ yaw: number, pitch: number })]),
});

const standpoints = (least: number, most: number) =>
  v.pipe(v.array(positive), v.minLength(least), v.maxLength(most));

const compared = {
  people: v.pipe(
    v.tupleWithRest([person], person),
    v.maxLength(PERSON_IDS.length),
    v.check(
      (people) => people.every(({ id: own }, i) => own === PERSON_IDS[i]),
      'expected person 1 first, then person 2',
    ),
  ),
  beside: v.strictObject({ right: number, forward: number }),
  crop: v.strictObject({
    hold: v.picklist(['frame-height', 'head-height', 'pupil-distance']),
    frameHeight: positive,
    framing: v.nullable(id),
    orientation,
    eyesAt: number,
    eyesAcross: number,
  }),
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
  light: v.strictObject(v.entriesFromList(LAMPS, lamp)),
  play: v.strictObject({ from: letter, to: letter, seconds: number }),
};

export const sessionSchema = v.strictObject({
  version: v.literal(SESSION_VERSION),
  title: v.pipe(v.string(), v.maxLength(TITLE_LENGTH)),
  units: v.picklist(['metric', 'imperial']),
  ...compared,
  kits: some(kit, MOST.kits),
  kit: id,
  ownLenses: many(ownLens, MOST.ownLenses),
  kept: v.picklist(['crop', 'lens', 'standpoint']),
  room,
  plan,
  printHeight: number,
  notes: v.pipe(v.string(), v.maxLength(NOTES_LENGTH)),
  // A link leaves out what is as usual.
  comparisons: v.optional(
    many(
      v.strictObject({ id, name, presented: v.boolean(), asks: v.boolean(), ...compared }),
      MOST.comparisons,
    ),
    [...USUAL.comparisons],
  ),
  series: v.optional(standpoints(LEAST_SERIES, MOST.series), USUAL.series),
  tabled: v.optional(standpoints(1, MOST.tabled), USUAL.tabled),
  handout: v.optional(handout, USUAL.handout),
}) satisfies v.GenericSchema<unknown, Session>;
