/** Looks up what a session names. Sessions are checked when they enter, so a miss is a fault here. */
export function known<T>(models: ReadonlyMap<string, T>, id: string): T {
  const found = models.get(id);
  if (found === undefined) throw new RangeError(`models hold no "${id}"`);
  return found;
}
