import { describe, expect, it } from 'vitest';
import { dimensionsOf, frameHeightOf } from '../../src/models/framing';
import { solvePlan } from '../../src/plan';
import type { PlanPerson, Verdict } from '../../src/plan/types';
import type { Action } from '../../src/session/actions/action';
import * as actions from '../../src/session/actions/plan-page';
import { demoSession } from '../../src/session/demo';
import { hungRow, planRequest } from '../../src/session/plan-request';
import type { Session } from '../../src/session/types';
import { context, models, must, resolve } from './fixtures';

const demo = demoSession();

const doing = <Args>(session: Session, { edit }: Action<Args>, args: Args): Session =>
  edit(session, args, context);

/** The people of the only wanted picture. */
const castOf = (session: Session): readonly PlanPerson[] =>
  must(planRequest(session, models).wanted.at(-1)).people;

const mm = (model: string, name: 'stature' | 'vertex_above_eyes' | 'sitting_height'): number =>
  must(models.sitters.get(model)).dimensions[name].mm / 1000;

describe('what the plan is asked', () => {
  const request = planRequest(demo, models);

  it('holds every body with every lens of the kit in use', () => {
    const two = doing(demo, actions.addBody, {
      name: 'Second body',
      format: 'aps-c-23-6',
      megapixels: 24,
    });
    expect(planRequest(two, models).cameras.map(({ id }) => id)).toEqual([
      'body-1/35-f2',
      'body-1/85-f1-8',
      'body-1/28-70-f4-zoom',
      'body-1/70-300-f4-5-6-zoom',
      'body-2/35-f2',
      'body-2/85-f1-8',
      'body-2/28-70-f4-zoom',
      'body-2/70-300-f4-5-6-zoom',
    ]);
    expect(planRequest(two, models).cameras[4]?.format.id).toBe('aps-c-23-6');
  });

  it('tells heights from the eyes: a stature less what is over them', () => {
    const eyes = mm('adult-woman', 'stature') - mm('adult-woman', 'vertex_above_eyes');
    expect(request.room.floor).toBeCloseTo(-eyes, 6);
    expect(request.room.ceiling).toBeCloseTo(2.6 - eyes, 6);
    expect(request.room.backdrop.top).toBeCloseTo(2.3 - eyes, 6);
    expect(request.wanted.every(({ room }) => room === undefined)).toBe(true);
  });

  it('takes each framing at its usual height for the person', () => {
    expect(request.wanted.map(({ name }) => name)).toEqual([
      'Headshot',
      'Head and shoulders',
      'Half-length',
      'Three-quarter length',
      'Full length',
    ]);
    const heights = request.wanted.map(({ frameHeight }) => frameHeight as number);
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
    expect(heights[0]).toBeCloseTo(0.42, 9);
  });

  it('follows the pose: whoever leans forward and sits is lower, and a turned head turns its ears', () => {
    const seated = doing(demo, actions.setPose, { stance: 'seated' });
    const lower = planRequest(seated, models).room.floor - request.room.floor;
    // The legs of somebody seated at ease are bent by the thigh: some 0.4 m (a usual thigh, from memory).
    expect(lower).toBeGreaterThan(0.3);
    expect(lower).toBeLessThan(0.5);
    const turned = castOf(doing(demo, actions.setPose, { headTurn: Math.PI / 6 }))[0];
    const [right, left] = must(turned).ears;
    // The way between the ears, 30 degrees about the vertical.
    expect(Math.atan2(right[2] - left[2], left[0] - right[0])).toBeCloseTo(Math.PI / 6, 2);
  });

  it('is the same object while nothing of it changes', () => {
    expect(planRequest(demo, models)).toBe(planRequest(demo, models));
    const first = planRequest(demo, models);
    const moved = doing(demo, actions.moveStandpoint, { letter: 'B', to: 3 });
    expect(planRequest(moved, models)).toBe(first);
    const other = doing(demo, actions.setAsked, { noseGain: 0.05 });
    expect(planRequest(other, models)).not.toBe(first);
  });
});

describe('two people', () => {
  const pair = doing(doing(demo, actions.addPerson, { model: 'child-8' }), actions.setBeside, {
    right: 0.4,
    forward: 0.1,
  });

  it('stand on one floor, the second beside the first', () => {
    const both = doing(pair, actions.addWanted, { framing: 'half-length', of: 'both' });
    const { people, name, frameHeight, eyesAcross } = must(planRequest(both, models).wanted.at(-1));
    expect(name).toBe('Half-length, both');
    const eyes = (model: string) => mm(model, 'stature') - mm(model, 'vertex_above_eyes');
    const down = eyes('child-8') - eyes('adult-woman');
    people[1]?.eyes.forEach((value, i) => {
      expect(value).toBeCloseTo([0.4, down, 0.1][i] as number, 6);
    });
    // Upright, 24 by 36: both bodies and 5 % at each side.
    const wide = people.map(({ halfBreadth }) => halfBreadth);
    const needed = ((0.4 + 2 * Math.max(...wide)) / 0.9) * 1.5;
    expect(frameHeight).toBeGreaterThanOrEqual(needed);
    expect(frameHeight).toBeLessThan(needed + 0.01);
    // Half of the 0.40 m lies to the right of the middle.
    expect(eyesAcross).toBeCloseTo(0.5 - 0.2 / ((must(frameHeight) * 24) / 36), 9);
  });

  it('see the room from their own eyes', () => {
    const child = doing(pair, actions.addWanted, { framing: 'headshot', of: '2' });
    const { wanted, room } = planRequest(child, models);
    const own = must(must(wanted.at(-1)).room);
    const lower =
      mm('adult-woman', 'stature') -
      mm('adult-woman', 'vertex_above_eyes') -
      (mm('child-8', 'stature') - mm('child-8', 'vertex_above_eyes'));
    expect(own.floor - room.floor).toBeCloseTo(lower, 6);
    expect(own.walls).toEqual(room.walls);
  });
});

describe('a group', () => {
  const models17 = ['adult-man', 'adult-woman', 'adult-man'];
  const seated = doing(demo, actions.addRow, { place: 'seated', models: models17, spacing: 0.6 });
  const rows = doing(seated, actions.addRow, {
    place: 'standing',
    models: ['adult-woman', 'adult-woman'],
    spacing: 0.7,
  });
  const session = doing(rows, actions.addWanted, { of: 'group' });

  it('is told from the middle of its front row, seated people by their sitting height', () => {
    const wanted = must(planRequest(session, models).wanted.at(-1));
    expect(wanted.frameHeight).toBeNull();
    expect(wanted.margin).toBe(0.05);
    const [first, ...others] = wanted.people;
    expect(wanted.people).toHaveLength(5);
    expect(first.id).toBe('1.2');
    expect(first.eyes).toEqual([0, 0, 0]);
    // Neighbours 0.60 m to each side; the row behind, 0.70 m back, 0.35 m to each side of the middle.
    expect(others.map(({ eyes: [x] }) => x.toFixed(2))).toEqual(['-0.60', '0.60', '-0.35', '0.35']);
    expect(others.map(({ eyes: [, , z] }) => z.toFixed(2))).toEqual([
      '0.00',
      '0.00',
      '-0.70',
      '-0.70',
    ]);
    // Standing against seated, both women: the stature less the sitting height and a chair of 0.45 m.
    const up = mm('adult-woman', 'stature') - mm('adult-woman', 'sitting_height') - 0.45;
    expect(others[2]?.eyes[1]).toBeCloseTo(up, 9);
    expect(must(wanted.room).floor).toBeCloseTo(
      -(0.45 + mm('adult-woman', 'sitting_height') - mm('adult-woman', 'vertex_above_eyes')),
      9,
    );
  });

  it('of an even row has its middle, not its first person, on the axis', () => {
    const two = ['adult-woman', 'adult-woman'];
    const even = doing(demo, actions.addRow, { place: 'standing', models: two, spacing: 0.6 });
    const { people } = must(
      planRequest(doing(even, actions.addWanted, { of: 'group' }), models).wanted.at(-1),
    );
    expect(people.map(({ eyes: [x] }) => x)).toEqual([-0.3, 0.3]);
    expect(people.map(({ eyes: [, , z] }) => z)).toEqual([0, 0]);
  });

  describe('framed by name', () => {
    const framed = (framing: string) =>
      must(
        planRequest(doing(rows, actions.addWanted, { framing, of: 'group' }), models).wanted.at(-1),
      );
    const lower = (framing: string, model: string) => {
      const found = must(models.framings.get(framing));
      const { usual } = frameHeightOf(found, dimensionsOf(must(models.sitters.get(model))));
      return (1 - found.eyesAt) * usual;
    };

    it('reaches as far below the front row’s eyes as a picture of one sitter', () => {
      const { downTo, people, orientation } = framed('half-length');
      const front = people.filter(({ row }) => row === 0);
      expect(orientation).toBe('landscape');
      expect(downTo).toHaveLength(3);
      const below = lower('half-length', 'adult-woman');
      expect(below).toBeGreaterThan(0.4);
      expect(downTo?.[0]?.[1]).toBeCloseTo(-below, 9);
      expect(downTo?.map(([x]) => x).toSorted()).toEqual(
        front.map(({ eyes: [x] }) => x).toSorted(),
      );
    });

    it('shows a seated row down to the feet, and as much floor under them as for one who stands', () => {
      const underFeet =
        lower('full-length', 'adult-woman') -
        mm('adult-woman', 'stature') +
        mm('adult-woman', 'vertex_above_eyes');
      const { downTo, room } = framed('full-length');
      expect(underFeet).toBeGreaterThan(0.02);
      expect(downTo?.[0]?.[1]).toBeCloseTo(must(room).floor - underFeet, 9);
    });

    it('holds all of it from the recommended standpoint, the eyes between crown and lower edge', () => {
      const open = doing(rows, actions.setRoom, { length: 14, width: 8, obstacles: [] });
      const asking = doing(open, actions.setAsked, {
        noseGain: null,
        stretch: null,
        rowDifference: null,
        backdropMargin: null,
      });
      const session = doing(
        { ...asking, plan: { ...asking.plan, wanted: [] } },
        actions.addWanted,
        {
          framing: 'half-length',
          of: 'group',
        },
      );
      const wanted = must(planRequest(session, models).wanted[0]);
      const found = solvePlan(planRequest(session, models)).verdicts.flatMap(
        ({ recommended }) => recommended ?? [],
      );
      expect(found.length).toBeGreaterThan(0);
      for (const { depth, frameHeight } of found) {
        const drawn = ([, y, z]: readonly number[]) => ((y ?? 0) * depth) / (depth - (z ?? 0));
        const lowest = Math.min(...must(wanted.downTo).map(drawn));
        const highest = Math.max(...wanted.people.map(({ crown }) => drawn(crown)));
        expect(-lowest).toBeLessThanOrEqual((1 - wanted.eyesAt) * frameHeight + 1e-9);
        expect(highest).toBeLessThanOrEqual(wanted.eyesAt * frameHeight + 1e-9);
      }
    });

    it('is framed as one sitter again when the group goes from it', () => {
      const group = doing(rows, actions.addWanted, { framing: 'half-length', of: 'group' });
      const { id, eyesAt } = must(group.plan.wanted.at(-1));
      const alone = must(
        doing(group, actions.setWanted, { wanted: id, of: '1' }).plan.wanted.at(-1),
      );
      expect(alone.orientation).toBe('portrait');
      expect(alone.eyesAt).toBe(0.26);
      // Standing heads behind seated ones: the front row's eyes sit lower than those of one sitter.
      expect(eyesAt).toBeGreaterThan(0.4);
    });
  });

  it('of thirty is asked within a few milliseconds', () => {
    let many: Session = demo;
    for (const place of ['seated', 'standing', 'step'] as const) {
      many = doing(many, actions.addRow, { place, models: new Array(10).fill('adult-man') });
    }
    many = doing(many, actions.addWanted, { of: 'group' });
    expect(castOf(many)).toHaveLength(30);
    const curved = doing(many, actions.setGroup, { to: { curve: 'curved' } });
    const [, second] = castOf(curved);
    // To the ends a curved row comes forward.
    expect(must(second).eyes[2]).toBeGreaterThan(0.1);
  });
});

it('tells which row of the result hangs', () => {
  expect(hungRow(demo)).toBeNull();
  const hung = doing(demo, actions.hangPlanned, {
    letter: 'B',
    wanted: 'wanted-3',
    camera: 'body-1/85-f1-8',
    setting: { standpoint: 2.6, frameHeight: 0.9, mark: 0.085, fNumber: 5.6 },
  });
  expect(hungRow(hung)).toEqual({ wanted: 'wanted-3', camera: 'body-1/85-f1-8' });
});

describe('what the plan finds, hung in a picture', () => {
  const rooms: readonly (readonly [string, Session])[] = [
    ['along', demo],
    // What stands about stands in the way there.
    ['on the diagonal', doing(demo, actions.setRoom, { axis: 'diagonal', obstacles: [] })],
    ['in a long room', doing(demo, actions.setRoom, { length: 9 })],
    [
      'with an own zoom',
      doing(demo, actions.addOwnLens, {
        name: 'Own',
        focal: [0.024, 0.12],
        widest: [4, 4],
        smallest: 22,
        nearestFocus: [0.45, 0.45],
        length: 0.15,
        largestMagnification: 0.24,
      }),
    ],
  ];

  /** The recommended settings of a session, each hung in B, with what the picture then is. */
  const hungIn = (session: Session) =>
    solvePlan(planRequest(session, models)).verdicts.flatMap(
      ({ wanted, camera, recommended }: Verdict) => {
        if (!recommended) return [];
        const hung = doing(session, actions.hangPlanned, {
          letter: 'B',
          wanted,
          camera,
          setting: recommended,
        });
        return [{ setting: recommended, resolved: resolve(hung, 'B') }];
      },
    );

  it.each(rooms)('is what the picture shows, and passes no limit: %s', (_, session) => {
    const all = hungIn(session);
    expect(all.length).toBeGreaterThan(3);
    for (const { setting, resolved } of all) {
      expect(resolved.limits).toEqual([]);
      expect(resolved.frameHeight).toBeCloseTo(setting.frameHeight, 9);
      expect(resolved.frameWidth).toBeCloseTo(setting.frameWidth, 9);
      expect(resolved.focal).toBeCloseTo(setting.focal, 9);
      expect(resolved.tapeDistance).toBeCloseTo(setting.tape, 9);
      // A mark that misses the end of its scale by rounding is set to the end.
      expect(resolved.lensMark).toBeCloseTo(setting.mark, 6);
    }
  });
});
