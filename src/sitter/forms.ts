import type { SculptureMesh } from './sculpture';

/** What stands on the skin within this reach goes with it, metres. */
const REACH = 0.012;

/** Meshes that stand on the face: brows, lashes, beard. */
const onFace = ({ substance, name }: SculptureMesh): boolean =>
  substance === 'brows' || name.startsWith('beard');

/** Displacements (xyz) by mesh index: the skin's own, and those of what stands on it. */
export function carry(
  meshes: readonly SculptureMesh[],
  skin: number,
  displacement: Float32Array,
): Map<number, Float32Array> {
  const out = new Map([[skin, displacement]]);
  const base = meshes[skin] as SculptureMesh;
  const nearest = nearestVertex(base.positions, displacement);
  meshes.forEach((mesh, m) => {
    if (!onFace(mesh)) return;
    const own = new Float32Array(mesh.positions.length);
    for (let o = 0; o < own.length; o += 3) {
      const v = nearest(mesh.positions, o);
      if (v >= 0) own.set(displacement.subarray(3 * v, 3 * v + 3), o);
    }
    out.set(m, own);
  });
  return out;
}

/** Finds the vertex, among those that are displaced or near one, closest to a point within REACH. */
function nearestVertex(P: Float32Array, displacement: Float32Array) {
  const cell = (x: number, y: number, z: number): string =>
    `${Math.floor(x / REACH)},${Math.floor(y / REACH)},${Math.floor(z / REACH)}`;
  const cells = new Map<string, number[]>();
  for (let v = 0; 3 * v < P.length; v++) {
    const o = 3 * v;
    const key = cell(P[o] as number, P[o + 1] as number, P[o + 2] as number);
    const list = cells.get(key);
    if (list) list.push(v);
    else cells.set(key, [v]);
  }
  const still = ([...list]: readonly number[]): boolean =>
    list.every((v) => !displacement[3 * v] && !displacement[3 * v + 1] && !displacement[3 * v + 2]);
  for (const [key, list] of cells) if (still(list)) cells.delete(key);
  return (Q: Float32Array, at: number): number => {
    const [x, y, z] = [Q[at], Q[at + 1], Q[at + 2]] as [number, number, number];
    let found = -1;
    let least = REACH * REACH;
    for (const dx of [-REACH, 0, REACH])
      for (const dy of [-REACH, 0, REACH])
        for (const dz of [-REACH, 0, REACH])
          for (const v of cells.get(cell(x + dx, y + dy, z + dz)) ?? []) {
            const o = 3 * v;
            const d =
              ((P[o] as number) - x) ** 2 +
              ((P[o + 1] as number) - y) ** 2 +
              ((P[o + 2] as number) - z) ** 2;
            if (d < least) [least, found] = [d, v];
          }
    return found;
  };
}

/** Brings a share of a form into the meshes of a figure, in place of those that it changes. */
export function shaped(
  meshes: SculptureMesh[],
  skin: number,
  form: SculptureMesh,
  share: number,
): void {
  const moved = carry(meshes, skin, form.positions);
  for (const [m, displacement] of moved) {
    const mesh = meshes[m] as SculptureMesh;
    meshes[m] = {
      ...mesh,
      positions: mesh.positions.map((c, i) => c + share * (displacement[i] as number)),
      normals: m === skin ? blended(mesh.normals, form.normals, share) : mesh.normals,
    };
  }
}

/** Unit vectors a share of the way from one set to another. */
function blended(from: Float32Array, to: Float32Array, share: number): Float32Array {
  const out = new Float32Array(from.length);
  for (let o = 0; o < out.length; o += 3) {
    const v = [0, 1, 2].map(
      (j) => (1 - share) * (from[o + j] as number) + share * (to[o + j] as number),
    );
    const length = Math.hypot(...v) || 1;
    for (let j = 0; j < 3; j++) out[o + j] = (v[j] as number) / length;
  }
  return out;
}
