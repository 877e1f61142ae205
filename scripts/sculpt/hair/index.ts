import type { HeadShape } from '../head/shape';
import { shortHair } from './short';
import type { HairParts } from './style';
import { tiedHair } from './tied';

export const HAIR_STYLES = ['short', 'tied'] as const;
export type HairStyleName = (typeof HAIR_STYLES)[number];

/** The ways this head can wear its hair. */
export function hairStyles(shape: HeadShape): Readonly<Record<HairStyleName, HairParts>> {
  return { short: shortHair(shape), tied: tiedHair(shape) };
}

/** The beards this head can wear. */
export function beards(_shape: HeadShape): Readonly<Record<string, HairParts>> {
  return {};
}
