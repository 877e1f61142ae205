/** What kits, own lenses, room and plan of a session must hold. */
import * as v from 'valibot';
import { AXES } from '../plan/run';
import { SHARP } from '../plan/types';
import { MOST } from './limits';
import { id, letter, many, name, number, orientation, positive, some } from './schema-parts';
import { PERSON_IDS } from './types';

const ends = v.tuple([positive, positive]);
const measuredFrame = v.strictObject({ tape: positive, frame: positive });

export const ownLens = v.strictObject({
  id,
  name,
  focal: ends,
  widest: ends,
  smallest: positive,
  nearestFocus: ends,
  length: positive,
  largestMagnification: v.exactOptional(positive),
  entrancePupil: v.exactOptional(number),
  pupilMagnification: v.exactOptional(positive),
  measured: v.exactOptional(
    v.strictObject({
      near: measuredFrame,
      far: measuredFrame,
      focusedAt: v.exactOptional(positive),
    }),
  ),
});

export const kit = v.strictObject({
  id,
  name,
  bodies: some(v.strictObject({ id, name, format: id, megapixels: positive }), MOST.bodies),
  body: id,
  lenses: v.pipe(v.array(id), v.maxLength(MOST.lenses)),
});

export const room = v.strictObject({
  name,
  length: positive,
  width: positive,
  ceiling: positive,
  axis: v.picklist(AXES),
  aside: number,
  backdrop: v.strictObject({ offWall: number, width: positive, top: positive }),
  sitterBefore: number,
  behindCamera: number,
  obstacles: many(
    v.strictObject({
      id,
      name,
      kind: v.picklist(['thing', 'door']),
      x: number,
      y: number,
      length: positive,
      width: positive,
      height: positive,
    }),
    MOST.obstacles,
  ),
});

export const plan = v.strictObject({
  wanted: many(
    v.strictObject({
      id,
      framing: v.nullable(id),
      frameHeight: v.nullable(positive),
      orientation,
      eyesAt: number,
      cameraHeight: number,
      of: v.picklist([...PERSON_IDS, 'both', 'group']),
    }),
    MOST.wanted,
  ),
  asked: v.strictObject({
    noseGain: v.nullable(positive),
    rowDifference: v.nullable(positive),
    stretch: v.nullable(positive),
    personal: v.nullable(positive),
    clearance: v.nullable(number),
    sharp: v.nullable(v.picklist(SHARP)),
    fNumber: ends,
    softness: v.nullable(positive),
    backdropMargin: v.nullable(number),
  }),
  group: v.nullable(
    v.strictObject({
      rows: v.pipe(
        v.array(
          v.strictObject({
            place: v.picklist(['seated', 'standing', 'step']),
            models: v.pipe(v.array(id), v.minLength(1), v.maxLength(MOST.group)),
            spacing: positive,
          }),
        ),
        v.minLength(1),
        v.maxLength(MOST.rows),
        v.check(
          (rows) => rows.reduce((sum, { models }) => sum + models.length, 0) <= MOST.group,
          `expected at most ${MOST.group} people`,
        ),
      ),
      rowSpacing: positive,
      step: positive,
      curve: v.picklist(['straight', 'curved']),
    }),
  ),
  picture: letter,
});
