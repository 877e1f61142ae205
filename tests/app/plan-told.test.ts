/** What the plan's page says of what was solved. */
import { describe, expect, it } from 'vitest';
import { remedyWords, showIn, verdictWords } from '../../src/app/plan/told';
import { loadModels } from '../../src/models/node';
import { remediesFor, solvePlan } from '../../src/plan';
import { demoSession } from '../../src/session/demo';
import { planRequest } from '../../src/session/plan-request';
import type { Session } from '../../src/session/types';

const models = loadModels();
const show = showIn('metric');
const demo = demoSession();

const solved = (room: Partial<Session['room']>) => {
  const request = planRequest({ ...demo, room: { ...demo.room, ...room } }, models);
  return { request, ...solvePlan(request) };
};

describe('a chair where the photographer would stand', () => {
  it('splits the standpoints, and every end has its reason', () => {
    // The sitter stands 1.40 m from the end wall; the chair 2.30 to 2.45 m before the eyes, on the axis.
    const { request, verdicts } = solved({
      obstacles: [
        {
          id: 'c',
          name: 'Chair',
          kind: 'thing',
          x: 3.7,
          y: 1.5,
          length: 0.15,
          width: 0.4,
          height: 0.4,
        },
      ],
    });
    const split = verdicts.filter(({ spans }) => spans.length > 1);
    expect(split.length).toBeGreaterThan(0);
    for (const verdict of split) {
      const { works, why } = verdictWords(verdict, request, show);
      const [near, far] = verdict.spans as [(typeof verdict.spans)[0], (typeof verdict.spans)[0]];
      expect(works.split('; ')).toHaveLength(verdict.spans.length);
      expect(why).toMatch(/^Nearer, .+\. Between .+\. Farther, .+\.$/);
      expect(why).toContain(
        `Between ${show(near.to)} and ${show(far.from)}, Chair stands where you would.`,
      );
    }
  });
});

describe('a paper that is too narrow', () => {
  it('is offered in the widths that rolls have', () => {
    const { request, verdicts } = solved({ length: 9, width: 6, obstacles: [] });
    const widths = [...models.backdrops.values()].map(({ width }) => width);
    const offered = verdicts
      .filter(({ spans }) => spans.length === 0)
      .flatMap((verdict) => remediesFor(request, verdict))
      .filter(({ change }) => change.change === 'backdrop-width');
    expect(offered.length).toBeGreaterThan(0);
    for (const remedy of offered) {
      expect(widths).toContain(remedy.change.change === 'backdrop-width' && remedy.change.to);
      expect(remedyWords(remedy, request, show)).toContain('a backdrop');
    }
  });
});
