import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClipTiming, clipFrames, RATE, WAYS } from '../../../src/handout/clip/plan';

const timing = (changes: Partial<ClipTiming> = {}): ClipTiming => ({
  seconds: 4,
  rest: 0,
  way: 'once',
  ...changes,
});
const places = (changes: Partial<ClipTiming>) => clipFrames(timing(changes)).map(({ at }) => at);

const timings = fc.record({
  seconds: fc.double({ min: 0.2, max: 4, noNaN: true }),
  rest: fc.double({ min: 0, max: 2, noNaN: true }),
  way: fc.constantFrom(...WAYS),
});

describe('the frames of a clip', () => {
  it('counts a move of whole seconds exactly', () => {
    expect(places({})).toHaveLength(100);
    expect(places({ rest: 0.4 })).toHaveLength(120);
    expect(places({ way: 'back' })).toHaveLength(199);
    expect(places({ way: 'loop' })).toHaveLength(198);
  });

  it('goes once from end to end in even steps', () => {
    expect(places({ seconds: 0.2 })).toEqual([0, 0.25, 0.5, 0.75, 1]);
  });

  it('goes there and back, showing the turn once', () => {
    expect(places({ seconds: 0.12, way: 'back' })).toEqual([0, 0.5, 1, 0.5, 0]);
  });

  it('loops without showing an end twice', () => {
    expect(places({ seconds: 0.12, way: 'loop' })).toEqual([0, 0.5, 1, 0.5]);
    // Played twice, every step is as long as every other.
    const twice = [...places({ way: 'loop' }), ...places({ way: 'loop' })];
    for (const [i, at] of twice.entries())
      expect(Math.abs(at - (twice[i - 1] ?? 1 / 99))).toBeCloseTo(1 / 99, 10);
  });

  it('rests at its ends', () => {
    expect(places({ seconds: 0.08, rest: 0.08 })).toEqual([0, 0, 0, 1, 1, 1]);
    expect(places({ seconds: 0.08, rest: 0.04, way: 'back' })).toEqual([0, 0, 1, 1, 0, 0]);
    expect(places({ seconds: 0.12, rest: 0.04, way: 'loop' })).toEqual([0, 0.5, 1, 1, 0.5, 0]);
  });

  it('shows frame i at i over the rate, a whole number of milliseconds', () => {
    fc.assert(
      fc.property(timings, (each) => {
        for (const [i, { time, at }] of clipFrames(each).entries()) {
          if (time !== i / RATE || at < 0 || at > 1) expect({ i, time, at }).toBeNull();
          if (Math.abs(1000 * time - Math.round(1000 * time)) > 1e-9) expect(time).toBeNull();
        }
      }),
      { seed: 11 },
    );
  });

  it('touches both ends and makes no step larger than one way allows', () => {
    fc.assert(
      fc.property(timings, (each) => {
        const all = places(each);
        expect(all[0]).toBe(0);
        expect(Math.max(...all)).toBe(1);
        if (each.way !== 'loop') expect(all.at(-1)).toBe(each.way === 'once' ? 1 : 0);
        const step = 1 / (Math.max(2, Math.round(each.seconds * RATE)) - 1);
        const steps = all.slice(1).map((at, i) => Math.abs(at - (all[i] as number)));
        expect(Math.max(...steps)).toBeLessThan(step * 1.0001);
      }),
      { seed: 12 },
    );
  });
});
