/** Every offered change is made here anew, by other code, and must work; clearly less of it must not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Change,
  type PlanCamera,
  type PlanRequest,
  type PlanRoom,
  remediesFor,
  solvePlan,
  type Wanted,
} from '../../src/plan';
import { request } from './random';

const RUNS = 160;

type FloorCorner = PlanRoom['walls'][number];

const only = (asked: PlanRequest): { wanted: Wanted; camera: PlanCamera } => ({
  wanted: asked.wanted[0] as Wanted,
  camera: asked.cameras[0] as PlanCamera,
});

/** What the figure is now that the change sets anew; null for a change without a size. */
function presentOf(asked: PlanRequest, change: Change): number | null {
  const { wanted, camera } = only(asked);
  const { backdrop, floor } = asked.room;
  switch (change.change) {
    case 'room-length':
      return 0;
    case 'focal':
      return camera.lens.focal[change.atLeast ? 1 : 0];
    case 'f-number':
      return asked.asked.fNumber[change.atLeast ? 1 : 0];
    case 'sitter-to-backdrop':
      return backdrop.behind;
    case 'backdrop-width':
      return backdrop.left - backdrop.right;
    case 'backdrop-height':
      return backdrop.top - floor;
    case 'camera-height':
      return wanted.cameraHeight;
    case 'eyes-at':
      return wanted.eyesAt;
    case 'frame-height':
      return wanted.frameHeight;
    case 'nose-gain':
      return asked.asked.noseGain;
    default:
      return null;
  }
}

/** The request with the figure of a change at `to`. */
function made(asked: PlanRequest, change: Change, to: number): PlanRequest {
  const { wanted, camera } = only(asked);
  const { room } = asked;
  const inRoom = (by: Partial<PlanRoom>): PlanRequest => ({ ...asked, room: { ...room, ...by } });
  const wants = (by: Partial<Wanted>): PlanRequest => ({
    ...asked,
    wanted: [{ ...wanted, ...by }],
  });
  const asks = (by: Partial<PlanRequest['asked']>): PlanRequest => ({
    ...asked,
    asked: { ...asked.asked, ...by },
  });
  const { focal } = camera.lens;
  const { fNumber } = asked.asked;
  const { backdrop } = room;
  switch (change.change) {
    case 'room-length': {
      const [from, , opposite] = room.walls as [FloorCorner, FloorCorner, FloorCorner];
      const turned = room.walls[0]?.[1] !== room.walls[1]?.[1];
      if (turned) {
        // Along a diagonal both sides grow in proportion.
        const whole = Math.hypot(opposite[0] - from[0], opposite[1] - from[1]);
        const share = (whole + to) / whole;
        return inRoom({
          wallBehindCamera: room.wallBehindCamera + to,
          walls: room.walls.map(([x, z]) => [
            share * x + (1 - share) * from[0],
            share * z + (1 - share) * from[1],
          ]),
        });
      }
      const back = Math.max(...room.walls.map(([, z]) => z));
      return inRoom({
        wallBehindCamera: room.wallBehindCamera + to,
        walls: room.walls.map(([x, z]) => [x, z > back - 1e-6 ? z + to : z]),
      });
    }
    case 'focal':
      return {
        ...asked,
        cameras: [{ ...camera, marks: change.atLeast ? [focal[0], to] : [to, focal[1]] }],
      };
    case 'f-number':
      return asks({ fNumber: change.atLeast ? [fNumber[0], to] : [to, fNumber[1]] });
    case 'sitter-to-backdrop': {
      const nearer = to - backdrop.behind;
      const shifted = (outline: PlanRoom['walls']): PlanRoom['walls'] =>
        outline.map(([x, z]) => [x, z - nearer]);
      return inRoom({
        backdrop: { ...backdrop, behind: to },
        wallBehindCamera: room.wallBehindCamera - nearer,
        walls: shifted(room.walls),
        obstacles: room.obstacles.map((each) => ({ ...each, outline: shifted(each.outline) })),
      });
    }
    case 'backdrop-width':
      return inRoom({ backdrop: { ...backdrop, left: to / 2, right: -to / 2 } });
    case 'backdrop-height':
      return inRoom({ backdrop: { ...backdrop, top: to + room.floor } });
    case 'camera-height':
      return wants({ cameraHeight: to });
    case 'eyes-at':
      return wants({ eyesAt: to });
    case 'frame-height':
      return wants({ frameHeight: to });
    case 'nose-gain':
      return asks({ noseGain: to });
    case 'drop-demand':
      return asks({ [change.demand]: null });
    case 'move-obstacle':
      return inRoom({ obstacles: room.obstacles.filter(({ id }) => id !== change.obstacle) });
    case 'other-camera':
      return asked;
  }
}

const valueIn = (change: Change): number =>
  change.change === 'room-length' ? change.by : 'to' in change ? change.to : Number.NaN;

const STEP: Partial<Record<Change['change'], number>> = { focal: 0.001, 'nose-gain': 0.005 };

const works = (asked: PlanRequest): boolean =>
  solvePlan(asked).verdicts.some(({ spans }) => spans.length > 0);

describe('remedies', () => {
  const kinds = new Map<string, number>();

  test(`of ${RUNS} failing requests work when made anew, and a step and a half less does not`, () => {
    let failing = 0;
    fc.assert(
      fc.property(request, (asked) => {
        const verdict = solvePlan(asked).verdicts[0];
        if (!verdict || verdict.spans.length > 0) return;
        failing += 1;
        const found = remediesFor(asked, verdict);
        expect(found.map(({ effort }) => effort)).toEqual(
          found.map(({ effort }) => effort).toSorted((a, b) => a - b),
        );
        for (const { change } of found) {
          kinds.set(change.change, (kinds.get(change.change) ?? 0) + 1);
          const value = valueIn(change);
          const label = JSON.stringify(change);
          expect(works(made(asked, change, value)), label).toBe(true);
          const present = presentOf(asked, change);
          if (present === null || change.change === 'f-number') continue;
          const less = value - Math.sign(value - present) * 1.5 * (STEP[change.change] ?? 0.01);
          if ((less - present) * (value - present) <= 0) continue;
          expect(works(made(asked, change, less)), `${label}, less: ${less}`).toBe(false);
          // Nearer to the present there is nothing either; only for the sitter's place could there be.
          if (change.change !== 'sitter-to-backdrop')
            expect(works(made(asked, change, (value + present) / 2)), `${label}, half`).toBe(false);
        }
      }),
      { numRuns: RUNS, seed: 11, endOnFailure: true },
    );
    expect(failing).toBeGreaterThan(RUNS / 2);
    // Most kinds came up, or the above would say little.
    expect([...kinds.keys()].length).toBeGreaterThan(8);
  }, 300_000);
});
