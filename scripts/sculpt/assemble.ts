import { REGION, type Substance } from '../../src/sitter/types';
import type { Asset, AssetMesh } from './asset';
import { figure } from './body/figure';

import { bodyParts, wholeBody } from './body/parts';
import { BODY_SHAPES } from './body/shape';
import { topOpening } from './body/top';
import type { Field } from './field';
import type { HairStyleName } from './hair';
import { skinGrid } from './head/grid';
import { type HeadParts, headParts } from './head/parts';
import { SHAPES } from './head/shape';
import type { TriangleMesh } from './mesh';
import { type Grid, polygonise } from './nets';
import { openness } from './occlusion';
import { bodyPlaces, headPlaces, type Placed } from './places';
import { compact, leftHalf, mirrored, simplify } from './simplify';
import { sourceHash } from './source';

export const SEXES = ['female', 'male'] as const;
export type Sex = (typeof SEXES)[number];

/** How finely a figure is cut. */
export interface Detail {
  /** Cell over the face, mm. */
  readonly fine: number;
  /** Body and hair are cut at every so-manyth plane of their grids. */
  readonly every: number;
  /** Triangles to keep, by mesh name (both halves). */
  readonly triangles: Readonly<Record<string, number>>;
}

export const FULL_DETAIL: Detail = {
  fine: 0.9,
  every: 1,
  triangles: {
    skin: 62_000,
    hair: 7_000,
    top: 13_000,
    trousers: 4_000,
    hands: 7_000,
    shoes: 3_000,
  },
};

/** Hair that each figure can wear. */
const HAIR: Readonly<Record<Sex, readonly HairStyleName[]>> = {
  female: ['tied'],
  male: ['short'],
};

/** Skin this far below the neckline is never seen, mm. */
const HIDDEN = 30;
/** Skin this far below it must not show through the cloth either, mm. */
const COVERED = 9;
/** Skin nearer to the cloth's outside than this would show through once it is simplified, mm. */
const CLOTH = 2.5;

/** Taken as this program starts: sources edited while it runs are not what it ran. */
const SOURCE = sourceHash();

const byte = (share: number): number => Math.round(255 * Math.min(1, Math.max(0, share)));

/** Values of a function of place (and normal) at every vertex of a mesh. */
function sample(
  mesh: TriangleMesh,
  at: (p: readonly [number, number, number], n: readonly [number, number, number]) => number,
): Uint8Array {
  const { positions: P, normals: N } = mesh;
  return Uint8Array.from({ length: P.length / 3 }, (_, v) =>
    at(
      [P[3 * v], P[3 * v + 1], P[3 * v + 2]] as [number, number, number],
      [N[3 * v], N[3 * v + 1], N[3 * v + 2]] as [number, number, number],
    ),
  );
}

/** A coarser grid over the same space. */
function thinned(grid: Grid, every: number): Grid {
  const thin = (planes: Float64Array): Float64Array =>
    planes.filter((_, i) => i % every === 0 || i === planes.length - 1);
  return { x: thin(grid.x), y: thin(grid.y), z: thin(grid.z) };
}

/** A part simplified half by half, with the places that landmarks hold. */
async function halved(
  whole: TriangleMesh,
  triangles: number,
  find: (half: TriangleMesh) => Readonly<Record<string, Placed>>,
  detail: (half: TriangleMesh) => Float32Array[] = () => [],
): Promise<{ mesh: TriangleMesh; left: Record<string, number>; right: Record<string, number> }> {
  const half = leftHalf(whole);
  const found = Object.entries(find(half));
  const kept = await simplify(half, {
    triangles: triangles / 2,
    locked: found.map(([, { vertex }]) => vertex),
    detail: detail(half),
  });
  const { mesh: small, place } = compact(half, kept);
  const { mesh, mirror } = mirrored(small);
  const left: Record<string, number> = {};
  const right: Record<string, number> = {};
  for (const [name, { vertex, paired }] of found) {
    const v = place.get(vertex);
    if (v === undefined) throw new Error(`${name} was simplified away`);
    if (!paired) left[name] = v;
    else {
      left[`${name}_left`] = v;
      right[`${name}_right`] = mirror[v] as number;
    }
  }
  return { mesh, left, right };
}

/** Sculpts one figure. Deterministic; minutes at full detail. */
export async function assemble(sex: Sex, detail: Detail): Promise<Asset> {
  const shape = SHAPES[sex];
  const body = BODY_SHAPES[sex];
  const parts = headParts(shape);
  const clothed = bodyParts(body);
  const cloth = wholeBody(clothed.filter((part) => part.substance !== 'skin'));
  const meshes: AssetMesh[] = [];
  const places: Record<string, [number, number]> = {};
  const hold = (found: Readonly<Record<string, number>>): void => {
    for (const [name, vertex] of Object.entries(found)) places[name] = [meshes.length, vertex];
  };

  const skin = visibleSkin(
    polygonise(parts.skin, skinGrid(shape, detail.fine)),
    topOpening(figure(body)),
    cloth,
  );
  const face = await halved(
    skin,
    detail.triangles.skin ?? 0,
    (half) => headPlaces(half, shape, parts.region),
    (half) => colourBorders(half, parts),
  );
  hold({ ...face.left, ...face.right });
  meshes.push(skinMesh(face.mesh, parts, cloth));

  const eyes = bothEyes(parts, shape.interpupillary);
  hold({ pupil_left: 0, pupil_right: eyes.positions.length / 6 });
  meshes.push(eyes);

  const air = wholeBody(clothed);
  const open = openness(air, 1);
  const found = bodyPlaces(body);
  for (const part of clothed) {
    const whole = polygonise(part.field, thinned(part.grid, detail.every));
    const cut = await halved(whole, detail.triangles[part.name] ?? 4_000, (half) =>
      found.on(part.name, half),
    );
    hold({ ...cut.left, ...cut.right });
    meshes.push({
      ...cut.mesh,
      name: part.name,
      substance: part.substance as Substance,
      openness: sample(cut.mesh, ([x, y, z], [nx, ny, nz]) => byte(open(x, y, z, nx, ny, nz))),
      regions: sample(cut.mesh, (p) => (found.onArm(p) ? REGION.arm : REGION.body)),
      masks: {},
    });
  }
  meshes.push(hairs('fringe', 'brows', parts.fringe()));
  for (const name of HAIR[sex]) {
    const style = parts.hair[name];
    const volume = polygonise(style.volume, thinned(style.grid, detail.every));
    const { mesh } = await halved(volume, detail.triangles.hair ?? 0, () => ({}));
    meshes.push(hairs(`hair-${name}`, 'hair', { ...mesh, shade: 0.32 }));
    meshes.push(hairs(`hair-${name}-locks`, 'hair', style.locks()));
  }

  const { landmarks, guides } = found.sort(places);
  return {
    id: sex,
    meshes,
    landmarks,
    guides,
    anchors: found.anchors,
    body: body.mm,
    source: SOURCE,
  };
}

/** Hair: its masks hold half of each vertex' own lightness. */
function hairs(
  name: string,
  substance: 'hair' | 'brows',
  mesh: TriangleMesh & { readonly shade: number | Float32Array },
): AssetMesh {
  const count = mesh.positions.length / 3;
  const { positions, normals, shade } = mesh;
  return {
    name,
    substance,
    positions,
    normals,
    indices: facingNormals(mesh),
    openness: new Uint8Array(count).fill(255),
    regions: new Uint8Array(count),
    masks: {
      shade: Uint8Array.from({ length: count }, (_, v) =>
        byte((typeof shade === 'number' ? shade : (shade[v] as number)) / 2),
      ),
    },
  };
}

/** Triangles counter-clockwise seen from where their vertices' normals point. */
function facingNormals({ positions: P, normals: N, indices: I }: TriangleMesh): Uint32Array {
  const out = I.slice();
  for (let t = 0; t < I.length; t += 3) {
    const [a, b, c] = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
    const edge = (v: number): number[] =>
      [0, 1, 2].map((j) => (P[3 * v + j] as number) - (P[3 * a + j] as number));
    const [u, w] = [edge(b), edge(c)] as [number[], number[]];
    const dot = [0, 1, 2].reduce((sum, j) => {
      const [k, l] = [(j + 1) % 3, (j + 2) % 3];
      const normal = (u[k] as number) * (w[l] as number) - (u[l] as number) * (w[k] as number);
      return sum + normal * (N[3 * a + j] as number);
    }, 0);
    if (dot < 0) out.set([a, c, b], t);
  }
  return out;
}

/** The skin without what lies under the top, below its neckline. */
function visibleSkin(mesh: TriangleMesh, aboveEdge: Field, cloth: Field): TriangleMesh {
  const { indices: I } = mesh;
  const hidden = sample(mesh, ([x, y, z]) => {
    if (y > -100) return 0;
    const above = aboveEdge(x, y, z);
    return above < -HIDDEN || (above < -COVERED && cloth(x, y, z) > -CLOTH) ? 1 : 0;
  });
  const kept: number[] = [];
  for (let t = 0; t < I.length; t += 3) {
    const triangle = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
    if (!triangle.every((v) => hidden[v])) kept.push(...triangle);
  }
  return compact(mesh, Uint32Array.from(kept)).mesh;
}

/** Shares whose borders must not saw-tooth. */
function colourBorders(half: TriangleMesh, parts: HeadParts): Float32Array[] {
  const names = Object.keys(parts.masks(0, 0, 0)) as (keyof ReturnType<HeadParts['masks']>)[];
  const columns = names.map(() => new Float32Array(half.positions.length / 3));
  const { positions: P } = half;
  for (let v = 0; v < P.length / 3; v++) {
    const m = parts.masks(P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number);
    names.forEach((name, k) => {
      (columns[k] as Float32Array)[v] = m[name];
    });
  }
  return columns.filter((column) => column.some((share) => share > 0));
}

function skinMesh(mesh: TriangleMesh, parts: HeadParts, cloth: Field): AssetMesh {
  const names = Object.keys(parts.masks(0, 0, 0)) as (keyof ReturnType<HeadParts['masks']>)[];
  const underCloth = openness(cloth, 1);
  return {
    ...mesh,
    name: 'skin',
    substance: 'skin',
    openness: sample(mesh, ([x, y, z], [nx, ny, nz]) => {
      const own = parts.occlusion(x, y, z, nx, ny, nz);
      return byte(y < -120 ? Math.min(own, underCloth(x, y, z, nx, ny, nz)) : own);
    }),
    regions: sample(mesh, ([x, y, z]) => REGION[parts.region(x, y, z)]),
    masks: Object.fromEntries(
      names.map((name) => [name, sample(mesh, ([x, y, z]) => byte(parts.masks(x, y, z)[name]))]),
    ),
  };
}

/** Both eyeballs as one mesh, the left one first; each turns about its own pupil's middle. */
function bothEyes(parts: HeadParts, interpupillary: number): AssetMesh {
  const eye = parts.eyes();
  const count = eye.positions.length / 3;
  const both = (from: Float32Array, shift: number): Float32Array => {
    const out = new Float32Array(6 * count);
    for (const [side, sign] of [1, -1].entries())
      from.forEach((value, i) => {
        out[3 * count * side + i] = i % 3 === 0 ? sign * (value + shift) : value;
      });
    return out;
  };
  const n = eye.indices.length;
  const indices = new Uint32Array(2 * n);
  indices.set(eye.indices);
  // The right eye is the left one mirrored, so its triangles turn the other way round.
  for (let t = 0; t < n; t += 3)
    indices.set(
      [0, 2, 1].map((k) => (eye.indices[t + k] as number) + count),
      n + t,
    );
  const twice = (share: (v: number) => number): Uint8Array =>
    Uint8Array.from({ length: 2 * count }, (_, v) => byte(share(v % count)));
  return {
    name: 'eyes',
    substance: 'eye',
    positions: both(eye.positions, interpupillary / 2),
    normals: both(eye.normals, 0),
    indices,
    openness: twice(() => 1),
    regions: new Uint8Array(2 * count).fill(REGION.eye),
    masks: {
      pupil: twice((v) => eye.pupil[v] as number),
      iris: twice((v) => eye.iris[v] as number),
      limbus: twice((v) => eye.limbus[v] as number),
      streak: twice((v) => ((eye.streak[v] as number) + 1) / 2),
      blush: twice((v) => eye.blush[v] as number),
    },
  };
}
