import { ImpossibleDimensions } from './impossible';
import type { DimensionName, Dimensions, LandmarkName, Landmarks } from './types';

/** Landmarks from above downwards that must keep a distance in height (mm), and what sets the lower. */
const ABOVE: readonly (readonly [LandmarkName, LandmarkName, number, DimensionName])[] = [
  ['vertex', 'glabella', 40, 'vertex_above_eyes'],
  ['sellion', 'pronasale', 8, 'nose_length_subnasale_sellion'],
  ['subnasale', 'menton', 30, 'face_length_menton_sellion'],
  ['tragion_left', 'cervicale', 60, 'cervicale_height'],
  ['cervicale', 'suprasternale', 20, 'suprasternale_height'],
  ['menton', 'suprasternale', 30, 'suprasternale_height'],
  ['menton', 'acromion_left', 25, 'acromial_height'],
];

/** Heights of the body, from above downwards, with the least distance between neighbours (mm). */
const LEVELS: readonly (readonly [DimensionName, number])[] = [
  ['acromial_height', 0],
  ['chest_height', 60],
  ['waist_height_navel', 90],
  ['crotch_height', 80],
  ['knee_height_standing', 150],
];

/** @throws ImpossibleDimensions when parts of the body would change places. */
export function checkOrder(d: Dimensions, landmarks: Landmarks): void {
  for (const [upper, lower, least, dimension] of ABOVE) {
    const gap = 1000 * (landmarks[upper][1] - landmarks[lower][1]);
    if (!(gap >= least)) refuse(d, dimension, gap, least, lower, upper);
  }
  LEVELS.forEach(([lower, least], i) => {
    const upper = LEVELS[i - 1]?.[0];
    if (upper && !(d[upper] - d[lower] >= least))
      refuse(d, lower, d[upper] - d[lower], least, lower, upper);
  });
}

function refuse(
  d: Dimensions,
  dimension: DimensionName,
  gap: number,
  least: number,
  lower: string,
  upper: string,
): never {
  throw new ImpossibleDimensions(
    dimension,
    `${dimension} ${d[dimension]} mm leaves ${gap.toFixed(1)} mm between ${upper} and ${lower}; at least ${least} mm are needed`,
  );
}
