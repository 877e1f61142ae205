/** What the schemas of a session are put together from. */
import * as v from 'valibot';
import { NAME_LENGTH } from './limits';
import { LETTERS } from './types';

export const number = v.pipe(v.number(), v.finite());
export const positive = v.pipe(number, v.gtValue(0));
export const letter = v.picklist(LETTERS);
export const id = v.pipe(v.string(), v.nonEmpty(), v.maxLength(100));
export const name = v.pipe(v.string(), v.maxLength(NAME_LENGTH));
export const orientation = v.picklist(['portrait', 'landscape']);

interface Named {
  readonly id: string;
}
const areApart = (each: readonly Named[]): boolean =>
  new Set(each.map(({ id: own }) => own)).size === each.length;
const ONCE = 'expected each id once';

/** A list whose parts have ids of their own. */
export const many = <T extends Named>(part: v.GenericSchema<unknown, T>, most: number) =>
  v.pipe(
    v.array(part),
    v.maxLength(most),
    v.check((each: T[]) => areApart(each), ONCE),
  );

/** The same with at least one part. */
export const some = <T extends Named>(part: v.GenericSchema<unknown, T>, most: number) =>
  v.pipe(
    v.tupleWithRest([part], part),
    v.maxLength(most),
    v.check((each: [T, ...T[]]) => areApart(each), ONCE),
  );
