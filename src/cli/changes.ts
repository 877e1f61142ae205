import { LIMITS } from '../session/limits';
import type { Changes } from '../sitter/resolve';
import { DIMENSIONS, type DimensionName, type SitterModel } from '../sitter/types';
import { BadValue } from './bad-value';
import { length, positive, read } from './values';

const { least: LEAST, most: MOST } = LIMITS.dimensionChange;

/** Refuses what the panel does not offer either. @throws BadValue */
function withinLimits(name: DimensionName, own: number, mm: number): number {
  const refuse = (side: string, times: number, would: string): never => {
    throw new BadValue(
      `--set: ${name} ${mm} mm is ${side} than ${times} times the sitter's own ${own} mm; ${would} would do.`,
    );
  };
  if (mm > MOST * own) refuse('more', MOST, `${Math.floor(2 * MOST * own) / 2} mm or less`);
  if (mm < LEAST * own) refuse('less', LEAST, `${Math.ceil(2 * LEAST * own) / 2} mm or more`);
  return mm;
}

/**
 * The texts of --set, NAME=MM or NAME_mm=MM, as changes of a sitter's dimensions in millimetres.
 * @throws BadValue
 */
export function changesOf(
  { dimensions }: Pick<SitterModel, 'dimensions'>,
  texts: readonly string[] = [],
): Changes {
  const changes: Partial<Record<DimensionName, number>> = {};
  for (const text of texts) {
    const [, name, value] = /^([^=]+)=(.+)$/.exec(text) ?? [];
    if (name === undefined || value === undefined) {
      throw new BadValue(`--set: "${text}" is not NAME=MM. Try nose_breadth=36.`);
    }
    const dimension = DIMENSIONS.find((known) => known === name.replace(/_mm$/, ''));
    if (!dimension) throw new BadValue(`--set: "${name}" is not a dimension. See --list.`);
    if (dimension in changes) throw new BadValue(`--set: ${dimension} is set twice.`);
    const mm = Math.round(read('set', value, positive(length('mm'))) * 1e9) / 1e6;
    changes[dimension] = withinLimits(dimension, dimensions[dimension].mm, mm);
  }
  return changes;
}
