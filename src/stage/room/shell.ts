/**
 * The hall's shell: a back wall of upright boards, floor boards, side walls and ceiling. The origin is
 * the foot of the back wall straight behind the sitter; +z runs into the room.
 */
import { BufferGeometry, Float32BufferAttribute, PlaneGeometry } from 'three';
import { board, grey, join, type Place, piece, type Rgb, type Shade } from './pieces';

export const HALL = { halfWidth: 3.6, height: 3.5, depth: 10 } as const;
/** Wall boards, edge to edge: the known measure against which the background's share is seen. */
export const WALL_BOARD = 0.2;

const FLOOR_BOARD = 0.14;
const PAINT = 0.35;
/** Light that reaches the bottom of a groove. */
const SUNK_SHADE = 0.3;
const PLASTER = grey(0.42);
const CEILING = grey(0.6);
const SKIRTING = grey(0.3);

/** Reproducible scatter in 0..1 for boards that differ a little. */
const scatter = (n: number): number => {
  const value = Math.sin(n * 127.1 + 11.7) * 43758.5453;
  return value - Math.floor(value);
};

/** A flat four-sided piece, its corners counted anticlockwise; `far` colours the second and third. */
function quad(a: Place, b: Place, c: Place, d: Place, colour: Rgb, far = colour): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute([a, b, c, a, c, d].flat(), 3));
  geometry.computeVertexNormals();
  const coloured = piece(geometry, colour);
  for (const corner of [1, 2, 4]) coloured.getAttribute('color').setXYZ(corner, ...far);
  return coloured;
}

const LEVELS = [0, 0.05, 0.16, 0.4, 0.9, 1.6, 2.4, 3, 3.3, HALL.height];

/** One wall board: a flat face between two chamfers that meet the neighbours in a groove. */
function wallBoard(index: number): BufferGeometry[] {
  const left = index * WALL_BOARD;
  const right = left + WALL_BOARD;
  const [chamfer, sunk] = [0.0045, -0.0045];
  const paint = PAINT * (0.97 + 0.06 * scatter(index));
  const profile = [
    [left, sunk, SUNK_SHADE],
    [left + chamfer, 0, 1],
    [right - chamfer, 0, 1],
    [right, sunk, SUNK_SHADE],
  ] as const;
  return LEVELS.slice(1).flatMap((top, level) => {
    const bottom = LEVELS[level] as number;
    return profile.slice(1).map(([x1, z1, open1], edge) => {
      const [x0, z0, open0] = profile[edge] as (typeof profile)[number];
      return quad(
        [x0, bottom, z0],
        [x1, bottom, z1],
        [x1, top, z1],
        [x0, top, z0],
        grey(paint * open0),
        grey(paint * open1),
      );
    });
  });
}

/** Floor boards run into the room; their ends meet at scattered places. */
function floorBoards(): BufferGeometry[] {
  const pieces: BufferGeometry[] = [];
  const count = Math.ceil(HALL.halfWidth / FLOOR_BOARD);
  for (let i = -count; i < count; i++) {
    const left = i * FLOOR_BOARD;
    const right = left + FLOOR_BOARD;
    const gap = 0.0018;
    const stops = [
      0,
      0.08,
      0.3,
      0.8,
      ...[1, 2, 3].map((n) => n * 2.9 - 2 * scatter(i * 3 + n)),
      HALL.depth,
    ];
    stops.slice(1).forEach((end, n) => {
      const start = stops[n] as number;
      const tone = 0.9 + 0.2 * scatter(i * 7 + Math.max(0, n - 3) * 31);
      const wood: Rgb = [0.175 * tone, 0.135 * tone, 0.1 * tone];
      const flat = (x0: number, x1: number, colour: Rgb) =>
        quad([x0, 0, end], [x1, 0, end], [x1, 0, start], [x0, 0, start], colour);
      pieces.push(flat(left + gap, right - gap, wood), flat(right - gap, right + gap, grey(0.02)));
    });
  }
  return pieces;
}

/** Corners are darker: light reaches them from fewer sides. */
const corners: Shade = (x, y, z) => {
  const near = (distance: number, reach: number, depth: number) =>
    1 - depth * Math.exp(-Math.max(distance, 0) / reach);
  const side = HALL.halfWidth - Math.abs(x);
  const wall = y < 0.001 ? near(z, 0.16, 0.45) : near(y, 0.12, 0.32);
  return wall * near(side, 0.35, 0.3) * near(HALL.height - y, 0.5, 0.3);
};

export function hallShell(): BufferGeometry {
  const boards = Math.ceil(HALL.halfWidth / WALL_BOARD);
  const wall = Array.from({ length: 2 * boards }, (_, i) => wallBoard(i - boards)).flat();
  const sides = [-1, 1].map((side) =>
    piece(
      new PlaneGeometry(HALL.depth, HALL.height, 12, 12),
      PLASTER,
      [side * HALL.halfWidth, HALL.height / 2, HALL.depth / 2],
      [0, (-side * Math.PI) / 2, 0],
    ),
  );
  const ceiling = piece(
    new PlaneGeometry(2 * HALL.halfWidth, HALL.depth, 12, 12),
    CEILING,
    [0, HALL.height, HALL.depth / 2],
    [Math.PI / 2, 0, 0],
  );
  const skirting = piece(
    board(2 * HALL.halfWidth, 0.17, 0.022, 0.006),
    SKIRTING,
    [0, 0.085, 0.009],
  );
  return join([...wall, ...floorBoards(), ...sides, ceiling, skirting], corners);
}
