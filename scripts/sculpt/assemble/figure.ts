import { CLOTHES, REGION } from '../../../src/sitter/types';
import type { Asset, AssetMesh } from '../asset';
import { alwaysCovered, clothes, coveredBy, hands } from '../body/clothes';
import { wholeBody } from '../body/parts';
import { BODY_SHAPES } from '../body/shape';
import type { Field } from '../field';
import { skinGrid } from '../head/grid';
import { type HeadParts, headParts } from '../head/parts';
import { SHAPES } from '../head/shape';
import type { TriangleMesh } from '../mesh';
import { polygonise } from '../nets';
import { openness } from '../occlusion';
import { bodyPlaces, headPlaces } from '../places';
import { compact } from '../simplify';
import { sourceHash } from '../source';
import { bound } from './bones';
import { bodyMeshes } from './clothes';
import type { Detail, Sex } from './detail';
import { hairMesh } from './hair';
import { halved } from './halves';
import { byte, facing, sample } from './sampling';

/** The person without clothes and hair: skin down to the chest, hands, eyes, brows and lashes. */
export async function figureAsset(sex: Sex, detail: Detail): Promise<Asset> {
  const shape = SHAPES[sex];
  const body = BODY_SHAPES[sex];
  const parts = headParts(shape);
  // Skin that some neckline shows is not in the dark of another one's cloth.
  const sets = Object.values(clothes(body)).map(wholeBody);
  const cloth: Field = (...p) => Math.max(...sets.map((set) => set(...p)));
  const places: Record<string, readonly [number, number]> = {};

  const face = await halved(
    visibleSkin(polygonise(parts.skin, skinGrid(shape, detail.fine)), alwaysCovered(body)),
    detail.triangles.skin ?? detail.other,
    (half) => headPlaces(half, shape, parts.region),
    (half) => colourBorders(half, parts),
  );
  for (const [name, vertex] of Object.entries(face.places)) places[name] = [0, vertex];
  const skin: AssetMesh = {
    ...skinMesh(face.mesh, parts, cloth, coveredBy(body)),
    coarse: face.coarse,
    ...bound(body, 'skin', face.mesh),
  };

  const eyes = bothEyes(parts, shape.interpupillary);
  places.pupil_left = [1, 0];
  places.pupil_right = [1, eyes.positions.length / 6];

  const bare = hands(body);
  const handMeshes = await bodyMeshes(sex, bare, wholeBody([...bare]), detail);
  for (const [name, [m, vertex]] of Object.entries(handMeshes.guides))
    places[name] = [m + 2, vertex];

  const found = bodyPlaces(body);
  const { landmarks, guides } = found.sort(places);
  return {
    id: sex,
    source: sourceHash('figure'),
    meshes: [skin, eyes, ...handMeshes.meshes, hairMesh('fringe', 'brows', facing(parts.fringe()))],
    landmarks,
    guides,
    anchors: found.anchors,
    body: body.mm,
  };
}

/** The skin without what lies under every set of clothes. */
function visibleSkin(
  mesh: TriangleMesh,
  covered: (x: number, y: number, z: number) => boolean,
): TriangleMesh {
  const { indices: I } = mesh;
  const hidden = sample(mesh, (p) => (covered(...p) ? 1 : 0));
  const kept: number[] = [];
  for (let t = 0; t < I.length; t += 3) {
    const triangle = [I[t], I[t + 1], I[t + 2]] as [number, number, number];
    if (!triangle.every((v) => hidden[v])) kept.push(...triangle);
  }
  return compact(mesh, Uint32Array.from(kept)).mesh;
}

type MaskName = keyof ReturnType<HeadParts['masks']>;
const maskNames = (parts: HeadParts): MaskName[] => Object.keys(parts.masks(0, 0, 0)) as MaskName[];

/** Shares whose borders must not saw-tooth. */
function colourBorders(half: TriangleMesh, parts: HeadParts): Float32Array[] {
  const names = maskNames(parts);
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

function skinMesh(
  mesh: TriangleMesh,
  parts: HeadParts,
  cloth: Field,
  covered: ReturnType<typeof coveredBy>,
): AssetMesh {
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
    masks: Object.fromEntries([
      ...maskNames(parts).map((name) => [
        name,
        sample(mesh, ([x, y, z]) => byte(parts.masks(x, y, z)[name])),
      ]),
      ...CLOTHES.map((set) => [
        `under-${set}`,
        sample(mesh, (p) => byte(covered[set](...p) ? 1 : 0)),
      ]),
    ]),
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
    openness: twice((v) => eye.openness[v] as number),
    regions: new Uint8Array(2 * count).fill(REGION.eye),
    masks: {
      iris: twice((v) => eye.iris[v] as number),
      blush: twice((v) => eye.blush[v] as number),
    },
  };
}
