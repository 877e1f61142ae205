/** The bar below a picture: a round length at the depth of the eyes. */
import type { ScaleBar } from '../../handout/still';
import { formatNumber } from '../../readings/format';
import { METRES_PER, type Units } from '../../readings/quantities';
import { stills as said } from '../words/stills.en';

/** No longer than this share of the picture's width. */
const LONGEST = 0.45;

interface Length {
  readonly metres: number;
  readonly shown: string;
}

const whole = (value: number, unit: 'cm' | 'm' | 'in' | 'ft'): Length => ({
  metres: value * METRES_PER[unit],
  shown: `${formatNumber(value, 0)} ${unit}`,
});

const LENGTHS: Readonly<Record<Units, readonly Length[]>> = {
  metric: [
    ...[1, 2, 5, 10, 20, 50].map((value) => whole(value, 'cm')),
    ...[1, 2].map((value) => whole(value, 'm')),
  ],
  imperial: [
    ...[1, 2, 3, 6].map((value) => whole(value, 'in')),
    ...[1, 2, 3, 6].map((value) => whole(value, 'ft')),
  ],
};

/** @param frameWidth what the picture spans at the eyes, metres */
export function scaleBar(frameWidth: number, units: Units): ScaleBar | null {
  const length = LENGTHS[units].findLast(({ metres }) => metres <= LONGEST * frameWidth);
  return length ? { share: length.metres / frameWidth, label: said.atTheEyes(length.shown) } : null;
}
