import { describe, expect, it } from 'vitest';
import { beards, hairStyles } from '../../scripts/sculpt/hair';
import { onSurface } from '../../scripts/sculpt/hair/flow';
import { HAIR_CENTRE, hairline } from '../../scripts/sculpt/hair/hairline';
import { seeds } from '../../scripts/sculpt/head/seeds';
import { SHAPES } from '../../scripts/sculpt/head/shape';
import { bareHead } from '../../scripts/sculpt/head/skin';
import { polygonise } from '../../scripts/sculpt/nets';
import type { Ribbons } from '../../scripts/sculpt/ribbons';
import { BEARDS, HAIR_STYLES } from '../../src/sitter/types';
import { edgeFaults, isMirrored } from './meshes';

/** A style's locks are made of at most so many triangles, and a head still looks covered above so many. */
const TRIANGLES = { most: 42_000, least: 8_000 } as const;
const SECONDS = 90_000;

function sound(locks: Ribbons): void {
  const { positions, normals, indices, shade, strand, sheer } = locks;
  const count = positions.length / 3;
  expect([shade.length, strand.length, sheer.length]).toEqual([count, count, count]);
  expect(indices.length / 3).toBeGreaterThan(TRIANGLES.least);
  expect(indices.length / 3).toBeLessThan(TRIANGLES.most);
  expect(positions.every(Number.isFinite)).toBe(true);
  expect(normals.every(Number.isFinite)).toBe(true);
  expect(indices.every((v) => v < count)).toBe(true);
}

describe.each(Object.values(SHAPES))('the $id hair', (shape) => {
  const styles = hairStyles(shape);
  // The man's volumes differ from the woman's by his head alone: one of them is asked.
  const names = HAIR_STYLES.filter(
    (name) => name !== 'bald' && (shape.id === 'female' || name === 'short'),
  ) as Exclude<(typeof HAIR_STYLES)[number], 'bald'>[];

  it.each(names)(
    '%s is a closed, mirrored volume',
    (name) => {
      const mesh = polygonise(styles[name].volume, styles[name].grid);
      expect(edgeFaults(mesh).open).toHaveLength(0);
      expect(isMirrored(mesh)).toBe(true);
      expect(mesh.indices.length / 3).toBeGreaterThan(2000);
    },
    SECONDS,
  );

  it('begins where the forehead ends', () => {
    // Trichion to glabella in a straight line, as the sculptor chose it from remembered thirds of the face.
    const [, sy, sz] = shape.scale;
    const { direction, inside } = hairline(shape);
    const bare = bareHead(shape);
    const middle = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz] as const;
    const trichion = onSurface(bare, middle, direction(0.5, 0)).at;
    const { glabella } = seeds(shape);
    const height = Math.hypot(...[0, 1, 2].map((j) => (trichion[j] ?? 0) - (glabella[j] ?? 0)));
    expect(height).toBeGreaterThan(48);
    expect(height).toBeLessThan(62);
    expect(Math.abs(inside(...trichion))).toBeLessThan(0.5);
    expect(inside(...glabella)).toBeLessThan(-35);
  });
});

describe('locks', () => {
  const female = hairStyles(SHAPES.female);
  it.each(HAIR_STYLES.filter((name) => name !== 'bald'))(
    'of %s hair are finite, many enough and not too many',
    (name) => sound(female[name].locks()),
    SECONDS,
  );

  it('stand on the scalp or over it, never inside the head', () => {
    const bare = bareHead(SHAPES.female);
    const { positions: P } = female.tied.locks();
    let deepest = 0;
    for (let i = 0; i < P.length; i += 3)
      deepest = Math.min(deepest, bare(P[i] as number, P[i + 1] as number, P[i + 2] as number));
    expect(deepest).toBeGreaterThan(-0.6);
  });

  it(
    'are the same on a second run',
    () => {
      expect(female.cropped.locks()).toEqual(hairStyles(SHAPES.female).cropped.locks());
    },
    SECONDS,
  );

  const worn = beards(SHAPES.male);
  it.each(BEARDS.filter((name) => name !== 'none'))(
    'of a %s beard are finite, many enough and not too many',
    (name) => sound(worn[name].locks()),
    SECONDS,
  );
});
