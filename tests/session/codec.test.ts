import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { strToU8, zlibSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import * as handout from '../../src/session/actions/handout-page';
import * as actions from '../../src/session/actions/plan-page';
import { FORMAT } from '../../src/session/decode';
import { demoSession } from '../../src/session/demo';
import { decodeFile, encodeFile, LARGEST_FILE } from '../../src/session/file';
import { bodyOf, kitOf, runOf } from '../../src/session/kit';
import { LAMPS, softnessOf } from '../../src/session/light';
import { LIMITS, NOTES_LENGTH } from '../../src/session/limits';
import { decodeLink, encodeLink, isLink, LONGEST_LINK } from '../../src/session/link';
import { checkMigrations, MIGRATIONS, type Migration, migrate } from '../../src/session/migrate';
import { SESSION_VERSION, type Session } from '../../src/session/types';
import { context, models } from './fixtures';
import { rich } from './rich';
import { replaced } from './spoil';

const demo = demoSession();

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

/** A file of the rich session with one field, given by its path, replaced. */
const spoiled = (path: string, value: unknown): string =>
  JSON.stringify(replaced({ format: FORMAT, session: rich }, path.split('.'), value), null, 2);

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

  it('leave the logo out of a link', () => {
    const logo = 'data:image/png;base64,iVBORw0KGgo=';
    const signed = handout.setAuthor.edit(demo, { name: 'A. Nyone', logo }, context);
    expect(decodeFile(encodeFile(signed), models)).toEqual({ ok: true, session: signed });
    const opened = decodeLink(fragmentOf(signed), models);
    expect(opened.ok && opened.session.handout.author).toEqual({
      name: 'A. Nyone',
      words: '',
      logo: null,
    });
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
      sentence: 'The session holds too much for a link. Save a file instead.',
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
    [
      'kits of one id',
      spoiled('session.kits', [demo.kits[0], demo.kits[0]]),
      'damaged',
      /kits: expected each id once/,
    ],
    ['no body', spoiled('session.kits.0.bodies', []), 'damaged', /bodies\.0: expected/],
    [
      'a group too large',
      spoiled('session.plan.group', {
        rows: [16, 15].map((count) => ({
          place: 'standing',
          models: new Array(count).fill('adult-woman'),
          spacing: 0.6,
        })),
        rowSpacing: 0.7,
        step: 0.3,
        curve: 'straight',
      }),
      'damaged',
      /at most 30 people/,
    ],
    ['an axis', spoiled('session.room.axis', 'upwards'), 'damaged', /room\.axis: expected/],
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
      spoiled('session.kits.0.lenses', ['35-f2', 'mine']),
      'unknown-model',
      /the lens "mine"/,
    ],
    [
      'another format',
      spoiled('session.kits.0.bodies.0.format', 'disc'),
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
    expect(newer).toMatchObject({
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
      'session.kits',
      'session.kits.0.bodies',
      'session.kits.0.lenses',
      'session.ownLenses',
      'session.room',
      'session.plan',
      'session.plan.wanted',
      'session.plan.asked.fNumber',
      'session.plan.group',
      'session.play',
      'session.room.backdrop',
      'session.room.obstacles.0',
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
    const { version, title, units, crop, kept, play, printHeight, notes } = old;
    expect(session).toMatchObject({ title, units, crop, kept, play, printHeight, notes });
    expect(version).toBe(1);
    expect(bodyOf(session)).toMatchObject(old.body);
    expect(kitOf(session).lenses).toEqual(old.lenses);
    const { cameraWall, hall: _, ...run } = runOf(session.room);
    expect(run).toEqual({ backdrop: old.room.backdrop, behindCamera: old.room.behindCamera });
    expect(cameraWall).toBeCloseTo(old.room.cameraWall, 12);
    const { softness, ...key } = old.light;
    expect(session.light.key).toMatchObject({ ...key, strength: 1 });
    expect(softnessOf(session.light.key)).toBeCloseTo(softness, 12);
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
      sentence: expect.stringMatching(
        /damaged at sitter: expected an object, as its version has it/,
      ),
    });
  });
});

describe('a file of version 2', () => {
  const text = readFileSync(new URL('./files/version-2.standpoint.json', import.meta.url), 'utf8');
  const { session: old } = JSON.parse(text);
  const decoded = decodeFile(text, models);
  if (!decoded.ok) throw new Error(decoded.sentence);
  const { session } = decoded;

  it('opens with what it held, its body and lenses as the only kit', () => {
    const { version, body, lenses, light: _light, room: _room, ...rest } = old;
    expect(version).toBe(2);
    expect(session).toMatchObject(rest);
    expect(session.kits).toHaveLength(1);
    expect(bodyOf(session)).toMatchObject(body);
    expect(kitOf(session).lenses).toEqual(lenses);
    expect(session.ownLenses).toEqual([]);
  });

  it('opens with lights as soft and as strong as they were', () => {
    for (const name of LAMPS) {
      const { softness, ...lamp } = old.light[name];
      expect(session.light[name]).toMatchObject(lamp);
      expect(softnessOf(session.light[name])).toBeCloseTo(softness, 12);
    }
  });

  it('opens in a room of the same run, with the crop as the one framing that is wanted', () => {
    const { cameraWall, hall: _, ...run } = runOf(session.room);
    expect(run).toEqual({ backdrop: 1.5, behindCamera: 0.4 });
    expect(cameraWall).toBeCloseTo(4.1, 12);
    // 0.20 m to the backdrop, 1.50 m to the eyes, 4.10 m to the wall.
    expect(session.room.length).toBeCloseTo(5.8, 12);
    expect(session.plan.wanted).toEqual([
      {
        id: 'wanted-1',
        framing: old.crop.framing,
        frameHeight: old.crop.framing === null ? old.crop.frameHeight : null,
        orientation: 'portrait',
        eyesAt: old.crop.eyesAt,
        cameraHeight: 0,
        of: '1',
      },
    ]);
    expect(session.plan.picture).toBe('B');
  });

  it('opens from a link, too', () => {
    expect(decodeLink(packed(JSON.stringify(JSON.parse(text))), models)).toEqual({
      ok: true,
      session,
    });
  });
});

describe('a file of version 3', () => {
  const text = readFileSync(new URL('./files/version-3.standpoint.json', import.meta.url), 'utf8');
  const { session: old } = JSON.parse(text);
  const decoded = decodeFile(text, models);

  it('opens with all it held, nothing kept beside it and the usual pages', () => {
    const { version, ...rest } = old;
    expect(version).toBe(3);
    expect(decoded).toMatchObject({
      ok: true,
      session: { ...rest, comparisons: [], handout: { template: 'client' } },
    });
  });
});

describe('a measured lens', () => {
  const near = { tape: 2, frame: 0.435 };
  const far = { tape: 3, frame: 0.668 };
  const measured = (focusedAt: { readonly focusedAt?: number }): Session =>
    actions.takeMeasure.edit(
      demo,
      { lens: '70-300-f4-5-6-zoom', near, far, ...focusedAt },
      context,
    );

  it.each([
    ['told only by its frames, as files had it first', {}],
    ['with the distance it was focused at', { focusedAt: 2.5 }],
  ])('%s comes back as it was', (_, focusedAt) => {
    const session = measured(focusedAt);
    expect(session.ownLenses[0]?.measured).toEqual({ near, far, ...focusedAt });
    expect(decodeFile(encodeFile(session), models)).toEqual({ ok: true, session });
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
      what: 'no distance',
    });
    expect(migrate({}, examples, 3)).toEqual({ ok: false, reason: 'no-version' });
  });

  it('with a gap are a fault of the program', () => {
    const [first, second] = examples as [Migration, Migration];
    expect(() => migrate({ version: 1 }, [first, second], 4)).toThrow(/migration 0 starts from 1/);
    expect(() => migrate({ version: 1 }, [second, first], 3)).toThrow();
  });
});
