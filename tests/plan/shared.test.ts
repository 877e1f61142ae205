/** What framings share is solved once; each by itself gives the same. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { framed, onSensor } from '../../src/plan/solve';
import { pairSpans, verdictFor, verdictsFor } from '../../src/plan/verdict';
import { camera, PEOPLE, request } from './random';

test('many framings and cameras together are answered as each pair by itself', () => {
  fc.assert(
    fc.property(
      request,
      fc.array(camera, { minLength: 1, maxLength: 3 }),
      fc.array(fc.constantFrom(...PEOPLE), { minLength: 1, maxLength: 4 }),
      (one, cameras, people) => {
        const [first] = one.wanted;
        if (!first) return;
        const asked = {
          ...one,
          cameras: cameras.map((each, i) => ({ ...each, id: `${i}` })),
          // Some share the frame's height, some differ in eyes and camera height.
          wanted: people.map((person, i) => ({
            ...first,
            id: `${i}`,
            people: [person] as const,
            cameraHeight: i % 2 === 0 ? first.cameraHeight : 0,
            frameHeight: i % 3 === 2 ? 0.7 : first.frameHeight,
          })),
        };
        const together = verdictsFor(asked);
        const apart = asked.wanted.flatMap((wanted) =>
          asked.cameras.map((each) => verdictFor(onSensor(framed(asked, wanted), each), each)),
        );
        expect(together).toEqual(apart);
        const spans = asked.wanted.flatMap((wanted) =>
          asked.cameras.map((each) => pairSpans(asked, wanted, each)),
        );
        expect(spans).toEqual(apart.map((verdict) => verdict.spans));
      },
    ),
    { numRuns: 400, seed: 7 },
  );
});
