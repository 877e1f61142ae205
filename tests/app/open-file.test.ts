/** Files that somebody brings: our own stills and sessions, others, and damaged ones. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openFile, readFile } from '../../src/app/open/openFile';
import { FORMATS } from '../../src/handout/encode/types';
import { loadModels } from '../../src/models/node';
import { demoSession } from '../../src/session/demo';
import { encodeFile } from '../../src/session/file';
import { packSession } from '../../src/session/pack';
import { picturesOnly } from '../../src/session/picture-state';
import { file } from '../handout/metadata/files';

const models = loadModels();
const still = picturesOnly({ ...demoSession(), notes: 'not these' });
const state = { holds: 'pictures', packed: packSession(still) ?? '' } as const;
const ourStill = (format: (typeof FORMATS)[number]) =>
  file(format, { description: 'A still', shot: {}, state });

describe.each(FORMATS)('a still as %s', (format) => {
  it('brings its pictures back', async () => {
    expect(await readFile(await ourStill(format), models)).toEqual({
      holds: 'pictures',
      still: true,
      session: still,
    });
  });

  it('damaged a hundred times gives the same pictures or a sentence, and nothing throws', async () => {
    const bytes = new Uint8Array(await (await ourStill(format)).arrayBuffer());
    const damage = fc.oneof(
      fc.record({ cut: fc.integer({ min: 0, max: bytes.length - 1 }) }),
      fc.record({
        bytes: fc.array(
          fc.tuple(fc.integer({ min: 0, max: bytes.length - 1 }), fc.integer({ min: 1, max: 255 })),
          { minLength: 1, maxLength: 20 },
        ),
      }),
    );
    await fc.assert(
      fc.asyncProperty(damage, async (how) => {
        const spoilt = 'cut' in how ? bytes.slice(0, how.cut) : bytes.slice();
        if ('bytes' in how)
          for (const [at, change] of how.bytes) spoilt[at] = (spoilt[at] as number) ^ change;
        const content = await readFile(new Blob([spoilt], { type: 'image/x' }), models);
        if (content.holds === 'nothing') expect(content.sentence).toMatch(/Nothing was changed\.$/);
        // The state has a checksum of its own: what lies around it may be damaged, it may not.
        else expect(content.session).toEqual(still);
      }),
      { numRuns: 100, seed: 20 },
    );
  });

  it('of another origin says so', async () => {
    const foreign = await file(format, { description: 'A holiday', shot: {}, state: null });
    expect(await readFile(foreign, models)).toEqual({
      holds: 'nothing',
      sentence: expect.stringContaining('was not saved from here'),
    });
  });
});

describe('any other file', () => {
  it('is a session or says why not', async () => {
    const session = demoSession();
    expect(await readFile(new Blob([encodeFile(session)]), models)).toEqual({
      holds: 'session',
      still: false,
      session,
    });
    for (const blob of [
      new Blob([]),
      new Blob(['{"a": 1}']),
      new Blob([new Uint8Array(6_000_000)]),
      new Blob([Uint8Array.of(1, 2, 3)], { type: 'video/mp4' }),
    ])
      expect(await readFile(blob, models)).toEqual({
        holds: 'nothing',
        sentence: expect.stringMatching(/Nothing was changed\.$/),
      });
  });

  it('that cannot be opened changes nothing and is told of', async () => {
    const told: string[] = [];
    const never = () => {
      throw new Error('nothing may be changed');
    };
    const label = await openFile(new Blob(['no session']), {
      models,
      open: never,
      act: never,
      onNotice: (sentence) => told.push(sentence),
    });
    expect(label).toBeNull();
    expect(told).toHaveLength(1);
  });
});
