import { clamp, type Field, softAbs, step } from '../field';
import type { Figure } from './figure';

/**
 * Openings seen from the front: half their breadth where they cross the shoulders, how far the
 * edge lies over the notch of the neck in front, how far it sinks behind below its sides, and the
 * exponent of the superellipse between (2 a round neck, near 1 a V). Sculptor's choices, mm.
 */
const SHAPES = {
  scoop: { half: 84, front: -36, back: 9, exponent: 2.1 },
  crew: { half: 73, front: -13, back: 7, exponent: 2.1 },
  v: { half: 77, front: -92, back: 9, exponent: 1.12 },
} as const;
export type Neckline = keyof typeof SHAPES;

/** Fall of the shoulders outside a neck opening. */
export const SLOPE = 0.36;

/** Height of a surface's crest at a distance from the midline. */
export function crest(surface: Field, x: number, from: number): number {
  let y = from;
  const highest = (): boolean => {
    for (let z = -190; z < -50; z += 4) if (surface(x, y, z) <= 0) return true;
    return false;
  };
  while (!highest()) y -= 0.5;
  return y;
}

/**
 * Distance above the edge of a neck opening, mm (negative: cloth). Seen from the front the edge is
 * a clean curve, whatever hollows of `surface` it crosses.
 */
export function neckline(f: Figure, surface: Field, style: Neckline): Field {
  const { half, front, back, exponent: p } = SHAPES[style];
  const notch = f.suprasternale[1];
  const sides = crest(surface, half, notch + 90);
  const deep = sides - notch - front;
  // The front goes on to the shoulders' crest, past the hollows over the collar bones.
  const behind = f.cervicale[2] + 2;
  return (x, y, z) => {
    const ax = softAbs(x, 0.5);
    const drop = back + (deep - back) * step(behind, behind + 26, z);
    const u = ax / half;
    // Beyond the opening the shoulders slope down, and the edge's level with them.
    const v = Math.max(0, sides - SLOPE * Math.max(0, ax - half) - y) / drop;
    const q = (u ** p + v ** p) ** (1 / p);
    // Over the length of the gradient; a rounded tip where a V's sides meet.
    const k = Math.max(q, 0.05) ** (1 - p);
    const slope = Math.hypot((k * u ** (p - 1)) / half, (k * v ** (p - 1)) / drop);
    return clamp((1 - q) / Math.max(slope, 0.5 / half), -400, 400);
  };
}
