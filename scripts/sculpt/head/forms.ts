import type { FormName } from '../../../src/sitter/types';
import type { Field, Point } from '../field';
import type { HeadShape } from './shape';

/** Another form of a head: each point of its skin is moved and then set on the field. */
export interface Form {
  readonly field: Field;
  readonly move: (x: number, y: number, z: number) => Point;
}

/** The forms that a head can take on. */
export function headForms(_shape: HeadShape): Readonly<Partial<Record<FormName, Form>>> {
  return {};
}
