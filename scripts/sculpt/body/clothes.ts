import type { Clothes } from '../../../src/sitter/types';
import { type BodyPart, bodyParts } from './parts';
import type { BodyShape } from './shape';

/** What can be worn, part by part, without the hands. */
export function clothes(shape: BodyShape): Readonly<Partial<Record<Clothes, readonly BodyPart[]>>> {
  return { top: bodyParts(shape).filter(({ substance }) => substance !== 'skin') };
}

/** The bare hands. */
export const hands = (shape: BodyShape): readonly BodyPart[] =>
  bodyParts(shape).filter(({ substance }) => substance === 'skin');
