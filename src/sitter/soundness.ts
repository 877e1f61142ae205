import { openEdges } from './caps';
import { isRibbons } from './ribbons';
import type { Sculpture } from './sculpture';
import type { Sitter } from './types';
import { turnedOver } from './untangle';

/** What can be counted of a mesh to tell whether it is sound. */
export interface Soundness {
  readonly name: string;
  /** A ribbon is an open strip by nature. */
  readonly ribbon: boolean;
  readonly triangles: number;
  /** Edges of one triangle alone; none of a closed mesh. */
  readonly openEdges: number;
  /** Of these, the rims of the eyeballs, whose backs are left out: they lie deep behind the lids. */
  readonly intended: number;
  /** Triangles that face away from where the sculpture's do. */
  readonly flipped: number;
}

/** @param sitter built upright from the sculpture */
export const soundnessOf = (sculpture: Sculpture, sitter: Sitter): Soundness[] =>
  sitter.meshes.map(({ name, positions, indices, substance }, m) => {
    const open = openEdges(indices).length;
    return {
      name,
      ribbon: isRibbons({ name, substance }),
      triangles: indices.length / 3,
      openEdges: open,
      intended: substance === 'eye' ? open : 0,
      flipped: turnedOver(sculpture.meshes[m]?.positions ?? positions, positions, indices).length,
    };
  });
