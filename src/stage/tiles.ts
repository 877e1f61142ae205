import type { Part } from '../optics/framing';

/** A piece of a picture in whole pixels, from its upper left corner. */
export interface Tile {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface TileLimits {
  /** Side of a square tile; what is not square has at most its area, so that each takes as long. */
  readonly side: number;
  /** Most pixels of a whole row of tiles, which is held in memory until it is handed on. */
  readonly rowArea: number;
}

/** Longest side of a tile over that of a square one. */
const LONGEST = 4;

const cuts = (length: number, pieces: number): number[] =>
  Array.from({ length: pieces + 1 }, (_, i) => Math.round((i * length) / pieces));

/**
 * Cuts a picture into rows of tiles, top down, of nearly equal sizes within the limits. The wider the
 * picture, the lower its rows and the wider their tiles: neither grows with the picture.
 * @throws RangeError when a side is not a whole number of at least one.
 */
export function planTiles(width: number, height: number, limits: TileLimits): Tile[][] {
  for (const side of [width, height]) {
    if (!Number.isInteger(side) || side < 1) throw new RangeError(`not a size in pixels: ${side}`);
  }
  const { side, rowArea } = limits;
  const rowHeight = Math.max(1, Math.min(side, Math.floor(rowArea / width)));
  const widest = Math.min(LONGEST * side, Math.floor(side ** 2 / rowHeight));
  const xs = cuts(width, Math.ceil(width / widest));
  const ys = cuts(height, Math.ceil(height / rowHeight));
  return ys.slice(1).map((below, row) =>
    xs.slice(1).map((right, column) => {
      const x = xs[column] as number;
      const y = ys[row] as number;
      return { x, y, width: right - x, height: below - y };
    }),
  );
}

/** The size into which every tile of a plan fits: one target serves them all. */
export const largestOf = (rows: readonly (readonly Tile[])[]): Pick<Tile, 'width' | 'height'> => ({
  width: Math.max(...(rows[0] ?? []).map(({ width }) => width)),
  height: Math.max(...rows.map(([first]) => first?.height ?? 0)),
});

/** A tile as shares of its picture, for `partOfFrustum`. */
export const tilePart = (tile: Tile, width: number, height: number): Part => ({
  x0: tile.x / width,
  x1: (tile.x + tile.width) / width,
  y0: tile.y / height,
  y1: (tile.y + tile.height) / height,
});
