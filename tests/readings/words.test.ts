import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compare, gainAgainst, matchTheLook, readPair } from '../../src/readings/compare';
import type { Units } from '../../src/readings/format';
import { measure } from '../../src/readings/measures';
import { readings, readPicture, rowSentence } from '../../src/readings/read';
import { type ReadingId, ROWS, SHORT_TABLE } from '../../src/readings/rows';
import { always } from '../optics/value';
import { picture } from './picture';

const A = measure(picture({ standpoint: 0.4 }));
const B = measure(picture({ standpoint: 2.4 }));
const lettered = [
  { letter: 'A', measures: A },
  { letter: 'B', measures: B },
];
const shown = (id: ReadingId) => readings(A).find((reading) => reading.id === id)?.shown;
const change = (id: ReadingId) => compare(A, B).find((row) => row.id === id)?.change;

describe('readings', () => {
  it('have one row, one name and one formula each', () => {
    const all = readPicture(picture({ standpoint: 1 }));
    expect(all.map(({ id }) => id)).toEqual(ROWS.map(({ id }) => id));
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    expect(all.every(({ formula }) => formula !== '')).toBe(true);
    expect(SHORT_TABLE.every((id) => all.some((reading) => reading.id === id))).toBe(true);
  });

  it('show their unit', () => {
    expect(shown('nose_to_lens_m')).toBe('0.37 m');
    expect(shown('size_ratio.nose_tip')).toBe('+9 %');
    expect(shown('angle_of_view_deg.vertical')).toBe('55.4°');
    expect(shown('focal_length_mm')).toBe('31.6 mm');
    expect(shown('depth_of_field_m.total')).toBe('71 mm');
    expect(shown('effective_f_number')).toBe('f/8.7');
    expect(shown('exposure_loss_stops')).toBe('0.2 stops');
    expect(shown('in_focus.ear_left')).toBe('no');
    expect(shown('personal_distance')).toBe('intimate');
  });

  it('say what they mean with the values of their picture', () => {
    const say = (id: ReadingId, units: Units) => rowSentence(id, lettered.slice(0, 1), { units });
    expect(say('nose_to_lens_m', 'metric')).toBe(
      'The nose tip is 0.37 m from the lens, at intimate distance (inside 0.46 m).',
    );
    expect(say('nose_to_lens_m', 'imperial')).toBe(
      'The nose tip is 1 ft 2.5 in from the lens, at intimate distance (inside 1 ft 6 in).',
    );
  });

  it('say why there is no value', () => {
    const clearance = readings(A).find(({ id }) => id === 'lens_clearance_m');
    expect(clearance).toMatchObject({ value: null, shown: '–' });
    expect(clearance?.missing).toBe('No lens is chosen, so its length is not known.');
  });

  it('say that sharpness has no far limit', () => {
    const wide = measure(picture({ standpoint: 3, frameHeight: 3, fNumber: 16 }));
    const far = readings(wide).find(({ id }) => id === 'depth_of_field_m.far');
    expect(far).toMatchObject({ value: null, shown: 'no limit' });
    expect(far?.missing).toBeUndefined();
  });

  it('never show what is not a number or not a word', () => {
    always(
      fc.property(
        fc.double({ min: 0.02, max: 30, noNaN: true }),
        fc.double({ min: -0.6, max: 0.6, noNaN: true }),
        fc.double({ min: -1.2, max: 1.2, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.constantFrom<Units>('metric', 'imperial'),
        (standpoint, share, turn, frameHeight, units) => {
          const asked = { standpoint, height: standpoint * share, tilt: share / 3, frameHeight };
          const m = measure(picture({ ...asked, pose: { headTurn: turn } }));
          const all = readings(m, { units });
          const others = [...lettered, { letter: 'C', measures: m }];
          for (const { id, shown, meaning, value } of all) {
            const together = rowSentence(id, others, { units });
            for (const text of [shown, meaning, together]) {
              expect(text).not.toMatch(/NaN|undefined|null|Infinity|∞|\b0 % too|\s\s/);
            }
            expect(meaning).toMatch(/^[A-Z1-9f].*\.$/);
            expect(together).toMatch(/^[A-Z1-9f].*\.$/);
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          }
        },
      ),
      100,
    );
  });
});

describe('comparisons', () => {
  it('are told in words', () => {
    expect(change('nose_to_ear_ratio')).toBe('25 % more');
    expect(change('size_ratio.ears')).toBe('14 % smaller');
    expect(change('background_size_ratio')).toBe('63 % smaller');
    expect(change('stretch_percent.corner_outwards')).toBe('38 % more');
    expect(change('depth_of_field_m.total')).toBe('nearly equal');
    expect(change('nose_to_lens_m')).toBe('2.00 m nearer');
    expect(change('angle_of_view_deg.vertical')).toBe('45.4° wider');
    expect(change('focal_length_mm')).toBe('83 % shorter');
    expect(change('frame_m.height')).toBe('equal');
    expect(change('backdrop_blur_mm')).toBe('equal');
    expect(change('personal_distance')).toBe('');
    expect(change('lens_clearance_m')).toBe('');
  });

  it('turn round with the pictures', () => {
    const back = compare(B, A).find(({ id }) => id === 'nose_to_lens_m');
    expect(back?.change).toBe('2.00 m farther');
  });

  it('put the values of all pictures into one sentence', () => {
    expect(rowSentence('nose_to_ear_ratio', lettered)).toMatch(
      /drawn 30 % too large in A and 5 % too large in B\.$/,
    );
    const differing = [
      ...lettered,
      { letter: 'C', measures: measure(picture({ standpoint: 1, fNumber: 2 })) },
    ];
    expect(rowSentence('depth_of_field_m.total', differing)).toBe(
      'The f-numbers differ: f/8 in A, f/8 in B and f/2 in C.',
    );
  });

  it('say when the height of the camera differs too', () => {
    const raised = [
      { letter: 'A', measures: A },
      { letter: 'B', measures: measure(picture({ standpoint: 1, height: 0.2 })) },
    ];
    expect(rowSentence('view_angle_deg', raised)).toContain('Two things differ');
    expect(rowSentence('view_angle_deg', lettered)).toContain('the distance alone');
  });
});

describe('readings between two pictures', () => {
  it('gain and matching distance', () => {
    const ratio = (m: typeof A) => m.face.noseToEar.mean ?? 0;
    expect(gainAgainst(A, B)).toBeCloseTo(ratio(A) / ratio(B) - 1, 12);
    expect(matchTheLook(A, B)).toBeCloseTo(2.4, 10);
    const [gain, match] = readPair({ letter: 'A', measures: A }, { letter: 'B', measures: B });
    expect(gain?.shown).toBe('+25 %');
    expect(match?.shown).toBe('2.40 m');
  });

  it('another sitter matches from another distance, with the same ratio there', () => {
    const man = measure(picture({ standpoint: 0.4, sitter: 'adult-man' }));
    const distance = matchTheLook(man, B) ?? 0;
    const there = measure(picture({ standpoint: distance, sitter: 'adult-man' }));
    expect(there.face.noseToEar.mean).toBeCloseTo(B.face.noseToEar.mean ?? 0, 12);
  });

  it('no distance draws a turned head as a frontal one', () => {
    const profile = measure(picture({ standpoint: 1, pose: { headTurn: Math.PI * 0.7 } }));
    expect(matchTheLook(profile, B)).toBeNull();
  });
});
