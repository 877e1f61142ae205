import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ratioOf } from '../../src/optics/perspective';
import { metres } from '../../src/optics/units';
import { demoSession } from '../../src/session/demo';
import { pictureAlong, standpointAlong, timeAlong } from '../../src/session/play';
import { resolvePicture } from '../../src/session/resolve';
import { context, models, must } from './fixtures';

const demo = demoSession();
const distance = fc.double({ min: 0.15, max: 30, noNaN: true });
const time = fc.double({ min: 0, max: 1, noNaN: true });

describe('the move', () => {
  it('begins and ends at its pictures, and stays there', () => {
    for (const pace of ['metres', 'look'] as const) {
      expect(standpointAlong(0.4, 2.4, 0, pace)).toBe(0.4);
      expect(standpointAlong(0.4, 2.4, 1, pace)).toBe(2.4);
      expect(standpointAlong(0.4, 2.4, 7, pace)).toBe(2.4);
      expect(standpointAlong(0.4, 2.4, -7, pace)).toBe(0.4);
    }
  });

  it('halfway is the middle in metres, and the harmonic mean in look', () => {
    expect(standpointAlong(0.4, 2.4, 0.5, 'metres')).toBeCloseTo(1.4, 12);
    expect(standpointAlong(0.4, 2.4, 0.5, 'look')).toBeCloseTo((2 * 0.4 * 2.4) / 2.8, 12);
  });

  it('can be scrubbed: the time of a standpoint is the inverse', () => {
    fc.assert(
      fc.property(distance, distance, time, fc.constantFrom('metres', 'look'), (a, b, t, which) => {
        const pace = which as 'metres' | 'look';
        fc.pre(Math.abs(a / b - 1) > 0.01);
        expect(timeAlong(a, b, standpointAlong(a, b, t, pace), pace)).toBeCloseTo(t, 8);
      }),
      { seed: 9 },
    );
    expect(timeAlong(1, 1, 1, 'look')).toBe(0);
  });

  it('changes the nose-to-ear ratio more evenly in look than in metres', () => {
    const ratioAt = (t: number, pace: 'metres' | 'look') => {
      const ratio = ratioOf(
        metres(standpointAlong(0.4, 2.4, t, pace)),
        metres(0.033),
        metres(-0.079),
      );
      return ratio.ok ? ratio.value : Number.NaN;
    };
    const halfDone = (pace: 'metres' | 'look') =>
      (ratioAt(0, pace) - ratioAt(0.5, pace)) / (ratioAt(0, pace) - ratioAt(1, pace));
    expect(Math.abs(halfDone('look') - 0.5)).toBeLessThan(0.05);
    expect(halfDone('metres')).toBeGreaterThan(0.8);
  });

  it('holds the crop all the way, whatever the pictures at its ends do', () => {
    const locked = {
      ...demo,
      pictures: demo.pictures.map((each) => ({
        ...each,
        view: { by: 'lens' as const, focal: 0.05 },
      })),
    };
    fc.assert(
      fc.property(time, (t) => {
        const along = must(pictureAlong(locked, t, 'look'));
        expect(resolvePicture(locked, along, models, context.cast).frameHeight).toBeCloseTo(
          0.42,
          10,
        );
      }),
      { seed: 10 },
    );
  });

  it('carries height, tilt and aperture along', () => {
    const raised = {
      ...demo,
      pictures: demo.pictures.map((each, i) => ({
        ...each,
        cameraHeight: 0.2 * i,
        tilt: 0.1 * i,
        fNumber: 4 + 4 * i,
      })),
    };
    expect(pictureAlong(raised, 0.5, 'metres')).toMatchObject({
      cameraHeight: 0.1,
      tilt: 0.05,
      fNumber: 6,
    });
  });

  it('needs both its ends', () => {
    expect(pictureAlong({ ...demo, play: { ...demo.play, to: 'D' } }, 0.5, 'look')).toBeNull();
  });
});
