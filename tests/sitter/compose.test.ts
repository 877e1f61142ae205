import { describe, expect, it } from 'vitest';
import { closedBelow, openEdges } from '../../src/sitter/caps';
import { compose, type Ingredients, sculptures } from '../../src/sitter/compose';
import { filesFor } from '../../src/sitter/files';
import { BadSculpture } from '../../src/sitter/glb';
import type { SculptureFile, SculptureMesh } from '../../src/sitter/sculpture';
import { LANDMARKS, type LandmarkName } from '../../src/sitter/types';
import { modelOf } from './people';

/** A strip of triangles along x, 10 mm apart, in the plane z = 0. */
function strip(name: string, more: Partial<SculptureMesh> = {}, z = 0): SculptureMesh {
  const count = 6;
  return {
    name,
    substance: 'skin',
    positions: Float32Array.from({ length: 3 * count }, (_, i) =>
      i % 3 === 0 ? i / 300 : i % 3 === 1 ? (Math.floor(i / 3) % 2) / 100 : z,
    ),
    normals: Float32Array.from({ length: 3 * count }, (_, i) => (i % 3 === 2 ? 1 : 0)),
    indices: Uint32Array.of(0, 1, 2, 1, 2, 3, 2, 3, 4, 3, 4, 5),
    openness: new Uint8Array(count).fill(255),
    regions: new Uint8Array(count),
    masks: {},
    ...more,
  };
}

const onCloth = new Set<LandmarkName>(['acromion_left', 'acromion_right']);
const placesOf = (names: readonly LandmarkName[], vertex: number): SculptureFile['landmarks'] =>
  Object.fromEntries(names.map((name) => [name, [0, vertex] as const]));

const file = (id: string, mesh: SculptureMesh[], landmarks: SculptureFile['landmarks'] = {}) => ({
  id,
  source: '',
  meshes: mesh,
  landmarks,
  guides: {},
  anchors: {},
  body: {},
});

const figure = file(
  'figure',
  [
    strip('skin', { masks: { 'under-top': Uint8Array.of(255, 255, 255, 255, 0, 0) } }),
    strip('fringe', { substance: 'brows' }, 0.002),
  ],
  placesOf(
    LANDMARKS.filter((name) => !onCloth.has(name)),
    1,
  ),
);
const top = file('top', [strip('top', { substance: 'top' })], placesOf([...onCloth], 2));
const plain: Ingredients = { figure, worn: [top], clothes: 'top', forms: [] };

/** The triangles without the lid over the open end, which hangs on the last vertex. */
const own = ({ positions, indices }: SculptureMesh): number[] => {
  const tip = positions.length / 3 - 1;
  const kept: number[] = [];
  for (let t = 0; t < indices.length; t += 3)
    if (!indices.subarray(t, t + 3).includes(tip)) kept.push(...indices.subarray(t, t + 3));
  return kept;
};

describe('putting a figure and what it wears together', () => {
  it('keeps every place on its own mesh', () => {
    const { landmarks, meshes } = compose(plain);
    expect(meshes.map(({ name }) => name)).toEqual(['skin', 'fringe', 'top']);
    expect(landmarks.menton).toEqual([0, 1]);
    expect(landmarks.acromion_left).toEqual([2, 2]);
  });

  it('leaves out the skin that lies wholly under the cloth worn, and no other', () => {
    const strips = (of: Ingredients): number[] => own(compose(of).meshes[0] as SculptureMesh);
    expect(strips(plain)).toEqual([2, 3, 4, 3, 4, 5]);
    expect(strips({ ...plain, clothes: 'dress' })).toHaveLength(12);
  });

  it('closes the skin where it ends, from one more vertex as low as the end', () => {
    // A pyramid without its base, wound outwards; the base slopes.
    const hood: SculptureMesh = {
      ...strip('skin'),
      positions: Float32Array.of(0, 1, 0, 1, 0, 1, 1, -0.5, -1, -1, -0.5, -1, -1, 0, 1),
      normals: new Float32Array(15),
      indices: Uint32Array.of(0, 1, 2, 0, 2, 3, 0, 3, 4, 0, 4, 1),
      openness: new Uint8Array(5),
      regions: new Uint8Array(5),
      masks: { lips: new Uint8Array(5) },
    };
    const { positions, normals, indices, openness, masks } = closedBelow(hood);
    expect(openEdges(hood.indices)).toHaveLength(4);
    expect(openEdges(indices)).toEqual([]);
    // Wound as its neighbours are: each edge is run through once each way.
    const ways = new Set<string>();
    for (let t = 0; t < indices.length; t++)
      ways.add(`${indices[t]} ${indices[t % 3 === 2 ? t - 2 : t + 1]}`);
    expect(ways.size).toBe(indices.length);
    expect(positions.slice(15)).toEqual(Float32Array.of(0, -0.5, 0));
    expect(normals.slice(15)).toEqual(Float32Array.of(0, -1, 0));
    expect([openness.length, masks.lips?.length]).toEqual([6, 6]);
  });

  it('names what has no place', () => {
    expect(() => compose({ ...plain, worn: [] })).toThrow(/acromion_left/);
  });

  it('brings a share of a form into the skin and into what stands on it', () => {
    const lifted = strip('skin');
    lifted.positions.fill(0);
    lifted.positions[2] = 0.01;
    const older = { file: file('older', [lifted]), name: 'older', share: 0.5 } as const;
    const [skin, brows] = compose({ ...plain, forms: [older] }).meshes as [
      SculptureMesh,
      SculptureMesh,
    ];
    expect(skin.positions[2]).toBeCloseTo(0.005, 9);
    expect(skin.positions[5]).toBe(0);
    expect(brows.positions[2]).toBeCloseTo(0.007, 9);
  });

  it('refuses a form of another figure', () => {
    const short = strip('skin', { positions: new Float32Array(9) });
    const forms = [{ file: file('child', [short]), name: 'child', share: 1 }] as const;
    expect(() => compose({ ...plain, forms })).toThrow(BadSculpture);
  });
});

describe('the files of a person', () => {
  const model = modelOf('adult-woman');

  it('are the figure, the clothes, and just what is worn and formed', () => {
    const looks = { ...model.looks, hair: 'bald', beard: 'none', clothes: 'dress' } as const;
    expect(filesFor({ sculpture: 'female', forms: {} }, looks)).toEqual({
      figure: 'female.glb',
      worn: ['female-clothes-dress.glb'],
      forms: [],
    });
    expect(
      filesFor({ sculpture: 'male', forms: { older: 1 } }, { ...looks, beard: 'full', smile: 0.5 }),
    ).toEqual({
      figure: 'male.glb',
      worn: ['male-clothes-dress.glb', 'male-beard-full.glb'],
      forms: ['older', 'smile'],
    });
  });

  it('are asked for again after a failure', async () => {
    const asked: string[] = [];
    const make = sculptures((name) => {
      asked.push(name);
      return Promise.reject(new Error('offline'));
    });
    await expect(make(model, model.looks)).rejects.toThrow('offline');
    const once = asked.length;
    await expect(make(model, model.looks)).rejects.toThrow('offline');
    expect(asked).toHaveLength(2 * once);
  });
});
