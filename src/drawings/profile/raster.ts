/** The sitter seen exactly from the side, as a grid of what is seen in each cell. */
import { REGION, type SitterMesh } from '../../sitter/types';

/** What the side view tells apart. */
export const SEEN = { nothing: 0, skin: 1, hair: 2, ear: 3, top: 4, below: 5 } as const;
export type Seen = (typeof SEEN)[keyof typeof SEEN];

export interface SideGrid {
  /** Metres of the grid's left lower corner (z, y) and of a cell's side. */
  readonly left: number;
  readonly bottom: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the bottom, one SEEN value a cell. */
  readonly cells: Uint8Array;
}

/** What a triangle with this vertex shows. */
function seenAt(mesh: SitterMesh, vertex: number): Seen {
  switch (mesh.substance) {
    case 'skin':
      return mesh.regions[vertex] === REGION.earRight ? SEEN.ear : SEEN.skin;
    case 'hair':
    case 'brows':
      return SEEN.hair;
    case 'eye':
      return SEEN.skin;
    case 'top':
    case 'outer':
      return SEEN.top;
    case 'frame':
    case 'glass':
      return SEEN.skin;
    case 'trousers':
    case 'shoes':
      return SEEN.below;
  }
}

function bounds(meshes: readonly SitterMesh[]) {
  const found = { z0: Infinity, z1: -Infinity, y0: Infinity, y1: -Infinity };
  for (const { positions, indices } of meshes) {
    for (const vertex of indices) {
      const y = positions[3 * vertex + 1] ?? 0;
      const z = positions[3 * vertex + 2] ?? 0;
      found.z0 = Math.min(found.z0, z);
      found.z1 = Math.max(found.z1, z);
      found.y0 = Math.min(found.y0, y);
      found.y1 = Math.max(found.y1, y);
    }
  }
  return found;
}

/**
 * Draws the meshes' triangles on the side plane (z to the right, y up), nearest to the viewer on
 * the sitter's right (smallest x) in front. A cell counts when its centre lies in a triangle.
 * Throws a RangeError when the meshes hold no triangle.
 */
export function rasteriseSide(meshes: readonly SitterMesh[], cell: number): SideGrid {
  const { z0, z1, y0, y1 } = bounds(meshes);
  if (!(z1 > z0 && y1 > y0)) throw new RangeError('a side view needs meshes with triangles');
  const left = z0 - cell;
  const bottom = y0 - cell;
  const columns = Math.ceil((z1 - left) / cell) + 1;
  const rows = Math.ceil((y1 - bottom) / cell) + 1;
  const cells = new Uint8Array(columns * rows);
  const nearest = new Float32Array(columns * rows).fill(Infinity);

  for (const mesh of meshes) {
    const { positions, indices } = mesh;
    for (let i = 0; i + 2 < indices.length; i += 3) {
      const a = indices[i] ?? 0;
      const b = indices[i + 1] ?? 0;
      const c = indices[i + 2] ?? 0;
      const seen = seenAt(mesh, a);
      // Grid coordinates, so that cell (i, j) has its centre at whole numbers.
      const ax = ((positions[3 * a + 2] ?? 0) - left) / cell - 0.5;
      const ay = ((positions[3 * a + 1] ?? 0) - bottom) / cell - 0.5;
      const bx = ((positions[3 * b + 2] ?? 0) - left) / cell - 0.5;
      const by = ((positions[3 * b + 1] ?? 0) - bottom) / cell - 0.5;
      const cx = ((positions[3 * c + 2] ?? 0) - left) / cell - 0.5;
      const cy = ((positions[3 * c + 1] ?? 0) - bottom) / cell - 0.5;
      const area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
      if (area === 0) continue;
      const depthA = positions[3 * a] ?? 0;
      const depthB = positions[3 * b] ?? 0;
      const depthC = positions[3 * c] ?? 0;
      const lastRow = Math.floor(Math.max(ay, by, cy));
      const lastColumn = Math.floor(Math.max(ax, bx, cx));
      for (let row = Math.ceil(Math.min(ay, by, cy)); row <= lastRow; row += 1) {
        for (let column = Math.ceil(Math.min(ax, bx, cx)); column <= lastColumn; column += 1) {
          const shareB = ((column - ax) * (cy - ay) - (cx - ax) * (row - ay)) / area;
          const shareC = ((bx - ax) * (row - ay) - (column - ax) * (by - ay)) / area;
          if (shareB < 0 || shareC < 0 || shareB + shareC > 1) continue;
          const depth = depthA + shareB * (depthB - depthA) + shareC * (depthC - depthA);
          const at = row * columns + column;
          if (depth >= (nearest[at] ?? 0)) continue;
          nearest[at] = depth;
          cells[at] = seen;
        }
      }
    }
  }
  return { left, bottom, cell, columns, rows, cells };
}
