/** How far a dimension's slider runs. */
import { percentileOf, tableFor } from '../../models/percentile';
import type { DimensionModel } from '../../models/types';
import { clamp, LIMITS, type Range } from '../../session/limits';
import type { SitterModel } from '../../sitter/types';
import { isChildSitter } from './child';

/** Without a survey: as far as the sculpture is tested to follow, in shares of the sitter's own value. */
export const WITHOUT_SURVEY = { least: 0.94, most: 1.06 } as const;

/**
 * From the 1st to the 99th percentile of the survey; a child's as far about its own value, in proportion,
 * since the surveys are of adults. Always with the sitter's own value inside. Millimetres.
 */
export function sliderRange(
  dimension: DimensionModel,
  own: number,
  sitter: Pick<SitterModel, 'forms' | 'sculpture'>,
): Range {
  const table = tableFor(dimension, sitter.sculpture);
  const { dimensionChange } = LIMITS;
  const legal = { least: own * dimensionChange.least, most: own * dimensionChange.most };
  const whole = (range: Range): Range => ({
    least: Math.min(own, clamp(range.least, legal)),
    most: Math.max(own, clamp(range.most, legal)),
  });
  if (!table) return whole({ least: own * WITHOUT_SURVEY.least, most: own * WITHOUT_SURVEY.most });
  if (isChildSitter(sitter))
    return whole({ least: (own * table.p1) / table.p50, most: (own * table.p99) / table.p50 });
  return whole({ least: table.p1, most: table.p99 });
}

export interface Standing {
  /** 1..99; 0 and 100 beyond. */
  readonly percentile: number;
  readonly survey: string;
}

/** Where a value stands in the survey; null without a survey, and for children. */
export function standingOf(
  dimension: DimensionModel,
  mm: number,
  sitter: Pick<SitterModel, 'forms' | 'sculpture'>,
): Standing | null {
  const table = tableFor(dimension, sitter.sculpture);
  if (!table || dimension.survey === undefined || isChildSitter(sitter)) return null;
  return { percentile: percentileOf(mm, table), survey: dimension.survey };
}
