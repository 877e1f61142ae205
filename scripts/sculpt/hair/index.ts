import type { HeadShape } from '../head/shape';
import { croppedHair } from './cropped';
import { curlyHair } from './curly';
import { bobHair, longHair } from './curtain';
import { shortHair } from './short';
import type { HairParts } from './style';
import { tiedHair } from './tied';

export const HAIR_STYLES = ['cropped', 'short', 'bob', 'long', 'tied', 'curly'] as const;
export type HairStyleName = (typeof HAIR_STYLES)[number];

/** The ways this head can wear its hair. */
export function hairStyles(shape: HeadShape): Readonly<Record<HairStyleName, HairParts>> {
  return {
    cropped: croppedHair(shape),
    short: shortHair(shape),
    bob: bobHair(shape),
    long: longHair(shape),
    tied: tiedHair(shape),
    curly: curlyHair(shape),
  };
}

/** The beards this head can wear. */
export function beards(_shape: HeadShape): Readonly<Record<string, HairParts>> {
  return {};
}
