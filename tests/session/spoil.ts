/** Ways of damaging a document in a test. */

/** The way to a value inside a JSON document. */
export type Place = readonly string[];

/** Every place of a JSON document but its root. */
export function placesOf(value: unknown, at: Place = []): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => [
    [...at, key],
    ...placesOf(part, [...at, key]),
  ]);
}

/** A copy of the document with another value in one place; undefined takes the field away. */
export function replaced(document: unknown, place: Place, value: unknown): unknown {
  const copy = structuredClone(document);
  const parent = place
    .slice(0, -1)
    .reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], copy);
  (parent as Record<string, unknown>)[place.at(-1) as string] = value;
  return copy;
}
