/** Equal parts of two documents as one object, so that whoever compares by identity sees what changed. */

const isContainer = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/**
 * `after`, with every part that equals its counterpart in `before` replaced by that counterpart; `before`
 * itself when all is equal. Plain JSON only.
 */
export function shareEqual<T>(before: T, after: T): T {
  if (Object.is(before, after) || !isContainer(before) || !isContainer(after)) return after;
  if (Array.isArray(before) !== Array.isArray(after)) return after;
  const keys = Object.keys(after);
  const shared = keys.map((key) => [key, shareEqual(before[key], after[key])] as const);
  const isSame =
    keys.length === Object.keys(before).length &&
    shared.every(([key, value]) => key in before && Object.is(value, before[key]));
  if (isSame) return before;
  return (
    Array.isArray(after) ? shared.map(([, value]) => value) : Object.fromEntries(shared)
  ) as T;
}
