import { clamp, type Field } from './field';

const TAPS = [1.2, 3, 7, 16, 34] as const;

/**
 * Share of open space over a surface point, 0..1: taps of the field along the normal, nearer taps
 * weighing more. `slope` is the field's gradient in free space.
 */
export function openness(field: Field, slope: number) {
  return (x: number, y: number, z: number, nx: number, ny: number, nz: number): number => {
    let sum = 0;
    let weight = 0;
    for (const h of TAPS) {
      const w = 1 / Math.sqrt(h);
      sum += w * clamp(field(x + nx * h, y + ny * h, z + nz * h) / (slope * h));
      weight += w;
    }
    return sum / weight;
  };
}
