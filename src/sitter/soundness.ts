import type { Sculpture } from './sculpture';
import type { Sitter } from './types';
import { turnedOver } from './untangle';

/** What can be counted of a mesh to tell whether it is sound. */
export interface Soundness {
  readonly name: string;
  /** A ribbon is an open strip by nature: strands of hair, brows and lashes, wires. */
  readonly ribbon: boolean;
  readonly triangles: number;
  /** Edges of one triangle alone: the rims of openings. */
  readonly openEdges: number;
  /** Triangles that face away from where the sculpture's do. */
  readonly flipped: number;
}

/** @param sitter built upright from the sculpture */
export const soundnessOf = (sculpture: Sculpture, sitter: Sitter): Soundness[] =>
  sitter.meshes.map(({ name, positions, indices, substance }, m) => ({
    name,
    ribbon: substance === 'brows' || name.endsWith('-locks'),
    triangles: indices.length / 3,
    openEdges: openEdges(positions.length / 3, indices),
    flipped: turnedOver(sculpture.meshes[m]?.positions ?? positions, positions, indices).length,
  }));

function openEdges(vertices: number, indices: Uint32Array): number {
  const open = new Set<number>();
  for (let t = 0; t < indices.length; t += 3)
    for (let k = 0; k < 3; k++) {
      const [a, b] = [indices[t + k], indices[t + ((k + 1) % 3)]] as [number, number];
      const edge = Math.min(a, b) * vertices + Math.max(a, b);
      if (!open.delete(edge)) open.add(edge);
    }
  return open.size;
}
