import { describe, expect, it } from 'vitest';
import { assemble, type Detail, SEXES } from '../../scripts/sculpt/assemble';
import { withoutNeedles } from '../../scripts/sculpt/needles';
import { sourceHash } from '../../scripts/sculpt/source';
import { writeAsset } from '../../scripts/sculpt/write';
import { loadSculpture } from '../../src/sitter/build';
import { sculptureBytes } from './people';

const COARSE: Detail = {
  fine: 2.6,
  every: 3,
  triangles: { skin: 14_000, hair: 2_000, top: 2_000, trousers: 800, hands: 1_200, shoes: 600 },
};

describe('the sculptures', () => {
  it.each(SEXES)('%s is what the script makes of its sources', async (sex) => {
    const { source } = await loadSculpture(sculptureBytes(sex));
    expect(source, 'the sources have changed: run npm run sculpt').toBe(sourceHash());
  });

  it('come out of the script the same, byte for byte, each time', async () => {
    const [first, second] = [
      await writeAsset(await assemble('female', COARSE)),
      await writeAsset(await assemble('female', COARSE)),
    ];
    expect(Buffer.compare(first, second)).toBe(0);
  }, 240_000);
});

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
