import type { Part } from '../optics/framing';

/** A piece of a picture in whole pixels, from its upper left corner. */
export interface Tile {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface TileLimits {
  /** Longest side of a tile. */
  readonly side: number;
  /** Most pixels of a whole row of tiles, which is held in memory until it is handed on. */
  readonly rowArea: number;
}

const cuts = (length: number, pieces: number): number[] =>
  Array.from({ length: pieces + 1 }, (_, i) => Math.round((i * length) / pieces));

/**
 * Cuts a picture into rows of tiles, top down, of nearly equal sizes within the limits.
 * @throws RangeError when a side is not a whole number of at least one.
 */
export function planTiles(width: number, height: number, limits: TileLimits): Tile[][] {
  for (const side of [width, height]) {
    if (!Number.isInteger(side) || side < 1) throw new RangeError(`not a size in pixels: ${side}`);
  }
  const rowHeight = Math.max(1, Math.min(limits.side, Math.floor(limits.rowArea / width)));
  const xs = cuts(width, Math.ceil(width / limits.side));
  const ys = cuts(height, Math.ceil(height / rowHeight));
  return ys.slice(1).map((below, row) =>
    xs.slice(1).map((right, column) => {
      const x = xs[column] as number;
      const y = ys[row] as number;
      return { x, y, width: right - x, height: below - y };
    }),
  );
}

/** A tile as shares of its picture, for `partOfFrustum`. */
export const tilePart = (tile: Tile, width: number, height: number): Part => ({
  x0: tile.x / width,
  x1: (tile.x + tile.width) / width,
  y0: tile.y / height,
  y1: (tile.y + tile.height) / height,
});
