import { describe, expect, it } from 'vitest';
import { assets, type Detail, FULL_DETAIL, SEXES } from '../../scripts/sculpt/assemble';
import { withoutNeedles } from '../../scripts/sculpt/needles';
import { type Kind, sourceHash } from '../../scripts/sculpt/source';
import { writeAsset } from '../../scripts/sculpt/write';
import { readSculpture } from '../../src/models/node';
import { loadSculptureFile } from '../../src/sitter/load';

const COARSE: Detail = {
  fine: 2.6,
  every: 3,
  triangles: { skin: 14_000, hair: 2_000, beard: 1_000 },
  other: 1_500,
};

const kindOf = (id: string): Kind =>
  id.includes('-clothes-') ? 'clothes' : /-(hair|beard)-/.test(id) ? 'hair' : 'figure';

const files = SEXES.flatMap((sex) => Object.keys(assets(sex, FULL_DETAIL)));

describe('the sculptures', () => {
  it.each(files)('%s is what the script makes of its sources', async (id) => {
    const { source } = await loadSculptureFile(await readSculpture(`${id}.glb`));
    expect(source, 'the sources have changed: run npm run sculpt').toBe(sourceHash(kindOf(id)));
  });

  it('come out of the script the same, byte for byte, each time', async () => {
    const figure = async () => writeAsset(await (assets('female', COARSE).female as Make)());
    const [first, second] = [await figure(), await figure()];
    expect(Buffer.compare(first, second)).toBe(0);
  }, 240_000);
});

type Make = ReturnType<typeof assets>[string];

describe('needles', () => {
  it('have their long edge turned, and nothing else is touched', () => {
    // A quad cut along the wrong diagonal: its first triangle is a needle.
    const positions = Float32Array.from([
      0, 0, 0, 10, 0, 0, 5, 0.1, 0, 5, -6, 0, 20, 0, 0, 15, 6, 0,
    ]);
    const turned = withoutNeedles(positions, Uint32Array.of(0, 1, 2, 1, 0, 3, 1, 4, 5));
    expect([...turned]).toEqual([0, 3, 2, 3, 1, 2, 1, 4, 5]);
  });
});
