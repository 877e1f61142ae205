import { describe, expect, it } from 'vitest';
import * as actions from '../../src/session/actions/plan-page';
import { demoSession } from '../../src/session/demo';
import { bodyOf, kitOf } from '../../src/session/kit';
import { LIMITS, NOTES_LENGTH, TITLE_LENGTH } from '../../src/session/limits';
import type { Letter, Session } from '../../src/session/types';
import { ballContext, context, models, picture, resolve } from './fixtures';

const demo = demoSession();

/** The session after an action and the words for it. */
function doing<Args>(
  session: Session,
  action: actions.Action<Args>,
  args: Args,
  around = context,
): { after: Session; label: string } {
  const after = action.edit(session, args, around);
  return { after, label: action.label(after, args, around) };
}

const keeping = (to: Session['kept']) => doing(demo, actions.setKept, { to }).after;
const standpoint = (session: Session, letter: Letter) => picture(session, letter).standpoint;
const focal = (session: Session, letter: Letter) => resolve(session, letter).focal * 1000;
const frame = (session: Session, letter: Letter) => resolve(session, letter).frameHeight;

describe('moving a standpoint', () => {
  it('keeps the crop: the focal length follows', () => {
    const { after, label } = doing(demo, actions.moveStandpoint, { letter: 'A', to: 0.8 });
    expect(label).toBe('A moved to 0.80 m');
    expect(frame(after, 'A')).toBeCloseTo(0.42, 12);
    // 800 x 36 / 456.
    expect(focal(after, 'A')).toBeCloseTo(63.158, 3);
    expect(after.pictures[1]).toEqual(demo.pictures[1]);
  });

  it('keeps the lens: the frame follows', () => {
    const { after } = doing(keeping('lens'), actions.moveStandpoint, { letter: 'A', to: 0.8 });
    expect(focal(after, 'A')).toBeCloseTo(31.579, 3);
    // 36 (800 - 31.579) / 31.579 mm.
    expect(frame(after, 'A')).toBeCloseTo(0.876, 6);
  });

  it('does nothing while the standpoint is kept', () => {
    const kept = keeping('standpoint');
    expect(doing(kept, actions.moveStandpoint, { letter: 'A', to: 0.8 }).after).toBe(kept);
  });

  it('stays in the legal range, and says where it ended', () => {
    const far = doing(demo, actions.moveStandpoint, { letter: 'B', to: 500 });
    expect(standpoint(far.after, 'B')).toBe(LIMITS.standpoint.most);
    expect(far.label).toBe('B moved to 30.00 m');
    const near = doing(demo, actions.moveStandpoint, { letter: 'B', to: -1 });
    expect(standpoint(near.after, 'B')).toBe(LIMITS.standpoint.least);
  });

  it('speaks in the units of the session', () => {
    const { after } = doing(demo, actions.setUnits, { to: 'imperial' });
    expect(doing(after, actions.moveStandpoint, { letter: 'A', to: 0.6096 }).label).toBe(
      'A moved to 2 ft',
    );
  });
});

describe('setting a focal length', () => {
  it('moves the standpoint while the crop is kept: d = f (H + h) / h', () => {
    const { after, label } = doing(demo, actions.setFocal, { letter: 'B', to: 0.085 });
    expect(standpoint(after, 'B') * 1000).toBeCloseTo((85 * 456) / 36, 6);
    expect(focal(after, 'B')).toBeCloseTo(85, 9);
    expect(label).toBe('B set to 85.0 mm at 1.08 m');
  });

  it.each(['head-height', 'pupil-distance'] as const)(
    'finds the standpoint when the crop is held by %s',
    (to) => {
      const held = doing(demo, actions.setHold, { to }, ballContext).after;
      const { after } = doing(held, actions.setFocal, { letter: 'B', to: 0.085 }, ballContext);
      expect(resolve(after, 'B', ballContext).focal).toBeCloseTo(0.085, 10);
    },
  );

  it('changes the crop while the standpoint is kept', () => {
    const { after } = doing(keeping('standpoint'), actions.setFocal, { letter: 'B', to: 0.085 });
    expect(standpoint(after, 'B')).toBe(2.4);
    expect(focal(after, 'B')).toBeCloseTo(85, 9);
    // 36 (2400 - 85) / 85 mm.
    expect(after.crop.frameHeight).toBeCloseTo(0.98047, 5);
    expect(after.crop.framing).toBeNull();
    expect(frame(after, 'A')).toBeCloseTo(0.98047, 5);
  });

  it.each(['head-height', 'pupil-distance'] as const)(
    'changes the crop held by %s exactly',
    (to) => {
      const held = doing(keeping('standpoint'), actions.setHold, { to }, ballContext).after;
      const { after } = doing(held, actions.setFocal, { letter: 'B', to: 0.085 }, ballContext);
      expect(resolve(after, 'B', ballContext).focal).toBeCloseTo(0.085, 12);
    },
  );

  it('changes the frame of that picture while the lens is kept', () => {
    const { after, label } = doing(keeping('lens'), actions.setFocal, { letter: 'B', to: 0.085 });
    expect(frame(after, 'B')).toBeCloseTo(0.98047, 5);
    expect(frame(after, 'A')).toBeCloseTo(0.42, 9);
    expect(standpoint(after, 'B')).toBe(2.4);
    expect(label).toBe('B set to 85.0 mm');
  });

  it('stays in the legal range', () => {
    const { after } = doing(demo, actions.setFocal, { letter: 'B', to: 99 });
    expect(standpoint(after, 'B')).toBeLessThanOrEqual(LIMITS.standpoint.most);
    expect(
      focal(doing(keeping('lens'), actions.setFocal, { letter: 'A', to: 0 }).after, 'A'),
    ).toBeCloseTo(4, 9);
  });
});

describe('setting the frame height', () => {
  it('changes all crops, from where they stand', () => {
    const { after, label } = doing(demo, actions.setFrameHeight, { to: 0.51 });
    expect([frame(after, 'A'), frame(after, 'B')]).toEqual([
      expect.closeTo(0.51, 12),
      expect.closeTo(0.51, 12),
    ]);
    expect(standpoint(after, 'A')).toBe(0.4);
    expect(after.crop.framing).toBeNull();
    expect(label).toBe('Frame set to 0.51 m');
  });

  it('moves locked lenses to where they frame it', () => {
    const { after } = doing(keeping('lens'), actions.setFrameHeight, { letter: 'B', to: 0.84 });
    expect(frame(after, 'B')).toBeCloseTo(0.84, 9);
    expect(focal(after, 'B')).toBeCloseTo(189.474, 3);
    expect(frame(after, 'A')).toBeCloseTo(0.42, 9);
  });

  it('takes a named framing with its place for the eyes', () => {
    const { after, label } = doing(demo, actions.setFraming, { framing: 'half-length' });
    expect(after.crop).toMatchObject({ frameHeight: 0.71, framing: 'half-length', eyesAt: 0.26 });
    expect(label).toBe('Framing: Half-length');
    expect(doing(demo, actions.setFraming, { framing: 'none' }).after).toBe(demo);
  });
});

describe('what is kept', () => {
  it('freezes each present focal length, and gives the crop back', () => {
    const locked = keeping('lens');
    expect(locked.pictures.map(({ view }) => view)).toEqual([
      { by: 'lens', focal: expect.closeTo(0.0315789, 6) },
      { by: 'lens', focal: expect.closeTo(0.189474, 6) },
    ]);
    const moved = doing(locked, actions.moveStandpoint, { letter: 'B', to: 1 }).after;
    const back = doing(moved, actions.setKept, { to: 'crop' }).after;
    expect(frame(back, 'B')).toBeCloseTo(0.42, 12);
    expect(back.pictures.every(({ view }) => view.by === 'crop')).toBe(true);
  });

  it('freezes the mark of a lens that is named', () => {
    const named = doing(demo, actions.setLens, { letter: 'B', lens: '70-300-f4-5-6-zoom' }).after;
    const before = resolve(named, 'B');
    const locked = doing(named, actions.setKept, { to: 'lens' }).after;
    const after = resolve(locked, 'B');
    expect(picture(locked, 'B').view).toEqual({ by: 'lens', focal: before.lensMark });
    expect(after.focal).toBeCloseTo(before.focal, 9);
    expect(after.lensMark).toBeCloseTo(before.lensMark ?? 0, 9);
  });

  it('leaves a cut its lens', () => {
    const cut = doing(demo, actions.cutFromLens, { letter: 'B', focal: 0.085 }).after;
    const locked = doing(cut, actions.setKept, { to: 'lens' }).after;
    expect(picture(locked, 'B').view).toEqual({ by: 'cut', focal: 0.085 });
  });
});

describe('lenses', () => {
  it('cuts from a lens and ends the cut', () => {
    const { after, label } = doing(demo, actions.cutFromLens, {
      letter: 'B',
      focal: 0.02,
      lens: '28-70-f4-zoom',
    });
    expect(picture(after, 'B')).toMatchObject({
      view: { by: 'cut', focal: 0.028 },
      lens: '28-70-f4-zoom',
    });
    expect(label).toBe('B cut from 28.0 mm');
    const ended = doing(after, actions.endCut, { letter: 'B' }).after;
    expect(picture(ended, 'B').view).toEqual({ by: 'crop' });
    const locked = doing({ ...after, kept: 'lens' }, actions.endCut, { letter: 'B' }).after;
    expect(picture(locked, 'B').view.by).toBe('lens');
  });

  it('names a lens; a locked view takes its nearest mark, and keeps its view when unnamed', () => {
    const { after, label } = doing(keeping('lens'), actions.setLens, {
      letter: 'B',
      lens: '85-f1-8',
    });
    expect(picture(after, 'B').view).toEqual({ by: 'lens', focal: 0.085 });
    expect(label).toBe('B taken with the 85 mm f/1.8');
    const zoom = doing(keeping('lens'), actions.setLens, {
      letter: 'B',
      lens: '70-300-f4-5-6-zoom',
    }).after;
    const acting = resolve(zoom, 'B').focal;
    const freed = doing(zoom, actions.setLens, { letter: 'B', lens: null }).after;
    expect(resolve(freed, 'B').focal).toBeCloseTo(acting, 12);
    expect(doing(demo, actions.setLens, { letter: 'B', lens: 'none' }).after).toEqual(demo);
  });

  it('sets the kit, each lens once, known ones only', () => {
    const { after, label } = doing(demo, actions.setKit, { lenses: ['35-f2', '35-f2', 'none'] });
    expect(kitOf(after).lenses).toEqual(['35-f2']);
    expect(label).toBe('Kit of 1 lens');
  });
});

describe('match the look', () => {
  it('moves to the other standpoint when all else is equal', () => {
    const { after, label } = doing(demo, actions.matchLook, { letter: 'A', other: 'B' });
    expect(standpoint(after, 'A')).toBeCloseTo(2.4, 9);
    expect(label).toBe('A moved to 2.40 m for the look of B');
  });

  it('finds the equal nose-to-ear ratio when the cameras stand at different heights', () => {
    const lowered = doing(demo, actions.setCameraHeight, { letter: 'A', to: -0.25 }).after;
    const { after } = doing(lowered, actions.matchLook, { letter: 'A', other: 'B' });
    const ratio = (letter: Letter) => {
      // Ratio of depths along the line from the eyes to the lens, by its definition.
      const { position } = resolve(after, letter).camera;
      const distance = Math.hypot(...position);
      const depth = (name: 'pronasale' | 'tragion_left' | 'tragion_right') =>
        context.cast['1'].landmarks[name].reduce(
          (sum, each, i) => sum + (each * (position[i] ?? 0)) / distance,
          0,
        );
      return (
        (distance - (depth('tragion_left') + depth('tragion_right')) / 2) /
        (distance - depth('pronasale'))
      );
    };
    expect(ratio('A')).toBeCloseTo(ratio('B'), 10);
    expect(standpoint(after, 'A')).not.toBeCloseTo(2.4, 3);
  });
});

describe('pictures', () => {
  it('hang up to four and come down to one', () => {
    let session = demo;
    for (let i = 0; i < 4; i++) session = doing(session, actions.addPicture, {}).after;
    expect(session.pictures.map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D']);
    expect(standpoint(session, 'C')).toBeCloseTo(3.6, 9);
    session = doing(session, actions.removePicture, { letter: 'B' }).after;
    expect(session.play).toMatchObject({ from: 'A', to: 'D' });
    expect(
      doing(session, actions.addPicture, { standpoint: 1 }).after.pictures.map(
        ({ letter }) => letter,
      ),
    ).toEqual(['A', 'B', 'C', 'D']);
    // Whichever end comes down, the move runs between two pictures that differ.
    const withoutA = doing(session, actions.removePicture, { letter: 'A' }).after;
    expect(withoutA.play).toMatchObject({ from: 'C', to: 'D' });
    for (const letter of ['A', 'B', 'C', 'D'] as const) {
      session = doing(session, actions.removePicture, { letter }).after;
    }
    expect(session.pictures).toHaveLength(1);
  });

  it('take aperture, height and tilt, one or all', () => {
    const all = doing(demo, actions.setFNumber, { to: 4 });
    expect(all.after.pictures.map(({ fNumber }) => fNumber)).toEqual([4, 4]);
    expect(all.label).toBe('A and B set to f/4');
    expect(doing(demo, actions.setFNumber, { letter: 'A', to: 0 }).label).toBe('A set to f/0.7');
    expect(doing(demo, actions.setCameraHeight, { letter: 'A', to: -0.3 }).label).toBe(
      'A set 0.30 m below the eyes',
    );
    expect(doing(demo, actions.setCameraHeight, { to: 0 }).label).toBe(
      'A and B level with the eyes',
    );
    const tilted = doing(demo, actions.setTilt, { letter: 'B', to: 0.1 });
    expect(picture(tilted.after, 'B').tilt).toBe(0.1);
    expect(tilted.label).toBe('B tilted to 5.7°');
    const three = doing(demo, actions.addPicture, {}).after;
    expect(doing(three, actions.setFNumber, { to: 4 }).label).toBe('All pictures set to f/4');
  });
});

describe('the sitter', () => {
  it('changes with the framing that is named', () => {
    const { after, label } = doing(demo, actions.setSitter, { model: 'adult-man' });
    expect(after.crop.frameHeight).toBeCloseTo(0.44, 12);
    expect(label).toBe('Adult man, 50th percentile');
    expect(doing(demo, actions.setSitter, { model: 'nobody' }).after).toBe(demo);
    const typed = doing(demo, actions.setFrameHeight, { to: 0.5 }).after;
    expect(doing(typed, actions.setSitter, { model: 'adult-man' }).after.crop.frameHeight).toBe(
      0.5,
    );
  });

  it('takes other dimensions, within the legal share of its own, and gives them back', () => {
    const own = models.sitters.get('adult-woman')?.dimensions.nose_protrusion.mm ?? 0;
    const { after, label } = doing(demo, actions.setDimension, {
      dimension: 'nose_protrusion',
      to: 900,
    });
    expect(after.people[0].changes.nose_protrusion).toBeCloseTo(
      own * LIMITS.dimensionChange.most,
      9,
    );
    expect(label).toBe('Nose protrusion set to 28 mm');
    const back = doing(after, actions.setDimension, { dimension: 'nose_protrusion', to: null });
    expect(back.after).toEqual(demo);
    expect(back.label).toBe('Nose protrusion as measured');
  });

  it('turns within the legal range', () => {
    const { after } = doing(demo, actions.setPose, { headTurn: 9, headNod: 0.1 });
    expect(after.people[0].pose).toEqual({
      ...demo.people[0].pose,
      headTurn: LIMITS.headTurn.most,
      headNod: 0.1,
    });
  });
});

describe('the rest of the document', () => {
  it('is set by name and clamped', () => {
    const { after: format, label } = doing(demo, actions.setFormat, {
      format: 'aps-c-23-6',
      megapixels: 1e9,
    });
    expect(bodyOf(format)).toEqual({
      id: 'body-1',
      name: 'Body',
      format: 'aps-c-23-6',
      megapixels: LIMITS.megapixels.most,
    });
    expect(label).toBe('Format: APS-C, 23.6 × 15.7 mm');
    expect(doing(demo, actions.setFormat, { format: 'none' }).after).toBe(demo);
    expect(doing(demo, actions.setOrientation, { to: 'landscape' }).after.crop.orientation).toBe(
      'landscape',
    );
    expect(doing(demo, actions.setHold, { to: 'head-height' }).label).toBe(
      'Crop held by head height',
    );
    expect(doing(demo, actions.setEyesAt, { down: 2 }).after.crop).toMatchObject({
      eyesAt: 1,
      eyesAcross: 0.5,
    });
    const lit = doing(demo, actions.setLight, { lamp: 'hair', size: 9, strength: 0 });
    expect(lit.after.light).toEqual({
      ...demo.light,
      hair: { ...demo.light.hair, size: LIMITS.lightSize.most, strength: 0 },
    });
    expect(lit.label).toBe('Hair light off');
    expect(doing(lit.after, actions.resetLight, {}).after.light).toEqual(demo.light);
    expect(doing(demo, actions.setRoom, { sitterBefore: 2 }).after.room).toEqual({
      ...demo.room,
      sitterBefore: 2,
    });
    expect(doing(demo, actions.setPlay, { from: 'B', to: 'D', seconds: 0 }).after.play).toEqual({
      from: 'B',
      to: 'A',
      seconds: 0.5,
    });
    expect(doing(demo, actions.setPrintHeight, { to: 0.6 }).after.printHeight).toBe(0.6);
    expect(doing(demo, actions.setTitle, { to: 'x'.repeat(999) }).after.title).toHaveLength(
      TITLE_LENGTH,
    );
    expect(doing(demo, actions.setNotes, { to: 'x'.repeat(99_999) }).after.notes).toHaveLength(
      NOTES_LENGTH,
    );
    expect(doing(format, actions.resetToDemo, {}).after).toEqual(demo);
  });

  it('never changes the session it was given', () => {
    const before = structuredClone(demo);
    doing(demo, actions.moveStandpoint, { letter: 'A', to: 1 });
    doing(demo, actions.addPicture, {});
    doing(demo, actions.setDimension, { dimension: 'stature', to: 1700 });
    expect(demo).toEqual(before);
  });
});
