import { PROPORTION } from './landmarks';
import type { DimensionName, Dimensions } from './types';

export type Changes = Readonly<Partial<Record<DimensionName, number>>>;

/** Lengths that keep their share of the stature. */
const WITH_STATURE = [
  'shoulder_elbow_length',
  'forearm_hand_length',
  'hand_length',
  'foot_length',
] as const satisfies readonly DimensionName[];

/** Heights at the root of the neck, which go up and down together. */
const GIRDLE = [
  'cervicale_height',
  'suprasternale_height',
  'acromial_height',
] as const satisfies readonly DimensionName[];

/** Heights under the shoulders, from above downwards. */
const LEVELS = [
  'chest_height',
  'waist_height_navel',
  'crotch_height',
  'knee_height_standing',
] as const satisfies readonly DimensionName[];

/**
 * How much the shoulders rise with the stature: the rest is head and neck. From the differences of
 * the 1st and 99th percentiles of ANSUR II 2012: 0.89 to 0.94 for the three heights and both sexes.
 */
const SHOULDERS_RISE = 0.91;

/**
 * How much stature goes with a millimetre of each height: regression r s / s, with the standard
 * deviations of ANSUR II 2012 (women) and r from the spread of height over stature in the same
 * records (0.91 waist, 0.85 crotch, 0.84 knee; for the chest the waist's; 0.77 sitting height,
 * from memory).
 */
const STATURE_WITH = {
  chest_height: 1.05,
  waist_height_navel: 1.17,
  crotch_height: 1.22,
  knee_height_standing: 2.08,
  sitting_height: 1.52,
} as const satisfies Record<(typeof LEVELS)[number] | 'sitting_height', number>;
const STATURE_GIVERS = Object.keys(STATURE_WITH) as (keyof typeof STATURE_WITH)[];

const mean = (values: readonly number[]): number =>
  values.length ? values.reduce((sum, value) => sum + value, 0) / values.length : 0;

const BEHIND_NOSE_TIP = [
  'nose_tip_to_eye_plane',
  'nose_tip_to_outer_eye_corner',
  'nose_tip_to_sellion',
  'nose_tip_to_zygion',
  'nose_tip_to_tragion',
  'nose_tip_to_back_of_head',
] as const satisfies readonly DimensionName[];

/**
 * A sitter's dimensions after changes, millimetres. Dimensions that share a part of the head
 * follow a changed one unless they are changed themselves, so that one change leaves a head:
 * - a more protruding nose moves its tip forward and leaves the face where it is;
 * - a longer head grows backwards, and the ears and cheekbones keep their share of its depth;
 * - a longer face, or a higher crown, makes a higher head;
 * - a broader face, and less a broader head, sets the ears apart;
 * - broader shoulder bones make broader shoulders;
 * - limbs keep their share of the stature, and the shoulders rise with it but not the head;
 * - the heights at the root of the neck go up and down together, and what is lower keeps its share
 *   of the way between the heights that are set;
 * - another height of a part of the body goes with another stature;
 * - legs and sitting height share the stature: what one leaves of its growth, the other takes.
 */
export function resolveDimensions(own: Dimensions, changes: Changes): Dimensions {
  const d: Record<DimensionName, number> = { ...own, ...changes };
  const free = (name: DimensionName): boolean => changes[name] === undefined;
  const grown = (name: DimensionName): number => d[name] - own[name];
  const add = (name: DimensionName, mm: number): void => {
    if (free(name)) d[name] += mm;
  };
  const tip = PROPORTION.noseTipForward * grown('nose_protrusion');
  for (const name of BEHIND_NOSE_TIP) add(name, tip);
  add('nose_tip_to_back_of_head', grown('head_length'));
  // Behind the sellion, depths keep their share of the way to the back of the head.
  const span = (of: Dimensions): number => of.nose_tip_to_back_of_head - of.nose_tip_to_sellion;
  const stretch = span(d) - span(own);
  for (const name of ['nose_tip_to_tragion', 'nose_tip_to_zygion'] as const)
    add(name, (stretch * (own[name] - own.nose_tip_to_sellion)) / span(own));
  add(
    'head_height_vertex_to_menton',
    grown('face_length_menton_sellion') + grown('vertex_above_eyes'),
  );
  add('bitragion_breadth', 0.6 * grown('bizygomatic_breadth') + 0.4 * grown('head_breadth'));
  add('bideltoid_breadth', grown('biacromial_breadth'));
  setHeights(own, d, free);
  add('sitting_height', grown('stature') - grown('crotch_height'));
  const taller = d.stature / own.stature;
  for (const name of WITH_STATURE) if (free(name)) d[name] *= taller;
  return d;
}

/** Stature and the heights under it, in place. */
function setHeights(
  own: Dimensions,
  d: Record<DimensionName, number>,
  free: (name: DimensionName) => boolean,
): void {
  const rises = GIRDLE.filter((name) => !free(name)).map((name) => d[name] - own[name]);
  if (free('stature')) {
    const statures = rises.length
      ? rises.map((rise) => rise / SHOULDERS_RISE)
      : STATURE_GIVERS.filter((name) => !free(name)).map(
          (name) => STATURE_WITH[name] * (d[name] - own[name]),
        );
    d.stature += mean(statures);
  }
  const rise = rises.length ? mean(rises) : SHOULDERS_RISE * (d.stature - own.stature);
  for (const name of GIRDLE) if (free(name)) d[name] += rise;
  const grown = (name: DimensionName): number => d[name] - own[name];
  const legsLeft = free('crotch_height') && !free('sitting_height');
  if (legsLeft) d.crotch_height += grown('stature') - grown('sitting_height');
  const known = (name: DimensionName): boolean =>
    !free(name) || (name === 'crotch_height' && legsLeft);
  const set = ['acromial_height' as const, ...LEVELS.filter(known)] satisfies DimensionName[];
  for (const name of LEVELS) {
    if (known(name)) continue;
    // The nearest heights that are set, above and below; the floor is the lowest.
    const above = set.filter((other) => own[other] > own[name]).at(-1) ?? 'acromial_height';
    const below = set.find((other) => own[other] < own[name]);
    const [low, lowOwn] = below ? [d[below], own[below]] : [0, 0];
    const share = (own[name] - lowOwn) / (own[above] - lowOwn);
    d[name] = low + share * (d[above] - low);
  }
}
