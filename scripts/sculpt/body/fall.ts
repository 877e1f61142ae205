import type { Field } from '../field';
import type { Figure } from './figure';
import { loft } from './loft';

/** Height over the floor, half breadth, and how far cloth stands before and behind there, mm. */
export type Level = readonly [height: number, half: number, front: number, back: number];

/** Width over which the flat ends are rounded, mm. */
const ROUND = 30;

/** Cloth that hangs round the body through the levels given, from the top down; `n` is its roundness. */
export function fallThrough(f: Figure, levels: readonly Level[], n: number): Field {
  const body = loft(
    levels
      .map(([height, half, front, back]) => ({
        at: f.y(height),
        u: [-half, half] as const,
        v: [back, front] as const,
        n,
      }))
      .reverse(),
    ROUND,
  );
  return (x, y, z) => body(y, x, z);
}
