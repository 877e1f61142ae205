import { describe, expect, it } from 'vitest';
import { ear } from '../../scripts/sculpt/head/ear';
import { BUST_BOTTOM, skinGrid } from '../../scripts/sculpt/head/grid';
import { headParts } from '../../scripts/sculpt/head/parts';
import { type HeadLandmark, seeds } from '../../scripts/sculpt/head/seeds';
import { type HeadShape, SHAPES } from '../../scripts/sculpt/head/shape';
import { polygonise } from '../../scripts/sculpt/nets';
import { digest, edgeFaults, isMirrored } from './meshes';

const COARSE = 4;
const build = (shape: HeadShape) => polygonise(headParts(shape).skin, skinGrid(shape, COARSE));

describe.each(Object.values(SHAPES))('the $id head on a coarse grid', (shape) => {
  const mesh = build(shape);

  it('is open at the cut-off bottom only', () => {
    const { open } = edgeFaults(mesh);
    expect(open.length).toBeGreaterThan(0);
    for (const [a] of open) expect(mesh.positions[3 * a + 1]).toBeLessThan(BUST_BOTTOM + 15);
  });

  it('is mirrored exactly', () => {
    expect(isMirrored(mesh)).toBe(true);
  });

  it('has ears of flesh at least 2 mm thick behind their hollow', () => {
    const { toWorld } = ear(shape);
    const { skin } = headParts(shape);
    const [sx, sy, sz] = shape.scale;
    for (let u = 8; u <= 23; u += 1)
      for (let v = -10; v <= 6; v += 1) {
        let thick = 0;
        for (let w = -13; w <= 6; w += 0.5) {
          const [x, y, z] = toWorld(u, v, w);
          if (skin(x * sx, y * sy, z * sz) < 0) thick += 0.5;
        }
        expect(thick, `${u} back, ${v} up`).toBeGreaterThanOrEqual(2);
      }
  });

  it('is the same on a second run', () => {
    expect(digest(build(shape))).toBe(digest(mesh));
  });

  it('wears locks and brows of finite numbers', () => {
    const parts = headParts(shape);
    const style = shape.id === 'female' ? parts.hair.tied : parts.hair.short;
    for (const hairs of [parts.fringe(), style.locks()]) {
      expect(hairs.indices.length).toBeGreaterThan(3000);
      expect(hairs.positions.every(Number.isFinite)).toBe(true);
      expect(hairs.normals.every(Number.isFinite)).toBe(true);
    }
  });
});

/**
 * Medians (p50) of the 2012 US Army survey (Gordon et al. 2014) or, marked N, of the 2003 NIOSH
 * head-and-face survey (Zhuang and Bradtmiller 2005), mm. The sculpture only has to be near: the
 * exact dimensions come from the warp.
 */
const MEDIANS = {
  male: {
    head_breadth: 154,
    head_length: 200,
    bizygomatic_breadth: 143,
    bigonial_breadth_N: 120,
    face_length: 123,
    nose_length_N: 52,
    nose_breadth_N: 37,
    nose_protrusion_N: 21,
    lip_length_N: 52,
    ear_length: 64,
  },
  female: {
    head_breadth: 147,
    head_length: 190,
    bizygomatic_breadth: 134,
    bigonial_breadth_N: 111,
    face_length: 113,
    nose_length_N: 47,
    nose_breadth_N: 35,
    nose_protrusion_N: 19,
    lip_length_N: 49,
    ear_length: 60,
  },
} as const;

describe.each(['female', 'male'] as const)('the %s seeds', (id) => {
  const s = seeds(SHAPES[id]);
  const gap = (a: HeadLandmark, b: HeadLandmark): number =>
    Math.hypot(...[0, 1, 2].map((j) => (s[a][j] as number) - (s[b][j] as number)));

  it('lie within 5 % or 3 mm of the survey’s medians', () => {
    const measured: Record<keyof (typeof MEDIANS)['male'], number> = {
      head_breadth: 2 * s.euryon[0],
      head_length: gap('glabella', 'opisthocranion'),
      bizygomatic_breadth: 2 * s.zygion[0],
      bigonial_breadth_N: 2 * s.gonion[0],
      face_length: gap('menton', 'sellion'),
      nose_length_N: gap('sellion', 'subnasale'),
      nose_breadth_N: 2 * s.alare[0],
      nose_protrusion_N: gap('pronasale', 'subnasale'),
      lip_length_N: 2 * s.cheilion[0],
      ear_length: gap('superaurale', 'subaurale'),
    };
    for (const [name, mm] of Object.entries(MEDIANS[id])) {
      const error = Math.abs(measured[name as keyof typeof measured] - mm);
      expect(error, name).toBeLessThan(Math.max(3, 0.05 * mm));
    }
  });

  it('have the depths of the facial planes near those of the medium headform', () => {
    // Zhuang, Benson and Viscusi 2010, scaled by head length (headform: 194 mm).
    const scale = gap('glabella', 'opisthocranion') / 194;
    const behindNose = (name: HeadLandmark): number => s.pronasale[2] - s[name][2];
    const planes = { pupil: 34.2, ectocanthion: 43.1, zygion: 84.7, tragion: 114.9, sellion: 21.4 };
    for (const [name, mm] of Object.entries(planes))
      expect(Math.abs(behindNose(name as HeadLandmark) - mm * scale), name).toBeLessThan(6);
  });
});
