import type { Sitter, SitterMesh } from '../../sitter/types';

type Values = ArrayLike<number> | undefined;

function sameValues(a: Values, b: Values): boolean {
  if (a === b) return true;
  if (!a || !b || a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

const ARRAYS = [
  'positions',
  'normals',
  'colours',
  'openness',
  'indices',
  'coarse',
  'regions',
] as const satisfies readonly (keyof SitterMesh)[];

/**
 * A sitter as built anew, with every mesh that came out as it was replaced by the one that is there: what
 * the renderer and the gaze have prepared of it is not prepared again.
 */
export function shareMeshes(before: Sitter | undefined, after: Sitter): Sitter {
  if (!before) return after;
  const meshes = after.meshes.map((mesh, i) => {
    const old = before.meshes[i];
    const isSame =
      old?.name === mesh.name &&
      old.substance === mesh.substance &&
      ARRAYS.every((name) => sameValues(old[name], mesh[name]));
    return isSame ? old : mesh;
  });
  return { ...after, meshes };
}
