import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import { ImpossibleDimensions } from '../../src/sitter/impossible';
import { landmarksFor } from '../../src/sitter/landmarks';
import type { DimensionName, LandmarkName } from '../../src/sitter/types';
import { dimensionsOf, IDS, modelOf } from './people';

const BREADTHS: Readonly<Record<string, DimensionName>> = {
  euryon: 'head_breadth',
  zygion: 'bizygomatic_breadth',
  gonion: 'bigonial_breadth',
  frontotemporale: 'minimum_frontal_breadth',
  tragion: 'bitragion_breadth',
  alare: 'nose_breadth',
  cheilion: 'lip_length',
  pupil: 'interpupillary_distance',
  acromion: 'biacromial_breadth',
  deltoid: 'bideltoid_breadth',
};
const DEPTHS: Readonly<Record<string, DimensionName>> = {
  pupil_left: 'nose_tip_to_eye_plane',
  ectocanthion_left: 'nose_tip_to_outer_eye_corner',
  sellion: 'nose_tip_to_sellion',
  zygion_left: 'nose_tip_to_zygion',
  tragion_left: 'nose_tip_to_tragion',
  opisthocranion: 'nose_tip_to_back_of_head',
};
const STRAIGHT: readonly (readonly [LandmarkName, LandmarkName, DimensionName])[] = [
  ['menton', 'sellion', 'face_length_menton_sellion'],
  ['subnasale', 'sellion', 'nose_length_subnasale_sellion'],
  ['pronasale', 'subnasale', 'nose_protrusion'],
  ['superaurale_left', 'subaurale_left', 'ear_length'],
];
const FROM_FLOOR: readonly (readonly [LandmarkName, DimensionName])[] = [
  ['vertex', 'stature'],
  ['cervicale', 'cervicale_height'],
  ['suprasternale', 'suprasternale_height'],
  ['acromion_left', 'acromial_height'],
  ['knee_left', 'knee_height_standing'],
];
const distance = (a: Vec3, b: Vec3): number =>
  Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) * 1000;

// What is checked against: the definitions of models/dimensions.json, read as coordinates.
describe.each(IDS)('landmarks of %s', (id) => {
  const d = dimensionsOf(modelOf(id));
  const l = landmarksFor(d);

  it('stand as far apart as the breadths say', () => {
    for (const [name, dimension] of Object.entries(BREADTHS)) {
      const [left, right] = [`${name}_left`, `${name}_right`] as LandmarkName[];
      const gap = l[left as LandmarkName][0] - l[right as LandmarkName][0];
      expect(1000 * gap, name).toBeCloseTo(d[dimension], 9);
    }
  });

  it('stand as far behind the nose tip as the depths say', () => {
    for (const [name, dimension] of Object.entries(DEPTHS))
      expect(1000 * (l.pronasale[2] - l[name as LandmarkName][2]), name).toBeCloseTo(
        d[dimension],
        9,
      );
    expect(1000 * (l.glabella[2] - l.opisthocranion[2])).toBeCloseTo(d.head_length, 9);
  });

  it('stand as far apart as the straight lengths say', () => {
    for (const [a, b, dimension] of STRAIGHT)
      expect(distance(l[a], l[b]), dimension).toBeCloseTo(d[dimension], 6);
  });

  it('stand as high as the heights say', () => {
    const floor = l.vertex[1] * 1000 - d.stature;
    for (const [name, dimension] of FROM_FLOOR)
      expect(l[name][1] * 1000 - floor, name).toBeCloseTo(d[dimension], 9);
    expect(1000 * l.vertex[1]).toBeCloseTo(d.vertex_above_eyes, 9);
    expect(1000 * (l.vertex[1] - l.menton[1])).toBeCloseTo(d.head_height_vertex_to_menton, 9);
  });

  it('have the pupils in the eye plane, level, with the origin between them', () => {
    expect(l.pupil_left[1]).toBe(0);
    expect(l.pupil_left[2]).toBe(0);
    expect(l.pupil_left[0] + l.pupil_right[0]).toBe(0);
  });

  it('run down the face in the order of anatomy', () => {
    const heights = [
      'vertex',
      'glabella',
      'sellion',
      'pronasale',
      'subnasale',
      'labrale_superius',
      'stomion',
      'labrale_inferius',
      'pogonion',
      'menton',
      'suprasternale',
    ].map((name) => l[name as LandmarkName][1]);
    expect([...heights].sort((a, b) => b - a)).toEqual(heights);
  });

  it('refuse a nose protrusion that no nose length can hold', () => {
    expect(() => landmarksFor({ ...d, nose_length_subnasale_sellion: 3 })).toThrow(
      ImpossibleDimensions,
    );
  });

  it('refuse heights that change places, and name the dimension', () => {
    expect(() => landmarksFor({ ...d, cervicale_height: d.stature - 60 })).toThrow(
      /cervicale_height/,
    );
    expect(() => landmarksFor({ ...d, waist_height_navel: d.chest_height })).toThrow(
      /waist_height_navel/,
    );
  });
});
