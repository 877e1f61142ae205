import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { strToU8, zlibSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import * as actions from '../../src/session/actions';
import { FORMAT } from '../../src/session/decode';
import { demoSession } from '../../src/session/demo';
import { decodeFile, encodeFile, LARGEST_FILE } from '../../src/session/file';
import { LIMITS, NOTES_LENGTH } from '../../src/session/limits';
import { decodeLink, encodeLink, isLink, LONGEST_LINK } from '../../src/session/link';
import { checkMigrations, MIGRATIONS, type Migration, migrate } from '../../src/session/migrate';
import { SESSION_VERSION, type Session } from '../../src/session/types';
import { context, models } from './fixtures';

const demo = demoSession();

/** A session with something of everything in it. */
const rich: Session = [
  (session: Session) => actions.setKept.edit(session, { to: 'lens' }, context),
  (session: Session) => actions.addPicture.edit(session, {}, context),
  (session: Session) => actions.cutFromLens.edit(session, { letter: 'B', focal: 0.05 }, context),
  (session: Session) => actions.addPerson.edit(session, { model: 'adult-man' }, context),
  (session: Session) => actions.setCompany.edit(session, { letter: 'C', of: ['2', '1'] }, context),
  (session: Session) =>
    actions.setLooks.edit(
      session,
      { looks: { glasses: true, colours: { hair: '#101010' } } },
      context,
    ),
  (session: Session) =>
    actions.setGaze.edit(session, { person: '2', to: { yaw: 0.2, pitch: 0 } }, context),
  (session: Session) => actions.setPose.edit(session, { arms: 'lap', lean: 0.1 }, context),
  (session: Session) =>
    actions.setDimension.edit(session, { dimension: 'nose_breadth', to: 40 }, context),
  (session: Session) =>
    actions.setNotes.edit(session, { to: 'Grüße an alle: “f/4”, 两米 \u{1F3AD}\n' }, context),
].reduce((session, edit) => edit(session), demo);

const fragmentOf = (session: Session): string => {
  const linked = encodeLink(session);
  if (!linked.ok) throw new Error(linked.sentence);
  return linked.fragment;
};

const packed = (text: string): string =>
  `#session=${btoa(String.fromCharCode(...zlibSync(strToU8(text))))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '')}`;

/** The session with one field, given by its path, replaced. */
function spoiled(path: string, value: unknown): string {
  const document = { format: FORMAT, session: structuredClone(rich) as unknown };
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const parent = keys.reduce<Record<string, unknown>>(
    (at, key) => at[key] as Record<string, unknown>,
    document as Record<string, unknown>,
  );
  parent[last] = value;
  return JSON.stringify(document, null, 2);
}

describe('a file and a link', () => {
  it.each([
    ['the demo session', demo],
    ['a rich session', rich],
  ])('bring %s back as it was', (_, session) => {
    expect(decodeFile(encodeFile(session), models)).toEqual({ ok: true, session });
    const fragment = fragmentOf(session);
    expect(isLink(fragment)).toBe(true);
    expect(fragment).toMatch(/^#session=[\w-]+$/);
    expect(decodeLink(fragment, models)).toEqual({ ok: true, session });
  });

  it('keep the demo session below the length that messengers cut', () => {
    expect(fragmentOf(demo).length).toBeLessThan(1500);
  });

  it('read a file that an editor has given a byte order mark', () => {
    expect(decodeFile(`\uFEFF${encodeFile(demo)}`, models).ok).toBe(true);
  });

  it('bring any values back into the legal ranges', () => {
    const decoded = decodeFile(spoiled('session.pictures.0.standpoint', 1e9), models);
    expect(decoded.ok && decoded.session.pictures[0]?.standpoint).toBe(LIMITS.standpoint.most);
    const play = decodeFile(spoiled('session.play.from', 'D'), models);
    expect(play.ok && play.session.play.from).toBe('A');
  });

  it('refuse notes that would make too long a link', () => {
    let state = 1;
    const noise = Array.from({ length: NOTES_LENGTH }, () => {
      state = (state * 48271) % 2147483647;
      return String.fromCharCode(0x4e00 + (state % 20000));
    }).join('');
    const linked = encodeLink({ ...demo, notes: noise });
    expect(linked).toEqual({
      ok: false,
      sentence: 'The notes are too long for a link. Save a file instead.',
    });
    expect(decodeFile(encodeFile({ ...demo, notes: noise }), models).ok).toBe(true);
  });
});

describe('a damaged file', () => {
  it.each([
    [
      'line 11',
      encodeFile(rich).replace('"adult-woman",', '"adult-woman"'),
      'damaged',
      /damaged at line (10|11)\./,
    ],
    ['the end', encodeFile(rich).slice(0, 300).trimEnd(), 'damaged', /damaged at line \d+\./],
    ['nothing', '', 'damaged', /damaged/],
    ['other JSON', '{"format":"other"}', 'not-a-session', /holds no session/],
    ['a list', '[1,2]', 'not-a-session', /holds no session/],
    [
      'a field',
      spoiled('session.pictures.1.standpoint', 'near'),
      'damaged',
      /damaged at pictures\.1\.standpoint: expected number, received "near"/,
    ],
    [
      'a missing field',
      spoiled('session.crop.hold', undefined),
      'damaged',
      /crop\.hold: expected a value, but it is missing/,
    ],
    ['a field too many', spoiled('session.extra', 1), 'damaged', /extra: expected no such field/],
    [
      'an infinite number',
      spoiled('session.pictures.0.standpoint', 0).replace(
        /"standpoint": 0\b/,
        '"standpoint": 1e999',
      ),
      'damaged',
      /pictures\.0\.standpoint/,
    ],
    [
      'letters out of order',
      spoiled('session.pictures.0.letter', 'C'),
      'damaged',
      /each letter once/,
    ],
    ['nobody', spoiled('session.people', []), 'damaged', /people\.0: expected/],
    ['people out of order', spoiled('session.people.0.id', '2'), 'damaged', /person 1 first/],
    [
      'somebody twice in a picture',
      spoiled('session.pictures.2.of', ['2', '2']),
      'damaged',
      /each person once/,
    ],
    ['a colour', spoiled('session.people.0.looks.colours.hair', 'red'), 'damaged', /colours\.hair/],
    ['a gaze', spoiled('session.people.1.gaze', 'away'), 'damaged', /people\.1\.gaze/],
    ['no pictures', spoiled('session.pictures', []), 'damaged', /pictures/],
    ['no version', spoiled('session.version', 'one'), 'damaged', /names no version/],
    ['a newer version', spoiled('session.version', SESSION_VERSION + 1), 'newer', /newer version/],
    ['an unknown version', spoiled('session.version', -3), 'unknown-version', /never released/],
    [
      'another sitter',
      spoiled('session.people.0.model', 'stranger'),
      'unknown-model',
      /the sitter "stranger", which is not here/,
    ],
    [
      'another lens',
      spoiled('session.lenses', ['35-f2', 'mine']),
      'unknown-model',
      /the lens "mine"/,
    ],
    [
      'another format',
      spoiled('session.body.format', 'disc'),
      'unknown-model',
      /the format "disc"/,
    ],
    [
      'another framing',
      spoiled('session.crop.framing', 'feet'),
      'unknown-model',
      /the framing "feet"/,
    ],
    ['too much', ' '.repeat(LARGEST_FILE + 1), 'too-large', /too large/],
  ])('says where: %s', (_, text, fault, sentence) => {
    const decoded = decodeFile(text, models);
    expect(decoded).toMatchObject({ ok: false, fault });
    expect(decoded.ok ? '' : decoded.sentence).toMatch(sentence);
    expect(decoded.ok ? '' : decoded.sentence).toMatch(/Nothing was changed\.$/);
  });

  it('says so in a link too', () => {
    const newer = decodeLink(packed(spoiled('session.version', SESSION_VERSION + 1)), models);
    expect(newer).toEqual({
      ok: false,
      fault: 'newer',
      sentence: 'This link comes from a newer version. Nothing was changed.',
    });
    expect(decodeLink('#other=1', models)).toMatchObject({ fault: 'not-a-session' });
    expect(decodeLink('', models)).toMatchObject({ fault: 'not-a-session' });
    expect(decodeLink(`#session=${'A'.repeat(LONGEST_LINK)}`, models)).toMatchObject({
      fault: 'too-large',
    });
  });

  it('does not unpack a small link into a large memory', () => {
    expect(decodeLink(packed(' '.repeat(5_000_000)), models)).toMatchObject({ fault: 'too-large' });
  });
});

describe('two hundred and more damaged links and files', () => {
  const fragment = fragmentOf(rich);
  const text = encodeFile(rich);
  const place = (of: string) => fc.nat(of.length - 1);

  it('a link with a changed, lost or added character is always refused, and nothing throws', () => {
    const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_%=&# \u00e9';
    const spoil = fc.tuple(
      place(fragment),
      fc.constantFrom('swap', 'cut', 'add', 'tail'),
      fc.constantFrom(...alphabet),
    );
    fc.assert(
      fc.property(spoil, ([at, how, character]) => {
        const broken = {
          swap: fragment.slice(0, at) + character + fragment.slice(at + 1),
          cut: fragment.slice(0, at) + fragment.slice(at + 1),
          add: fragment.slice(0, at) + character + fragment.slice(at),
          tail: fragment.slice(0, at),
        }[how as 'swap'];
        const decoded = decodeLink(broken, models);
        if (decoded.ok) expect(decoded.session).toEqual(rich);
        else expect(decoded.sentence).toMatch(/^This link .+\. Nothing was changed\.$/);
      }),
      { seed: 6, numRuns: 600 },
    );
  });

  it('a file with changed characters gives a session or a sentence', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(place(text), fc.string({ maxLength: 3 })), {
          minLength: 1,
          maxLength: 4,
        }),
        (edits) => {
          const broken = edits.reduce(
            (now, [at, put]) => now.slice(0, at) + put + now.slice(at + 1),
            text,
          );
          const decoded = decodeFile(broken, models);
          if (!decoded.ok)
            expect(decoded.sentence).toMatch(/^This file .+\. Nothing was changed\.$/s);
          else expect(decodeFile(encodeFile(decoded.session), models)).toEqual(decoded);
        },
      ),
      { seed: 7, numRuns: 400 },
    );
  });

  it('a file with any JSON in any place gives a session or a sentence', () => {
    const paths = [
      'session',
      'session.pictures',
      'session.pictures.0',
      'session.crop',
      'session.people.0.changes',
      'session.pictures.1.view',
      'session.notes',
      'session.lenses',
      'session.play',
      'session.room.backdrop',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue(), (path, value) => {
        const decoded = decodeFile(spoiled(path, value), models);
        if (!decoded.ok) expect(decoded.sentence.length).toBeGreaterThan(10);
      }),
      { seed: 8, numRuns: 400 },
    );
  });
});

describe('a file of version 1', () => {
  const text = readFileSync(new URL('./files/version-1.standpoint.json', import.meta.url), 'utf8');
  const { session: old } = JSON.parse(text);

  it('opens with one person, in every picture, whose eyes are fixed in the head', () => {
    const decoded = decodeFile(text, models);
    if (!decoded.ok) throw new Error(decoded.sentence);
    const { session } = decoded;
    expect(session.people).toEqual([
      {
        id: '1',
        model: old.sitter.model,
        changes: old.sitter.changes,
        pose: { stance: 'standing', arms: 'hanging', lean: 0, ...old.sitter.pose },
        looks: {},
        gaze: 'ahead',
      },
    ]);
    expect(session.pictures).toEqual(
      old.pictures.map((picture: object) => ({ of: ['1'], ...picture })),
    );
    const { version, sitter: _sitter, pictures: _pictures, light: _light, ...rest } = old;
    expect(session).toMatchObject(rest);
    expect(version).toBe(1);
    expect(session.light.key).toEqual({ ...old.light, strength: 1 });
    // The key stands at the picture's right here, so the others stand at its left.
    expect(session.light.fill.azimuth).toBeGreaterThan(0);
    expect(session.light.hair.azimuth).toBeGreaterThan(0);
  });

  it('that lacks what its version held is refused', () => {
    const without = { ...old };
    delete without.sitter;
    const decoded = decodeFile(JSON.stringify({ format: FORMAT, session: without }), models);
    expect(decoded).toMatchObject({
      ok: false,
      sentence: expect.stringMatching(/does not hold what its version asks for/),
    });
  });
});

describe('migrations', () => {
  it('run without a gap up to the present version', () => {
    expect(() => checkMigrations(MIGRATIONS, SESSION_VERSION)).not.toThrow();
  });

  const lift: Migration['lift'] = ({ distance, ...rest }) => {
    if (typeof distance !== 'number') throw new Error('no distance');
    return { ...rest, standpoint: distance };
  };
  const examples: Migration[] = [
    { from: 1, what: 'distances were called so', lift },
    {
      from: 2,
      what: 'metres, once feet',
      lift: (old) => ({ ...old, standpoint: Number(old.standpoint) * 0.3048 }),
    },
  ];

  it('lift an old session one version at a time', () => {
    expect(migrate({ version: 1, distance: 8 }, examples, 3)).toEqual({
      ok: true,
      session: { version: 3, standpoint: 8 * 0.3048 },
    });
    expect(migrate({ version: 2, standpoint: 8 }, examples, 3)).toMatchObject({ ok: true });
    expect(migrate({ version: 3, standpoint: 2 }, examples, 3)).toEqual({
      ok: true,
      session: { version: 3, standpoint: 2 },
    });
  });

  it('refuse what is newer, unknown or not what its version says', () => {
    expect(migrate({ version: 4 }, examples, 3)).toEqual({ ok: false, reason: 'newer' });
    expect(migrate({ version: 0 }, examples, 3)).toEqual({ ok: false, reason: 'unknown-version' });
    expect(migrate({ version: 1.5 }, examples, 3)).toEqual({ ok: false, reason: 'no-version' });
    expect(migrate({ version: 1, distance: 'far' }, examples, 3)).toEqual({
      ok: false,
      reason: 'damaged',
    });
    expect(migrate({}, examples, 3)).toEqual({ ok: false, reason: 'no-version' });
  });

  it('with a gap are a fault of the program', () => {
    const [first, second] = examples as [Migration, Migration];
    expect(() => migrate({ version: 1 }, [first, second], 4)).toThrow(/migration 0 starts from 1/);
    expect(() => migrate({ version: 1 }, [second, first], 3)).toThrow();
  });
});
