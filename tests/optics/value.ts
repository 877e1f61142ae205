import fc from 'fast-check';
import type { Refusal, Result } from '../../src/optics/types';
import { type Metre, metres, mmToM } from '../../src/optics/units';

/** The value of a result that a test expects to be there. */
export function value<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result)}`);
  return result.value;
}

export function refusal(result: Result<unknown>): Refusal {
  if (result.ok) throw new Error(`not refused: ${JSON.stringify(result.value)}`);
  return result;
}

export const FULL_FRAME_PORTRAIT = { width: mmToM(24), height: mmToM(36) };
export const FULL_FRAME_LANDSCAPE = { width: mmToM(36), height: mmToM(24) };

/** Any number of metres between two, evenly. */
export const length = (min: number, max: number): fc.Arbitrary<Metre> =>
  fc.double({ min, max, noNaN: true }).map(metres);

/** A property checked with a fixed seed: a failure is the same on every machine. */
export function always<T extends [unknown, ...unknown[]]>(
  property: fc.IProperty<T>,
  numRuns = 500,
): void {
  fc.assert(property, { seed: 20150909, numRuns });
}
