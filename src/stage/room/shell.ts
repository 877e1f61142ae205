/**
 * The hall's shell: a back wall of upright boards, floor boards, side walls and ceiling. The origin is
 * the foot of the back wall straight behind the sitter; +z runs into the room.
 */
import { BufferGeometry, Float32BufferAttribute, PlaneGeometry } from 'three';
import type { Hall } from '../../session/kit';
import { board, grey, join, type Place, piece, type Rgb, type Shade } from './pieces';

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

/** A standpoint behind the wall behind the camera is refused, but its picture is not to end in the dark. */
const LEAST_DRAWN = 10;
const drawnDepth = ({ depth }: Hall): number => Math.max(depth, LEAST_DRAWN);

/** Heights that the shade of the corners is worked out at: close by the floor and the ceiling. */
const levelsOf = (height: number): readonly number[] => [
  ...[0, 0.05, 0.16, 0.4, 0.9, 1.6, 2.4, 3].filter((level) => level < height - 0.5),
  height - 0.5,
  height - 0.2,
  height,
];

/** One wall board: a flat face between two chamfers that meet the neighbours in a groove. */
function wallBoard(index: number, hall: Hall): BufferGeometry[] {
  const levels = levelsOf(hall.height);
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
  return levels.slice(1).flatMap((top, level) => {
    const bottom = levels[level] as number;
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
function floorBoards(hall: Hall): BufferGeometry[] {
  const pieces: BufferGeometry[] = [];
  const depth = drawnDepth(hall);
  const first = -Math.ceil(hall.right / FLOOR_BOARD);
  const last = Math.ceil(hall.left / FLOOR_BOARD);
  // A joint every 2.9 m or so, the last before the wall behind the camera.
  const joints = Array.from({ length: Math.ceil(depth / 2.9) }, (_, n) => n + 1);
  for (let i = first; i < last; i++) {
    const left = i * FLOOR_BOARD;
    const right = left + FLOOR_BOARD;
    const gap = 0.0018;
    const stops = [
      0,
      0.08,
      0.3,
      0.8,
      ...joints
        .map((n) => n * 2.9 - 2 * scatter(i * 3 + n))
        .filter((joint) => joint > 0.8 && joint < depth),
      depth,
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
const cornersOf =
  (hall: Hall): Shade =>
  (x, y, z) => {
    const near = (distance: number, reach: number, depth: number) =>
      1 - depth * Math.exp(-Math.max(distance, 0) / reach);
    const side = Math.min(hall.left - x, hall.right + x);
    const wall = y < 0.001 ? near(z, 0.16, 0.45) : near(y, 0.12, 0.32);
    return wall * near(side, 0.35, 0.3) * near(hall.height - y, 0.5, 0.3);
  };

export function hallShell(hall: Hall): BufferGeometry {
  const { left, right, height } = hall;
  const depth = drawnDepth(hall);
  const [width, middle] = [left + right, (left - right) / 2];
  const first = -Math.ceil(right / WALL_BOARD);
  const count = Math.ceil(left / WALL_BOARD) - first;
  const wall = Array.from({ length: count }, (_, i) => wallBoard(first + i, hall)).flat();
  const sides = [-right, left].map((x) =>
    piece(
      new PlaneGeometry(depth, height, 12, 12),
      PLASTER,
      [x, height / 2, depth / 2],
      [0, (-Math.sign(x) * Math.PI) / 2, 0],
    ),
  );
  const ceiling = piece(
    new PlaneGeometry(width, depth, 12, 12),
    CEILING,
    [middle, height, depth / 2],
    [Math.PI / 2, 0, 0],
  );
  const skirting = piece(board(width, 0.17, 0.022, 0.006), SKIRTING, [middle, 0.085, 0.009]);
  return join([...wall, ...floorBoards(hall), ...sides, ceiling, skirting], cornersOf(hall));
}
