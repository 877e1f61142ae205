/** The sitter in profile, drawn from the sitter's own mesh and therefore to scale. */
import { contours } from 'd3-contour';
import simplify from 'simplify-js';
import type { Sitter } from '../../sitter/types';
import { type Point, ringArea } from '../geometry';
import { rasteriseSide, SEEN, type Seen, type SideGrid } from './raster';

/** A closed line without a repeated last point; x = z (towards the camera), y up; metres. */
export type Ring = readonly Point[];

export interface ProfileOutline {
  /** Everything together. */
  readonly whole: readonly Ring[];
  /** What is seen of each part from the side, nearer parts hiding farther ones. */
  readonly hair: readonly Ring[];
  readonly ear: readonly Ring[];
  readonly top: readonly Ring[];
  readonly below: readonly Ring[];
  /** Extremes of the whole: rearmost, foremost, highest, lowest (the floor for a standing sitter). */
  readonly back: number;
  readonly front: number;
  readonly crown: number;
  readonly floor: number;
  /** Height at which a bust is cut: below the breastbone's notch. */
  readonly chest: number;
}

/** Cell of the side view; finer than a pixel of the largest screen asked for. */
const CELL = 0.001;
/** Cells to a side that are averaged before tracing, so that the line runs between cells. */
const BLOCK = 2;
/** How far a simplified line may leave the traced one. */
const TOLERANCE = 0.0003;
/** Specks below this area, in square metres, are left out. */
const SPECK = 3e-5;
/** From the notch of the breastbone down to the cut of a bust. */
const BUST_BELOW_NOTCH = 0.06;

/** The share of each block's cells that pass, with an empty border so that every ring closes. */
function coverage(grid: SideGrid, passes: (seen: number) => boolean) {
  const columns = Math.ceil(grid.columns / BLOCK) + 2;
  const rows = Math.ceil(grid.rows / BLOCK) + 2;
  const values = new Float64Array(columns * rows);
  for (let row = 0; row < grid.rows; row += 1) {
    for (let column = 0; column < grid.columns; column += 1) {
      if (!passes(grid.cells[row * grid.columns + column] ?? SEEN.nothing)) continue;
      const at = (Math.floor(row / BLOCK) + 1) * columns + Math.floor(column / BLOCK) + 1;
      values[at] = (values[at] ?? 0) + 1 / BLOCK ** 2;
    }
  }
  return { columns, rows, values };
}

/** Rings around the cells that pass. */
export function traceRings(grid: SideGrid, passes: (seen: number) => boolean): Ring[] {
  const { columns, rows, values } = coverage(grid, passes);
  const step = grid.cell * BLOCK;
  const traced = contours().size([columns, rows]).contour(Array.from(values), 0.5);
  return traced.coordinates
    .flat()
    .map((ring) => {
      const points = ring.map(([x = 0, y = 0]) => ({
        x: grid.left + (x - 1) * step,
        y: grid.bottom + (y - 1) * step,
      }));
      return simplify(points, TOLERANCE, true).slice(0, -1);
    })
    .filter((ring) => Math.abs(ringArea(ring)) > SPECK);
}

const computed = new WeakMap<Sitter, ProfileOutline>();

/** The outline of a sitter's meshes seen from the right; computed once for each sitter. */
export function profileOutline(sitter: Sitter): ProfileOutline {
  const known = computed.get(sitter);
  if (known) return known;
  const grid = rasteriseSide(sitter.meshes, CELL);
  const seeing = (wanted: Seen) => traceRings(grid, (seen) => seen === wanted);
  const whole = traceRings(grid, (seen) => seen !== SEEN.nothing);
  const xs = whole.flat().map(({ x }) => x);
  const ys = whole.flat().map(({ y }) => y);
  const outline: ProfileOutline = {
    whole,
    hair: seeing(SEEN.hair),
    ear: seeing(SEEN.ear),
    top: seeing(SEEN.top),
    below: seeing(SEEN.below),
    back: Math.min(...xs),
    front: Math.max(...xs),
    crown: Math.max(...ys),
    floor: Math.min(...ys),
    chest: sitter.landmarks.suprasternale[1] - BUST_BELOW_NOTCH,
  };
  computed.set(sitter, outline);
  return outline;
}
