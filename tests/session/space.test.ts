import { describe, expect, it } from 'vitest';
import { isNearlyFull, spaceOf } from '../../src/session/space';

describe('the space left to keep sessions in', () => {
  it.each([
    [0, 1e9, false],
    [7.9e8, 1e9, false],
    [8.1e8, 1e9, true],
    [1e6, 1.2e7, false],
    [6e6, 1.2e7, true],
    [1e9, 1e9, true],
    [0, 5e6, true],
  ])('with %d of %d bytes used is nearly full: %s', (usage, quota, full) => {
    expect(isNearlyFull({ usage, quota })).toBe(full);
  });

  it('is unknown where the browser does not say', () => {
    expect(spaceOf({})).toBeNull();
    expect(spaceOf({ usage: 1 })).toBeNull();
    expect(spaceOf({ usage: 0, quota: 0 })).toBeNull();
    expect(spaceOf({ usage: 1, quota: 2 })).toEqual({ usage: 1, quota: 2 });
  });
});
