import { PROPORTION } from './landmarks';
import type { DimensionName, Dimensions } from './types';

export type Changes = Readonly<Partial<Record<DimensionName, number>>>;

/** Heights and limb lengths that keep their share of the stature. */
const WITH_STATURE = [
  'sitting_height',
  'cervicale_height',
  'suprasternale_height',
  'acromial_height',
  'chest_height',
  'waist_height_navel',
  'crotch_height',
  'knee_height_standing',
  'shoulder_elbow_length',
  'forearm_hand_length',
  'hand_length',
  'foot_length',
] as const satisfies readonly DimensionName[];

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
 * - heights and limbs keep their share of the stature.
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
  const taller = d.stature / own.stature;
  for (const name of WITH_STATURE) if (free(name)) d[name] *= taller;
  return d;
}
