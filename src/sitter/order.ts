import { ImpossibleDimensions } from './impossible';
import type { DimensionName, Dimensions, LandmarkName, Landmarks } from './types';

/** One thing that must keep a distance from another, and which dimension gives way. */
interface Rule {
  readonly from: LandmarkName;
  readonly to: LandmarkName;
  readonly axis: 0 | 1 | 2;
  /** Least and greatest distance, mm: how far `from` stands out, above or before `to`. */
  readonly least: number;
  readonly most?: number;
  readonly dimension: DimensionName;
  /** What a millimetre of the dimension adds to the distance, where that is a constant. */
  readonly slope?: 1 | -1 | 0.5 | -0.5;
}

const rule = (
  axis: Rule['axis'],
  [from, to]: readonly [LandmarkName, LandmarkName],
  least: number,
  dimension: DimensionName,
  rest: Pick<Rule, 'slope' | 'most'> = {},
): Rule => ({ axis, from, to, least, dimension, ...rest });

const across = rule.bind(null, 0);
const above = rule.bind(null, 1);
const before = rule.bind(null, 2);

/** Distances beyond which no adult of the surveys goes, with room to spare; sculptor's judgement. */
const RULES: readonly Rule[] = [
  above(['vertex', 'glabella'], 40, 'vertex_above_eyes'),
  above(['sellion', 'pupil_left'], -5, 'head_height_vertex_to_menton', { slope: -1, most: 28 }),
  above(['sellion', 'pronasale'], 8, 'nose_length_subnasale_sellion'),
  above(['subnasale', 'menton'], 30, 'face_length_menton_sellion'),
  above(['tragion_left', 'cervicale'], 45, 'cervicale_height', { slope: -1 }),
  above(['cervicale', 'suprasternale'], 20, 'suprasternale_height', { slope: -1, most: 130 }),
  above(['menton', 'suprasternale'], 20, 'suprasternale_height', { slope: -1, most: 170 }),
  above(['menton', 'acromion_left'], 15, 'acromial_height', { slope: -1, most: 170 }),
  before(['pronasale', 'sellion'], 6, 'nose_tip_to_sellion', { slope: 1 }),
  before(['sellion', 'pupil_left'], 2, 'nose_tip_to_eye_plane', { slope: 1 }),
  before(['pupil_left', 'ectocanthion_left'], 3, 'nose_tip_to_outer_eye_corner', { slope: 1 }),
  before(['ectocanthion_left', 'zygion_left'], 15, 'nose_tip_to_zygion', { slope: 1 }),
  before(['zygion_left', 'tragion_left'], 10, 'nose_tip_to_tragion', { slope: 1 }),
  before(['tragion_left', 'opisthocranion'], 50, 'nose_tip_to_back_of_head', { slope: 1 }),
  across(['ectocanthion_left', 'alare_left'], 6, 'nose_breadth', { slope: -0.5 }),
  across(['zygion_left', 'ectocanthion_left'], 6, 'interpupillary_distance'),
  across(['zygion_left', 'frontotemporale_left'], 2, 'minimum_frontal_breadth', { slope: -0.5 }),
  across(['zygion_left', 'gonion_left'], -8, 'bigonial_breadth', { slope: -0.5 }),
  across(['gonion_left', 'cheilion_left'], 8, 'lip_length', { slope: -0.5 }),
  across(['euryon_left', 'frontotemporale_left'], 3, 'head_breadth', { slope: 0.5 }),
  across(['euryon_left', 'zygion_left'], -12, 'head_breadth', { slope: 0.5 }),
  across(['euryon_left', 'tragion_left'], -8, 'bitragion_breadth', { slope: -0.5 }),
  across(['zygion_left', 'tragion_left'], -3, 'bitragion_breadth', { slope: -0.5, most: 16 }),
  across(['deltoid_left', 'acromion_left'], 8, 'bideltoid_breadth', { slope: 0.5 }),
];

/** Heights of the body, from above downwards, with the least distance between neighbours (mm). */
const LEVELS: readonly (readonly [DimensionName, number])[] = [
  ['acromial_height', 0],
  ['chest_height', 40],
  ['waist_height_navel', 60],
  ['crotch_height', 50],
  ['knee_height_standing', 90],
];

/** @throws ImpossibleDimensions when parts of the figure would change places. */
export function checkOrder(d: Dimensions, landmarks: Landmarks): void {
  for (const { from, to, axis, least, most, dimension, slope } of RULES) {
    const gap = 1000 * (landmarks[from][axis] - landmarks[to][axis]);
    const between = `${gap.toFixed(1)} mm between ${from} and ${to}`;
    if (!(gap >= least))
      refuse(d, dimension, `${between}; at least ${least} mm`, least - gap, slope);
    if (most !== undefined && gap > most)
      refuse(d, dimension, `${between}; at most ${most} mm`, most - gap, slope);
  }
  LEVELS.forEach(([lower, least], i) => {
    const upper = LEVELS[i - 1]?.[0];
    if (!upper) return;
    const gap = d[upper] - d[lower];
    if (!(gap >= least)) {
      const between = `${gap.toFixed(1)} mm between ${upper} and ${lower}`;
      refuse(d, lower, `${between}; at least ${least} mm`, least - gap, -1);
    }
  });
}

/** @param lacks what the distance must grow by, mm */
function refuse(
  d: Dimensions,
  dimension: DimensionName,
  why: string,
  lacks: number,
  slope: Rule['slope'],
): never {
  const value = Math.round(10 * d[dimension]) / 10;
  throw new ImpossibleDimensions(
    dimension,
    `${dimension} ${value} mm leaves ${why} are needed${slope ? `: ${remedy(d[dimension], lacks / slope)} would do` : ''}`,
  );
}

/** The nearest value that would do, to the half millimetre on the safe side. */
const remedy = (value: number, by: number): string =>
  by > 0
    ? `${Math.ceil(2 * (value + by)) / 2} mm or more`
    : `${Math.floor(2 * (value + by)) / 2} mm or less`;
