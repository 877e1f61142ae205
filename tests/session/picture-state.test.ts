/** What a picture file carries of a session, and what becomes of it in another. */
import { describe, expect, it } from 'vitest';
import * as actions from '../../src/session/actions/plan-page';
import { hangStill } from '../../src/session/actions/still';
import { comparedOf } from '../../src/session/comparison';
import { demoSession } from '../../src/session/demo';
import { bodyOf } from '../../src/session/kit';
import { packSession, unpackSession } from '../../src/session/pack';
import { picturesOnly } from '../../src/session/picture-state';
import { LETTERS, type Session } from '../../src/session/types';
import { context, models, must, resolve } from './fixtures';
import { rich } from './rich';

/** Nothing that is written here may leave the session. */
const SECRETS = {
  title: 'Secret title',
  notes: 'Secret notes',
  kit: 'Secret kit',
  body: 'Secret body',
  lens: 'Secret lens',
  room: 'Secret room',
  thing: 'Secret thing',
};

function secret(): Session {
  const [kit] = rich.kits;
  const own = {
    id: 'own-1',
    name: SECRETS.lens,
    focal: [0.035, 0.07],
    widest: [2.8, 2.8],
    smallest: 22,
    nearestFocus: [0.3, 0.3],
    length: 0.1,
  } as const;
  return {
    ...rich,
    title: SECRETS.title,
    notes: SECRETS.notes,
    ownLenses: [own],
    kits: [
      {
        ...kit,
        name: SECRETS.kit,
        bodies: [{ ...kit.bodies[0], name: SECRETS.body, format: 'aps-c-23-6' }],
        lenses: [...kit.lenses, own.id],
      },
    ],
    pictures: rich.pictures.map((picture, i) => (i === 0 ? { ...picture, lens: own.id } : picture)),
    room: {
      ...rich.room,
      name: SECRETS.room,
      obstacles: rich.room.obstacles.map((each) => ({ ...each, name: SECRETS.thing })),
    },
  };
}

const still = picturesOnly(secret());

describe('what a picture carries', () => {
  it('holds no title, notes, names, kit, author, kept comparison or measured body', () => {
    expect(JSON.stringify(still)).not.toMatch(/secret/i);
    expect(still.people.every(({ changes }) => Object.keys(changes).length === 0)).toBe(true);
    expect(still.comparisons).toEqual([]);
    expect(still.handout).toEqual(demoSession().handout);
    expect(still.kits[0].lenses).toEqual(['lens-1']);
  });

  it('is a session that a file could hold', () => {
    const packed = must(packSession(still));
    expect(unpackSession(packed, 'picture', models)).toEqual({ ok: true, session: still });
  });

  it('gives the same pictures in another session, which keeps what is its own', () => {
    const own = actions.setNotes.edit(demoSession(), { to: 'My notes' }, context);
    const hung = hangStill.edit(own, { still }, context);
    expect(hung).toMatchObject({ title: own.title, notes: own.notes, handout: own.handout });
    expect(hung.kits[0].lenses).toEqual(own.kits[0].lenses);
    expect(hung.kits[0].bodies).toHaveLength(2);
    expect(bodyOf(hung).format).toBe('aps-c-23-6');
    // Whose body is as the model's; the rest of what the pictures hang on is as it was.
    const bare = { ...secret(), people: still.people };
    const around = { ...context, cast: { '1': context.cast['1'], '2': context.cast['1'] } };
    for (const letter of LETTERS.slice(0, 3)) {
      const after = resolve(hung, letter, around);
      expect(after.camera).toEqual(resolve(bare, letter, around).camera);
    }
    expect(comparedOf(hung)).toEqual({
      ...comparedOf(still),
      pictures: still.pictures.map((picture, i) =>
        i === 0 ? { ...picture, lens: 'own-1' } : picture,
      ),
    });
  });

  it('brings the session that it was made of to itself again', () => {
    const { people, ...own } = secret();
    const hung = hangStill.edit({ ...own, people: still.people }, { still }, context);
    expect(hung).toEqual({ ...own, people: still.people });
    expect(people[0].changes).not.toEqual({});
  });

  it('adds no lens that is there, and does without one where there is no room', () => {
    const twice = hangStill.edit(
      hangStill.edit(demoSession(), { still }, context),
      { still },
      context,
    );
    expect(twice.ownLenses).toHaveLength(1);
    const [lens] = twice.ownLenses;
    const full = {
      ...demoSession(),
      ownLenses: Array.from({ length: 40 }, (_, i) => ({
        ...must(lens),
        id: `x-${i}`,
        length: 0.11 + i / 1000,
      })),
    };
    expect(hangStill.edit(full, { still }, context).pictures[0]?.lens).toBeNull();
  });
});
