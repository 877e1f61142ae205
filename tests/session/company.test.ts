import { describe, expect, it } from 'vitest';
import { dimensionsOf } from '../../src/models/framing';
import { pictureShare } from '../../src/optics/camera';
import { depthBefore } from '../../src/optics/perspective';
import { measure } from '../../src/readings/measures';
import * as actions from '../../src/session/actions/plan-page';
import { type Cast, floorOf, placeCompany, unsculpted } from '../../src/session/cast';
import { demoSession } from '../../src/session/demo';
import type { ActionContext } from '../../src/session/follow';
import { readingInput } from '../../src/session/reading-input';
import { resolvePicture } from '../../src/session/resolve';
import type { Session } from '../../src/session/types';
import { models, must, picture } from './fixtures';

const person = (id: string) => unsculpted(dimensionsOf(must(models.sitters.get(id))));
const cast: Cast = { '1': person('adult-woman'), '2': person('adult-man') };
const context: ActionContext = { models, cast };
const demo = demoSession();

const doing = <Args>(session: Session, action: actions.Action<Args>, args: Args) => {
  const after = action.edit(session, args, context);
  return { after, label: action.label(after, args, context) };
};
const two = doing(demo, actions.addPerson, { model: 'adult-man' }).after;

describe('a second person', () => {
  it('takes the last picture, and leaves it to the first on going', () => {
    expect(two.people.map(({ id, model }) => [id, model])).toEqual([
      ['1', 'adult-woman'],
      ['2', 'adult-man'],
    ]);
    expect(two.pictures.map(({ of }) => of)).toEqual([['1'], ['2']]);
    const { after, label } = doing(two, actions.removePerson, {});
    expect(after.pictures.map(({ of }) => of)).toEqual([['1'], ['1']]);
    expect(after.people).toEqual(demo.people);
    expect(label).toBe('Second person gone');
    expect(doing(two, actions.addPerson, { model: 'adult-man' }).after).toBe(two);
  });

  it('joins the first in the only picture, whose frame then holds both', () => {
    const one = doing(demo, actions.removePicture, { letter: 'B' }).after;
    const { after } = doing(one, actions.addPerson, { model: 'adult-man' });
    expect(after.pictures.map(({ of }) => of)).toEqual([['1', '2']]);
    const resolved = resolvePicture(after, picture(after, 'A'), models, cast);
    expect(resolved.limits.map(({ reason }) => reason)).not.toContain('outside-frame');
  });

  it('is changed by itself, and the labels say who', () => {
    const posed = doing(two, actions.setPose, { person: '2', arms: 'lap' });
    expect(posed.after.people[1]?.pose).toMatchObject({ stance: 'seated', arms: 'lap' });
    expect(posed.after.people[0]).toBe(two.people[0]);
    expect(posed.label).toBe('Person 2: Arms moved');
    const up = doing(posed.after, actions.setPose, { person: '2', stance: 'standing' }).after;
    expect(up.people[1]?.pose.arms).toBe('hanging');
    expect(doing(two, actions.setGaze, { person: '2', to: 'ahead' }).label).toBe(
      'Person 2: Eyes straight ahead',
    );
    const dressed = doing(two, actions.setLooks, {
      person: '2',
      looks: { colours: { hair: '#333333' } },
    });
    expect(dressed.after.people[1]?.looks).toEqual({ colours: { hair: '#333333' } });
    expect(dressed.label).toBe('Person 2: Hair changed');
    expect(
      doing(dressed.after, actions.resetLooks, { person: '2' }).after.people[1]?.looks,
    ).toEqual({});
  });

  it('frames a picture of somebody else by whoever is first in the first picture', () => {
    const { after } = doing(two, actions.setCompany, { letter: 'A', of: ['2'] });
    expect(after.crop.frameHeight).toBeCloseTo(0.44, 12);
    expect(doing(two, actions.setSitter, { person: '2', model: 'adult-woman' }).after.crop).toEqual(
      two.crop,
    );
  });
});

describe('two in one picture', () => {
  it('stand on one floor, the second beside the first whoever is first', () => {
    const [, man] = placeCompany(cast, ['1', '2'], { right: 0.5, forward: 0.2 });
    const [, woman] = placeCompany(cast, ['2', '1'], { right: 0.5, forward: 0.2 });
    // Statures less the heights of the crown over the eyes, from the sitters' own files.
    const eyes = (id: string) => {
      const { stature, vertex_above_eyes } = dimensionsOf(must(models.sitters.get(id)));
      return (stature - vertex_above_eyes) / 1000;
    };
    const higher = eyes('adult-man') - eyes('adult-woman');
    expect(floorOf(cast['1'])).toBeCloseTo(-eyes('adult-woman'), 12);
    expect(must(man).at).toEqual([0.5, expect.closeTo(higher, 12), 0.2]);
    expect(must(woman).at).toEqual([-0.5, expect.closeTo(-higher, 12), -0.2]);
  });

  it('are placed so that the middle between their eyes sits where the crop has the eyes', () => {
    const { after } = doing(two, actions.setCompany, { letter: 'B', of: ['1', '2'] });
    const { camera, frameHeight } = resolvePicture(after, picture(after, 'B'), models, cast);
    const at = must(placeCompany(cast, ['1', '2'], after.beside)[1]).at;
    const shares = [[0, 0, 0] as const, at].map((point) => {
      const share = pictureShare(camera, point);
      if (!share.ok) throw new Error(share.reason);
      return share.value;
    });
    expect(((shares[0]?.across ?? 0) + (shares[1]?.across ?? 0)) / 2).toBeCloseTo(0.5, 9);
    expect(shares[0]?.down).toBeCloseTo(after.crop.eyesAt, 9);
    expect(frameHeight).toBeCloseTo(after.crop.frameHeight, 9);
    expect(after.crop.framing).toBeNull();
  });

  it('say when the frame cuts a head, and what would hold both', () => {
    const { after } = doing(two, actions.setCompany, { letter: 'B', of: ['1', '2'] });
    const tight = doing(after, actions.setFrameHeight, { to: 0.4 }).after;
    const resolved = resolvePicture(tight, picture(tight, 'B'), models, cast);
    const [limit] = resolved.limits;
    expect(limit?.reason).toBe('outside-frame');
    const to = must(limit?.remedies[0]).value;
    const enough = doing(tight, actions.setFrameHeight, { to: to * 1.0001 }).after;
    const less = doing(tight, actions.setFrameHeight, { to: to * 0.999 }).after;
    const reasons = (session: Session) =>
      resolvePicture(session, picture(session, 'B'), models, cast).limits.map(
        ({ reason }) => reason,
      );
    expect(reasons(enough)).not.toContain('outside-frame');
    expect(reasons(less)).toContain('outside-frame');
  });

  it('are read each from their own eyes', () => {
    const { after } = doing(two, actions.setCompany, { letter: 'B', of: ['1', '2'] });
    const resolved = resolvePicture(after, picture(after, 'B'), models, cast);
    const [first, second] = placeCompany(cast, ['1', '2'], { right: 0.5, forward: 0.4 }).map(
      (placed) => measure(readingInput(after, resolved, placed)),
    );
    expect(first?.lens.standpoint).toBeCloseTo(2.4, 12);
    const up = must(placeCompany(cast, ['1', '2'], after.beside)[1]).at[1];
    expect(second?.lens.standpoint).toBeCloseTo(Math.hypot(0.5, up, 2), 12);
    // What stands 0.4 m nearer stands so much farther from the backdrop.
    expect(second?.scene.backdrop.distance).toBeCloseTo(after.room.sitterBefore + 0.4, 12);
  });
});

describe('the same look of different people', () => {
  it('is found at the distance where the nose gains equally on the ears', () => {
    const { after, label } = doing(two, actions.matchLook, { letter: 'B', other: 'A' });
    const gain = (sitter: (typeof cast)['1'], distance: number) => {
      const depth = (name: 'pronasale' | 'tragion_left') => {
        const found = depthBefore(sitter.landmarks[name], [0, 0, distance]);
        if (!found.ok) throw new Error(found.reason);
        return found.value;
      };
      return (distance - depth('tragion_left')) / (distance - depth('pronasale'));
    };
    const man = must(cast['2']);
    const standpoint = picture(after, 'B').standpoint;
    expect(gain(man, standpoint)).toBeCloseTo(gain(cast['1'], 0.4), 9);
    // The man's head is the deeper one, so he needs the longer way.
    expect(standpoint).toBeGreaterThan(0.4);
    expect(label).toMatch(/^B moved to 0\.\d\d m for the look of A$/);
  });
});
