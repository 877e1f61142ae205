import type { Beard, HairStyle } from '../../../src/sitter/types';
import type { HeadShape } from '../head/shape';
import { fullBeard, shortBeard } from './beard';
import { croppedHair } from './cropped';
import { curlyHair } from './curly';
import { bobHair, longHair } from './curtain';
import { shortHair } from './short';
import type { HairParts } from './style';
import { tiedHair } from './tied';

export type HairStyleName = Exclude<HairStyle, 'bald'>;

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
export function beards(shape: HeadShape): Readonly<Record<Exclude<Beard, 'none'>, HairParts>> {
  return { short: shortBeard(shape), full: fullBeard(shape) };
}
