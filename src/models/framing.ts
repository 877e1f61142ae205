/** Frame heights of a named framing for one sitter. */
import { type Metre, metres, mmToM } from '../optics/units';
import { DIMENSIONS, type Dimensions, type SitterModel } from '../sitter/types';
import type { FramingModel, FramingRule, Level } from './types';

export interface FrameHeights {
  readonly least: Metre;
  readonly usual: Metre;
  readonly most: Metre;
}

/** Frame heights are spoken of in centimetres; a rule of thumb holds no finer figure. */
const STEP = 0.01;

/** Height of a level above the floor, standing, millimetres. */
function levelHeight(level: Level, dimensions: Dimensions): number {
  switch (level) {
    case 'vertex':
      return dimensions.stature;
    case 'menton':
      return dimensions.stature - dimensions.head_height_vertex_to_menton;
    case 'suprasternale':
      return dimensions.suprasternale_height;
    case 'chest':
      return dimensions.chest_height;
    case 'waist':
      return dimensions.waist_height_navel;
    case 'crotch':
      return dimensions.crotch_height;
    case 'knee':
      return dimensions.knee_height_standing;
    case 'floor':
      return 0;
  }
}

function heightOf(rule: FramingRule, dimensions: Dimensions): number {
  const ends = typeof rule.to === 'string' ? [rule.to, rule.to] : rule.to;
  const [upper = rule.from, lower = rule.from] = ends;
  const to = (levelHeight(upper, dimensions) + levelHeight(lower, dimensions)) / 2;
  return (levelHeight(rule.from, dimensions) - to) * (1 + rule.room);
}

/** Least, usual and greatest frame height at the eye plane, metres, the usual to the centimetre. */
export function frameHeightOf(framing: FramingModel, dimensions: Dimensions): FrameHeights {
  const metresOf = (rule: FramingRule) => mmToM(heightOf(rule, dimensions));
  return {
    least: metresOf(framing.least),
    usual: metres(Math.round(metresOf(framing.usual) / STEP) * STEP),
    most: metresOf(framing.most),
  };
}

/** A sitter's own dimensions, millimetres. */
export const dimensionsOf = (sitter: Pick<SitterModel, 'dimensions'>): Dimensions =>
  Object.fromEntries(DIMENSIONS.map((name) => [name, sitter.dimensions[name].mm])) as Dimensions;
