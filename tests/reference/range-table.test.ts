/**
 * The column "nose to ear" of the table of standpoints against the central projection of a point: a part `z`
 * before the eye plane lies d - z from the lens and is drawn in inverse proportion to that. Written here anew
 * from the landmarks, 1 + (z nose - z ear) / (d - z nose); no module of optics or readings takes part.
 */
import { describe, expect, it } from 'vitest';
import { rangeTable } from '../../src/handout/range-table';
import { unsculpted } from '../../src/session/cast';
import { demoSession } from '../../src/session/demo';
import { inPlaceOf, measuredAlone } from '../../src/session/one-sitter';
import { personDimensions } from '../../src/session/person';
import { standpointsBetween } from '../../src/session/standpoint-list';
import { models, must } from '../session/fixtures';

const session = demoSession();
const found = standpointsBetween(0.3, 4, 0.1);
const standpoints = found.ok ? found.value : [];

describe('nose to ear in the table', () => {
  it.each([...models.sitters.keys()])('is the central projection’s for %s', (model) => {
    const person = inPlaceOf(must(session.people[0]), model);
    const sitter = unsculpted(personDimensions(person, models));
    const { rows } = rangeTable(
      {
        standpoints,
        sitters: [{ name: model, at: measuredAlone(session, models, person, sitter) }],
        readings: new Set(['nose_to_ear_ratio']),
        letterAt: () => null,
        show: String,
      },
      {},
    );
    const nose = sitter.landmarks.pronasale[2];
    const ear = (sitter.landmarks.tragion_left[2] + sitter.landmarks.tragion_right[2]) / 2;
    expect(rows).toHaveLength(38);
    for (const { standpoint, cells } of rows)
      expect(cells[0]?.value).toBeCloseTo(1 + (nose - ear) / (standpoint - nose), 12);
  });
});
