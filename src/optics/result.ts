import type { Refusal, RefusalReason, Result } from './types';

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

/** `limit` and `asked` in SI units. */
export const refuse = (reason: RefusalReason, limit: number, asked: number): Refusal => ({
  ok: false,
  reason,
  limit,
  asked,
});

/** Applies a calculation that cannot fail to a result that can. */
export const mapResult = <T, U>(result: Result<T>, calculate: (value: T) => U): Result<U> =>
  result.ok ? ok(calculate(result.value)) : result;

/** Goes on with a calculation that can fail itself. */
export const andThen = <T, U>(result: Result<T>, go: (value: T) => Result<U>): Result<U> =>
  result.ok ? go(result.value) : result;

/** The value, or another where the request was refused. */
export const or = <T>(result: Result<T>, otherwise: T): T => (result.ok ? result.value : otherwise);

/** The value of a request that is known to be met; throws where it is not. */
export function must<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new RangeError(`${result.reason}: limit ${result.limit}, asked ${result.asked}`);
}

// A value that was solved for may miss its limit by rounding alone.
const ROUNDING = 1e-9;
export const below = (value: number, limit: number) => value < limit * (1 - ROUNDING);
export const above = (value: number, limit: number) => value > limit * (1 + ROUNDING);

/** The first value that is not a finite number, as a refusal; null when all are. */
export function notFinite(...values: number[]): Refusal | null {
  for (const value of values) if (!Number.isFinite(value)) return refuse('not-a-number', 0, value);
  return null;
}

/** The first value that is not a finite number above 0, as a refusal; null when all are. */
export function notPositive(...values: number[]): Refusal | null {
  const unusable = notFinite(...values);
  if (unusable) return unusable;
  for (const value of values) if (value <= 0) return refuse('not-positive', 0, value);
  return null;
}

/** The same for numbers that may be 0. */
export function notNegative(...values: number[]): Refusal | null {
  const unusable = notFinite(...values);
  if (unusable) return unusable;
  for (const value of values) if (value < 0) return refuse('not-positive', 0, value);
  return null;
}

/** As `notPositive`, for a distance that may also be infinite (a far background). */
export const notPositiveOrInfinite = (value: number): Refusal | null =>
  value === Number.POSITIVE_INFINITY ? null : notPositive(value);
