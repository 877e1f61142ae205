import type { HeadShape } from '../head/shape';
import { shortHair } from './short';
import type { HairStyle } from './style';
import { tiedHair } from './tied';

export const HAIR_STYLES = ['short', 'tied'] as const;
export type HairStyleName = (typeof HAIR_STYLES)[number];

/** The ways this head can wear its hair. */
export function hairStyles(shape: HeadShape): Readonly<Record<HairStyleName, HairStyle>> {
  return { short: shortHair(shape), tied: tiedHair(shape) };
}
