import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runThrough } from '../../src/plan/run';
import type { Action } from '../../src/session/actions/action';
import * as actions from '../../src/session/actions/plan-page';
import { clampSession } from '../../src/session/clamp';
import { demoSession } from '../../src/session/demo';
import { decodeFile, encodeFile } from '../../src/session/file';
import { bodyOf, kitOf, lensesOf, runOf } from '../../src/session/kit';
import { lampPlace, softnessOf } from '../../src/session/light';
import { LIMITS, MOST } from '../../src/session/limits';
import type { Session } from '../../src/session/types';
import { context, models, must, picture, resolve } from './fixtures';

const demo = demoSession();

const doing = <Args>(session: Session, action: Action<Args>, args: Args) => {
  const after = action.edit(session, args, context);
  return { after, label: action.label(after, args, context) };
};

/** A 24-120 mm zoom typed by its figures. */
const typed = {
  name: 'My 24–120',
  focal: [0.024, 0.12],
  widest: [4, 4],
  smallest: 22,
  nearestFocus: [0.45, 0.45],
  length: 0.15,
} as const;

describe('kits', () => {
  it('are added, named, chosen and removed; the last one stays', () => {
    const { after, label } = doing(demo, actions.addKit, { name: 'Borrowed' });
    expect(label).toBe('Kit added: Borrowed');
    expect(after.kit).toBe('kit-2');
    expect(kitOf(after)).toMatchObject({ name: 'Borrowed', lenses: [] });
    expect(bodyOf(after).format).toBe('full-frame');
    const back = doing(after, actions.chooseKit, { kit: 'kit-1' });
    expect(back.label).toBe('Kit in use: Kit');
    expect(kitOf(back.after).lenses).toHaveLength(4);
    expect(doing(after, actions.renameKit, { name: ' Hired ' }).label).toBe('Kit named Hired');
    const one = doing(after, actions.removeKit, { kit: 'kit-2' }).after;
    expect(one.kits).toHaveLength(1);
    expect(one.kit).toBe('kit-1');
    expect(doing(one, actions.removeKit, { kit: 'kit-1' }).after).toBe(one);
  });

  it('that lack a picture’s lens leave it to any lens they have, the view as it was', () => {
    const kept = doing(demo, actions.setKept, { to: 'lens' }).after;
    const named = doing(kept, actions.setLens, { letter: 'B', lens: '70-300-f4-5-6-zoom' }).after;
    const { focal } = resolve(named, 'B');
    const { after } = doing(named, actions.addKit, { name: 'Borrowed' });
    expect(picture(after, 'B').lens).toBeNull();
    expect(resolve(after, 'B').focal).toBeCloseTo(focal, 12);
  });

  it('hold several bodies, one in use', () => {
    const added = doing(demo, actions.addBody, {
      name: 'Second',
      format: 'four-thirds',
      megapixels: 20,
    }).after;
    expect(bodyOf(added).id).toBe('body-1');
    const { after, label } = doing(added, actions.chooseBody, { body: 'body-2' });
    expect(label).toBe('Body in use: Second');
    expect(resolve(after, 'B').format.id).toBe('four-thirds');
    const set = doing(after, actions.setBody, { body: 'body-2', megapixels: 1e9 }).after;
    expect(bodyOf(set).megapixels).toBe(LIMITS.megapixels.most);
    expect(doing(after, actions.setBody, { body: 'body-2', format: 'none' }).after).toBe(after);
    // Without the one in use the first is.
    const left = doing(after, actions.removeBody, { body: 'body-2' }).after;
    expect(bodyOf(left).id).toBe('body-1');
    expect(doing(left, actions.removeBody, { body: 'body-1' }).after).toBe(left);
  });

  it('take lenses of the classes, each once', () => {
    const { after, label } = doing(demo, actions.addLens, { lens: '135-f2' });
    expect(label).toBe('Lens added: 135 mm f/2');
    expect(kitOf(after).lenses.at(-1)).toBe('135-f2');
    expect(doing(after, actions.addLens, { lens: '135-f2' }).after).toBe(after);
    expect(doing(after, actions.addLens, { lens: 'none' }).after).toBe(after);
    expect(kitOf(doing(after, actions.removeLens, { lens: '135-f2' }).after)).toEqual(kitOf(demo));
  });
});

describe('own lenses', () => {
  const { after: own, label } = doing(demo, actions.addOwnLens, typed);

  it('are typed, and take pictures as those of the classes do', () => {
    expect(label).toBe('Lens added: My 24–120');
    expect(kitOf(own).lenses.at(-1)).toBe('own-1');
    const taken = doing(own, actions.setLens, { letter: 'B', lens: 'own-1' });
    expect(taken.label).toBe('B taken with the My 24–120');
    expect(resolve(taken.after, 'B').limits[0]).toMatchObject({ reason: 'lens-too-short' });
    expect(decodeFile(encodeFile(taken.after), models)).toEqual({ ok: true, session: taken.after });
  });

  it('are edited within their limits and lose what is forgotten', () => {
    const wild = doing(own, actions.setOwnLens, {
      lens: 'own-1',
      focal: [9, 0.05],
      smallest: 1,
      largestMagnification: 0.25,
    }).after;
    expect(wild.ownLenses[0]).toMatchObject({
      focal: [0.05, LIMITS.focal.most],
      smallest: 4,
      largestMagnification: 0.25,
    });
    const back = doing(wild, actions.setOwnLens, {
      lens: 'own-1',
      ...typed,
      largestMagnification: undefined,
    });
    expect(back.after).toEqual(own);
    expect(back.label).toBe('Lens changed: My 24–120');
  });

  it('gone, are in no kit and take no picture', () => {
    const taken = doing(own, actions.setLens, { letter: 'B', lens: 'own-1' }).after;
    const { after } = doing(taken, actions.removeOwnLens, { lens: 'own-1' });
    expect(after).toEqual(demo);
  });

  it('measured: 0.435 m at 2.000 m and 0.668 m at 3.000 m give a pupil at 0.133 m', () => {
    const near = { tape: 2, frame: 0.435 };
    const far = { tape: 3, frame: 0.668 };
    const { after } = doing(own, actions.takeMeasure, { lens: 'own-1', mark: 0.12, near, far });
    const [, measured] = after.ownLenses;
    // k = 0.233 a metre, e = 2 - 0.435 / 0.233 m; 36 mm over k is s' = 154.5 mm, focused at 2 m: f = 142.7 mm.
    expect(measured?.entrancePupil).toBeCloseTo(2 - 0.435 / 0.233, 9);
    const image = 0.036 / 0.233;
    const f = 1 / (1 / image + 1 / (0.435 / 0.233));
    expect(measured?.focal[0]).toBeCloseTo(f, 9);
    expect(measured).toMatchObject({ name: 'My 24–120, measured', measured: { near, far } });
    expect(kitOf(after).lenses).toContain('own-2');
    expect(kitOf(after).lenses).not.toContain('own-1');
    // Focused at 3 m instead, the same image distance is that of a focal length a little longer; it is kept.
    const other = doing(own, actions.takeMeasure, {
      lens: 'own-1',
      mark: 0.12,
      near,
      far,
      focusedAt: 3,
    }).after.ownLenses[1];
    expect(other?.measured).toEqual({ near, far, focusedAt: 3 });
    expect(other?.entrancePupil).toBeCloseTo(2 - 0.435 / 0.233, 9);
    expect(other?.focal[0]).toBeCloseTo(1 / (1 / image + 1 / (1 + 0.435 / 0.233)), 9);
    // Measured again, it is mended in its place.
    const again = doing(after, actions.takeMeasure, {
      lens: 'own-2',
      near: { tape: 2, frame: 0.44 },
      far,
    }).after;
    expect(again.ownLenses).toHaveLength(2);
    expect(again.ownLenses[1]?.entrancePupil).toBeCloseTo(2 - 0.44 / 0.228, 9);
    // Frames that shrink with the distance are no lens's.
    expect(
      doing(own, actions.takeMeasure, { lens: 'own-1', near: far, far: { tape: 4, frame: 0.5 } })
        .after,
    ).toBe(own);
  });
});

describe('the room', () => {
  it('becomes longer for a wall farther behind the camera, along the axis', () => {
    const { after } = doing(demo, actions.setCameraWall, { to: 4.3 });
    expect(after.room).toMatchObject({ width: 3.4, sitterBefore: 1.2 });
    expect(after.room.length).toBeCloseTo(5.7, 12);
    expect(runOf(after.room).cameraWall).toBeCloseTo(4.3, 12);
  });

  it('turned, keeps sitter and camera inside', () => {
    const { after, label } = doing(demo, actions.setAxis, { to: 'diagonal' });
    expect(label).toBe('Camera from corner to corner');
    // 6.21 m from corner to corner; 1.35 m of paper clear the walls 1.03 m out of the corner.
    expect(runOf(after.room).cameraWall).toBeCloseTo(
      Math.hypot(5.2, 3.4) - (1.35 / 2) * (5.2 / 3.4) - 1.2,
      12,
    );
    const across = doing(demo, actions.setAxis, { to: 'across' }).after;
    expect(runOf(across.room).cameraWall).toBeCloseTo(2, 12);
  });

  it('smaller than what stands in it brings all inside', () => {
    const { after } = doing(demo, actions.setRoom, { length: 1.6, width: 1 });
    const { room } = after;
    expect(room.sitterBefore).toBeCloseTo(0.9, 12);
    expect(runOf(room).cameraWall).toBeCloseTo(LIMITS.cameraWall.least, 12);
    for (const { x, y, length, width } of room.obstacles) {
      expect(Math.max(x + length - room.length, y + width - room.width)).toBeLessThan(1e-9);
    }
  });

  it('hangs the backdrop elsewhere with the sitter, or behind a sitter who stays', () => {
    const typedIn = doing(demo, actions.setBackdrop, { offWall: 0.5 });
    expect(typedIn.label).toBe('Backdrop 0.50 m off the wall');
    expect(runOf(typedIn.after.room)).toMatchObject({ backdrop: 1.2, cameraWall: 3.5 });
    const dragged = doing(demo, actions.moveBackdrop, { offWall: 0.5 }).after;
    expect(runOf(dragged.room).backdrop).toBeCloseTo(0.9, 12);
    expect(runOf(dragged.room).cameraWall).toBeCloseTo(3.8, 12);
    // Up to the sitter's back.
    const far = doing(demo, actions.moveBackdrop, { offWall: 9 }).after;
    expect(far.room.sitterBefore).toBeCloseTo(LIMITS.backdrop.least, 12);
    expect(doing(demo, actions.setBackdrop, { width: 2.72, top: 99 }).after.room.backdrop).toEqual({
      offWall: 0.2,
      width: 2.72,
      top: 2.6,
    });
  });

  it('puts the sitter elsewhere', () => {
    const { after, label } = doing(demo, actions.setSitterPlace, { before: 0.8, aside: -0.4 });
    expect(label).toBe('Sitter 0.80 m before the backdrop');
    expect(after.room).toMatchObject({ sitterBefore: 0.8, aside: -0.4 });
    expect(doing(demo, actions.setSitterPlace, { aside: 9 }).after.room.aside).toBeCloseTo(1.4, 12);
  });

  it('holds things and doors', () => {
    const { after, label } = doing(demo, actions.addObstacle, { kind: 'thing', name: 'Table' });
    expect(label).toBe('Table added');
    expect(after.room.obstacles.at(-1)).toMatchObject({ id: 'thing-4', x: 2.1, y: 1.45 });
    const moved = doing(after, actions.setObstacle, { obstacle: 'thing-4', x: 99, y: -3 });
    expect(moved.label).toBe('Table moved');
    expect(moved.after.room.obstacles.at(-1)).toMatchObject({ x: 4.2, y: 0 });
    const gone = doing(moved.after, actions.removeObstacle, { obstacle: 'thing-4' }).after;
    expect(gone.room).toEqual(demo.room);
    let many = demo;
    for (let i = 0; i < 40; i++) {
      many = doing(many, actions.addObstacle, { kind: 'door' }).after;
    }
    expect(many.room.obstacles).toHaveLength(MOST.obstacles);
  });
});

it('a light is carried over the floor at its height, and up and down over its place', () => {
  const before = lampPlace(demo.light.key);
  const over = doing(demo, actions.moveLamp, { lamp: 'key', x: -2, z: 1 });
  expect(over.label).toBe('Key light moved');
  const place = lampPlace(over.after.light.key);
  expect(place.x).toBeCloseTo(-2, 12);
  expect(place.y).toBeCloseTo(before.y, 12);
  expect(place.z).toBeCloseTo(1, 12);
  // 0.48 m wide 2.41 m away: as soft as 0.48 / 2.41.
  expect(softnessOf(over.after.light.key)).toBeCloseTo(0.48 / Math.hypot(2, before.y, 1), 12);
  const up = lampPlace(doing(demo, actions.moveLamp, { lamp: 'key', y: 2 }).after.light.key);
  expect(up.x).toBeCloseTo(before.x, 12);
  expect(up.y).toBeCloseTo(2, 12);
});

describe('the plan', () => {
  it('wants framings, each as the framing is usually taken', () => {
    const { after, label } = doing(demo, actions.addWanted, { framing: 'close-up' });
    expect(label).toBe('Wanted: Close-up of the face');
    expect(after.plan.wanted.at(-1)).toEqual({
      id: 'wanted-6',
      framing: 'close-up',
      frameHeight: null,
      orientation: must(models.framings.get('close-up')).orientation,
      eyesAt: must(models.framings.get('close-up')).eyesAt,
      cameraHeight: 0,
      of: '1',
    });
    expect(doing(demo, actions.addWanted, { framing: 'none' }).after).toBe(demo);
    const ownFrame = doing(demo, actions.addWanted, { frameHeight: 0.6 }).after;
    expect(ownFrame.plan.wanted.at(-1)).toMatchObject({ framing: null, frameHeight: 0.6 });
    const set = doing(after, actions.setWanted, { wanted: 'wanted-6', cameraHeight: 9 });
    expect(set.label).toBe('Close-up of the face changed');
    expect(set.after.plan.wanted.at(-1)?.cameraHeight).toBe(LIMITS.cameraHeight.most);
    const moved = doing(after, actions.moveWanted, { wanted: 'wanted-6', to: 0 }).after;
    expect(moved.plan.wanted.map(({ id }) => id)).toEqual([
      'wanted-6',
      ...demo.plan.wanted.map(({ id }) => id),
    ]);
    expect(doing(moved, actions.removeWanted, { wanted: 'wanted-6' }).after).toEqual(demo);
  });

  it('asks, or no more asks', () => {
    const { after } = doing(demo, actions.setAsked, { noseGain: null, fNumber: [22, 2] });
    expect(after.plan.asked).toEqual({ ...demo.plan.asked, noseGain: null, fNumber: [2, 22] });
  });

  it('takes up to 30 people in rows', () => {
    const row = (count: number) => new Array<string>(count).fill('adult-woman');
    const one = doing(demo, actions.addRow, { place: 'seated', models: row(12) });
    expect(one.label).toBe('Row added: seated');
    const two = doing(one.after, actions.addRow, { place: 'standing', models: row(99) }).after;
    expect(two.plan.group?.rows.map(({ models: people }) => people.length)).toEqual([12, 18]);
    const full = doing(two, actions.addRow, { place: 'step', models: row(1) }).after;
    expect(full).toBe(two);
    const fewer = doing(two, actions.setRow, { row: 0, models: row(2), spacing: 99 }).after;
    expect(fewer.plan.group?.rows[0]).toMatchObject({ spacing: LIMITS.personSpacing.most });
    const curved = doing(fewer, actions.setGroup, { to: { curve: 'curved', step: 0.3 } }).after;
    expect(curved.plan.group).toMatchObject({ curve: 'curved', step: 0.3, rowSpacing: 0.7 });
    const wanted = doing(curved, actions.addWanted, { of: 'group' }).after;
    const empty = doing(wanted, actions.setRow, { row: 1, models: ['none'] }).after;
    expect(empty.plan.group?.rows).toHaveLength(1);
    const gone = doing(empty, actions.removeRow, { row: 0 }).after;
    expect(gone.plan.group).toBeNull();
    expect(gone.plan.wanted.at(-1)?.of).toBe('1');
  });

  it('hangs what it found as one step: crop, body, standpoint, lens, aperture and height', () => {
    const added = doing(demo, actions.addBody, {
      name: 'Second',
      format: 'aps-c-23-6',
      megapixels: 24,
    }).after;
    const { after, label } = doing(added, actions.hangPlanned, {
      letter: 'B',
      wanted: 'wanted-3',
      camera: 'body-2/85-f1-8',
      setting: { standpoint: 3.1, frameHeight: 0.9, mark: 0.085, fNumber: 5.6 },
    });
    expect(label).toBe('B: Half-length from 3.10 m');
    expect(after.crop).toMatchObject({ framing: 'half-length', frameHeight: 0.9, eyesAt: 0.26 });
    expect(picture(after, 'B')).toMatchObject({ standpoint: 3.1, lens: '85-f1-8', fNumber: 5.6 });
    expect(bodyOf(after).id).toBe('body-2');
    expect(resolve(after, 'B').frameHeight).toBeCloseTo(0.9, 9);
    expect(picture(after, 'A')).toEqual(picture(demo, 'A'));
    expect(
      doing(demo, actions.hangPlanned, {
        letter: 'B',
        wanted: 'wanted-3',
        camera: 'body-9/85-f1-8',
        setting: { standpoint: 3.1, frameHeight: 0.9, mark: 0.085, fNumber: 5.6 },
      }).after,
    ).toBe(demo);
  });
});

describe('hostile numbers', () => {
  const wild = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constantFrom(0, -1, 1e-12, 1e12, Number.NaN, Infinity, -Infinity),
  );
  it('leave a room that holds its people, and a clamped session stays as it is', () => {
    fc.assert(
      fc.property(
        fc.record({ length: wild, width: wild, ceiling: wild, aside: wild, sitterBefore: wild }),
        fc.record({ offWall: wild, width: wild, top: wild }),
        fc.constantFrom('along', 'across', 'diagonal'),
        (sides, backdrop, axis) => {
          const { after } = doing(demo, actions.setRoom, {
            ...sides,
            backdrop,
            axis: axis as 'along',
          });
          const { room } = after;
          const { cameraWall } = runThrough(room);
          expect(cameraWall).toBeGreaterThan(LIMITS.cameraWall.least - 1e-9);
          expect(room.sitterBefore).toBeGreaterThanOrEqual(LIMITS.backdrop.least);
          expect(Number.isFinite(cameraWall)).toBe(true);
          expect(clampSession(after, models)).toEqual(after);
          expect(decodeFile(encodeFile(after), models)).toEqual({ ok: true, session: after });
        },
      ),
      { seed: 21, numRuns: 1000 },
    );
  });

  it('leave lenses that resolve', () => {
    fc.assert(
      fc.property(
        fc.record({
          focal: fc.tuple(wild, wild),
          widest: fc.tuple(wild, wild),
          nearestFocus: fc.tuple(wild, wild),
          smallest: wild,
          length: wild,
          largestMagnification: wild,
          entrancePupil: wild,
        }),
        (figures) => {
          const { after } = doing(demo, actions.addOwnLens, { name: 'x', ...figures });
          expect(decodeFile(encodeFile(after), models)).toEqual({ ok: true, session: after });
          const named = doing(after, actions.setLens, { letter: 'B', lens: 'own-1' }).after;
          const { tapeDistance, focal } = resolve(named, 'B');
          expect(Number.isFinite(tapeDistance) && Number.isFinite(focal)).toBe(true);
          expect(lensesOf(after, models).get('own-1')?.name).toBe('x');
        },
      ),
      { seed: 22, numRuns: 500 },
    );
  });
});
