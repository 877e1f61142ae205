/** A grey card held before the face: what a photographer balances by. */
import type { Sitter, SitterMesh } from '../../src/sitter/types';

/** Reflects 18 %, as the trade's cards do. */
const REFLECTANCE = 0.18;
const HALF = 0.06;
const BEFORE = 0.06;

export function withCard(sitter: Sitter): Sitter {
  const corners = [-1, -1, 1, -1, 1, 1, -1, 1].map((side) => side * HALF);
  const card: SitterMesh = {
    name: 'card',
    substance: 'shoes',
    positions: Float32Array.from({ length: 12 }, (_, i) =>
      i % 3 === 2 ? BEFORE : (corners[2 * Math.floor(i / 3) + (i % 3)] as number),
    ),
    normals: Float32Array.from({ length: 12 }, (_, i) => (i % 3 === 2 ? 1 : 0)),
    colours: new Uint8Array(12).fill(Math.round(255 * REFLECTANCE)),
    openness: new Uint8Array(4).fill(255),
    indices: Uint32Array.of(0, 1, 2, 0, 2, 3),
    regions: new Uint8Array(4),
  };
  return { ...sitter, meshes: [...sitter.meshes, card] };
}
