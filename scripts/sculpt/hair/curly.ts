import { type Field, mix, type Point, step } from '../field';
import type { HeadShape } from '../head/shape';
import { axis, mirroredAxis } from '../nets';
import { chance, cross, type PathPoint, type RibbonBuilder, scatter } from '../ribbons';
import { type Cap, cap } from './cap';
import { alongHairline, onSurface, ragged, spread } from './flow';
import { Groom } from './groom';
import { HAIR_CENTRE } from './hairline';
import type { HairParts } from './style';

const CURLS = 1620;

/** Curly hair: a full, uneven mass of small curls that stands off the head and half covers the ears. */
export function curlyHair(shape: HeadShape): HairParts {
  const [sx, sy, sz] = shape.scale;
  // Bunches of curls, about 25 mm across.
  const bunches: Field = (x, y, z) =>
    Math.sin(x * 0.21 + 1.3 * Math.sin(y * 0.13)) *
    Math.sin(y * 0.23 + 1.1 * Math.sin(z * 0.12)) *
    Math.sin(z * 0.22 + 1.2 * Math.sin(x * 0.14));
  const full = (x: number, y: number, z: number): number =>
    mix(14, 25, step(-30, 70, y / sy)) + 4 * bunches(Math.abs(x), y, z);
  const scalp = cap(shape, (q, x, y, z) => mix(0.5, full(x, y, z), step(0, 24, q)));
  return {
    volume: scalp.volume,
    paint: (x, y, z) => ({
      shade: 0.42,
      strand: ((x + y + z) * 0.01 + 8) % 1,
      sheer: 0.95 * step(26, 10, scalp.inside(x, y, z)),
    }),
    grid: {
      x: mirroredAxis(118 * sx, () => 3.4),
      y: axis(-90 * sy, 156 * sy, () => 3.4),
      z: axis(-225 * sz, 40, () => 3.4),
    },
    locks: () => {
      const groom = new Groom(shape, scalp, ([x, y, z]) => [x, y - 40, z + 80])
        .border({
          count: 1000,
          length: (r) => mix(8, 22, r.chance(9)),
          rise: (r) => mix(0.4, 3, r.chance(11)),
          lift: (r) => 5 * r.chance(10),
          width: (r) => mix(0.8, 2.4, step(-1, 9, r.q) * r.chance(12)),
          stray: 1.2,
          steps: 4,
          curl: (r) => 2.6 * (r.chance(13) - 0.5),
        })
        .down(160);
      curls(groom.builder, shape, scalp);
      return groom.build();
    },
  };
}

/** Short spirals that spring from the mass, hang a little and are seen from their side. */
function curls(builder: RibbonBuilder, shape: HeadShape, { bed, inside, direction }: Cap): void {
  const [, sy, sz] = shape.scale;
  const centre: Point = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  for (let i = 0; i < CURLS; i++) {
    // A third of them stand close behind the hairline, where the mass is thin.
    const towards =
      i % 3 === 0 ? direction(alongHairline(i, CURLS), 3 + 18 * chance(i, 15)) : spread(i, -0.8);
    const root = onSurface(bed, centre, towards);
    const q = inside(...root.at);
    if (q < 3) continue;
    const radius = mix(2.8, 5.4, chance(i, 50)) * mix(0.45, 1, step(2, 16, q));
    const length = mix(18, 38, chance(i, 51)) * mix(0.5, 1, step(4, 30, q));
    const turns = mix(1.7, 2.8, chance(i, 52)) * (scatter(i, 2) < 0.5 ? -1 : 1);
    const start = 2 * Math.PI * chance(i, 53);
    // The spiral's axis: along the surface in any direction, sinking.
    const any: Point = [chance(i, 54) - 0.5, chance(i, 55) - 0.95, chance(i, 56) - 0.5];
    const aside = cross(root.normal, any);
    const axisLine = unit(cross(aside, root.normal));
    const beside = unit(aside);
    const steps = 10;
    const depth = mix(-1.5, 3.5, chance(i, 57));
    const path = Array.from({ length: steps + 1 }, (_, k): PathPoint => {
      const t = k / steps;
      const angle = start + 2 * Math.PI * turns * t;
      const r = radius * mix(1, 0.7, t);
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const out = depth + r * s + 1.5 * Math.sin(Math.PI * t) - 4 * t * t;
      const at = [0, 1, 2].map(
        (j) =>
          (root.at[j] as number) +
          (axisLine[j] as number) * length * (t - 0.5) +
          (beside[j] as number) * r * c +
          (root.normal[j] as number) * out,
      ) as unknown as Point;
      // A sheet of a spiral faces away from the spiral's axis.
      const normal = unit(
        [0, 1, 2].map(
          (j) => (root.normal[j] as number) * (s + 0.6) + (beside[j] as number) * c,
        ) as unknown as Point,
      );
      return { at, normal };
    });
    const width = mix(2.2, 4.2, chance(i, 58));
    const tone = mix(0.85, 1.12, chance(i, 59)) * mix(0.75, 1, step(-1.5, 2, depth));
    builder.add(path, {
      width: (t) => width * mix(0.7, 1, step(0, 0.3, t)),
      shade: (t) => tone * mix(0.85, 1.05, t),
      sheer: ragged(0.2, 0.3, 0.7),
      over: 4 + depth,
      hairs: Math.round(width / 0.3),
      roundness: 0.3,
    });
  }
}

function unit([x, y, z]: Point): Point {
  const n = Math.hypot(x, y, z) || 1;
  return [x / n, y / n, z / n];
}
