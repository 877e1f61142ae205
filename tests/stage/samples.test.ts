import { describe, expect, it } from 'vitest';
import { discPoints, pixelOffsets, samplesOf } from '../../src/stage/samples';

type Points = readonly (readonly [number, number])[];

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const axes = (points: Points) => [points.map(([x]) => x), points.map(([, y]) => y)] as const;

describe('offsets within a pixel', () => {
  it.each([1, 4, 8, 16, 25])('%s of them have the centre as mean and lie in the pixel', (count) => {
    const offsets = pixelOffsets(count);
    expect(offsets).toHaveLength(count);
    for (const values of axes(offsets)) {
      expect(mean(values)).toBeCloseTo(0, 14);
      for (const value of values) expect(Math.abs(value)).toBeLessThanOrEqual(0.5);
      expect(new Set(values).size).toBe(count);
    }
  });
});

describe('points of the pupil', () => {
  it.each([1, 2, 16, 64, 256])('%s of them lie in the disc about its centre', (count) => {
    const points = discPoints(count);
    expect(points).toHaveLength(count);
    for (const values of axes(points)) expect(mean(values)).toBeCloseTo(0, 14);
    for (const point of points) expect(Math.hypot(...point)).toBeLessThan(1);
  });

  it('fill it evenly: the spread of a full disc along any line is a quarter of its diameter', () => {
    // A blur disc in the pixels may be 2 % off, the pixels' own error included.
    // Second moment of a uniform disc of radius r about a diameter: pi r^4 / 4 over its area pi r^2.
    for (const count of [64, 128, 256])
      for (const turn of [0, 0.4, 0.8, 1.2]) {
        const along = discPoints(count).map(([x, y]) => x * Math.cos(turn) + y * Math.sin(turn));
        const spread = Math.sqrt(mean(along.map((value) => value ** 2)));
        expect(Math.abs(spread / 0.5 - 1)).toBeLessThan(0.015);
      }
  });
});

describe('samples', () => {
  it('are the same each time, and one alone is the plain view', () => {
    expect(samplesOf(64)).toEqual(samplesOf(64));
    const [only] = samplesOf(1);
    for (const value of [...(only?.pixel ?? []), ...(only?.lens ?? [])])
      expect(value).toBeCloseTo(0, 14);
    expect(only?.turn).toBe(0);
  });

  it.each([16, 64, 256])(
    '%s spread over pixel, pupil and turn without one telling the other',
    (count) => {
      const samples = samplesOf(count);
      const told = [
        samples.map(({ pixel }) => pixel[0]),
        samples.map(({ pixel }) => pixel[1]),
        samples.map(({ lens }) => lens[0]),
        samples.map(({ lens }) => lens[1]),
        samples.map(({ lens }) => Math.hypot(...lens) ** 2 - 0.5),
        samples.map(({ turn }) => Math.cos(turn)),
        samples.map(({ turn }) => Math.sin(turn)),
      ];
      told.forEach((one, i) => {
        for (const other of told.slice(i + 1)) {
          const product = mean(one.map((value, k) => value * (other[k] as number)));
          const size = Math.sqrt(mean(one.map((v) => v ** 2)) * mean(other.map((v) => v ** 2)));
          expect(Math.abs(product / size)).toBeLessThan(0.4);
        }
      });
    },
  );
});
