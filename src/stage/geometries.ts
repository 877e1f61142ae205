/** Sitters' meshes as the renderer's geometries: one for each mesh, however many pictures show it. */
import { BufferAttribute, BufferGeometry } from 'three';
import type { SitterMesh } from '../sitter/types';
import { bends } from './bend';
import { eyeAttributes } from './eyeAttributes';

/** Levels of detail of one mesh; they share their vertices. */
export interface Levels {
  readonly fine: BufferGeometry;
  /** The same as `fine` where a mesh has but one level. */
  readonly coarse: BufferGeometry;
}

/** A mesh's own arrays as a geometry; nothing is copied. */
export function meshGeometry(mesh: SitterMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(mesh.positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(mesh.normals, 3));
  geometry.setAttribute('color', new BufferAttribute(mesh.colours, 3, true));
  geometry.setAttribute('openness', new BufferAttribute(mesh.openness, 1, true));
  if (mesh.strands) geometry.setAttribute('strands', new BufferAttribute(mesh.strands, 2, true));
  if (mesh.substance === 'skin') {
    geometry.setAttribute('bend', new BufferAttribute(bends(mesh), 1, true));
    geometry.setAttribute('sculpted', new BufferAttribute(mesh.sculpted ?? mesh.positions, 3));
  }
  if (mesh.substance === 'eye')
    for (const [name, values] of Object.entries(eyeAttributes(mesh)))
      geometry.setAttribute(name, new BufferAttribute(values, 3));
  geometry.setIndex(new BufferAttribute(mesh.indices, 1));
  return geometry;
}

interface Held {
  readonly levels: Levels;
  holders: number;
}
const held = new WeakMap<SitterMesh, Held>();

function levelsOf(mesh: SitterMesh): Levels {
  const fine = meshGeometry(mesh);
  if (!mesh.coarse) return { fine, coarse: fine };
  const coarse = new BufferGeometry();
  for (const [name, attribute] of Object.entries(fine.attributes))
    coarse.setAttribute(name, attribute);
  coarse.setIndex(new BufferAttribute(mesh.coarse, 1));
  return { fine, coarse };
}

/** Takes a mesh's geometry in hand; `letGo` it once for each time. */
export function hold(mesh: SitterMesh): Levels {
  const known = held.get(mesh);
  if (known) {
    known.holders += 1;
    return known.levels;
  }
  const levels = levelsOf(mesh);
  held.set(mesh, { levels, holders: 1 });
  return levels;
}

/** Gives the buffers up once nobody holds the mesh any more. */
export function letGo(mesh: SitterMesh): void {
  const known = held.get(mesh);
  if (!known) return;
  known.holders -= 1;
  if (known.holders > 0) return;
  held.delete(mesh);
  known.levels.fine.dispose();
  known.levels.coarse.dispose();
}
