/** Keeps a value as the latest of a map; what is the oldest beyond `most` is dropped and given back. */
export function keepLatest<Key, Value>(
  map: Map<Key, Value>,
  key: Key,
  value: Value,
  most: number,
): Value[] {
  map.delete(key);
  map.set(key, value);
  return [...map].slice(0, -most).map(([oldest, dropped]) => {
    map.delete(oldest);
    return dropped;
  });
}
