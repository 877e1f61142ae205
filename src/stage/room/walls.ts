/** The boarded walls behind the sitter: the end wall, or the two that meet in a corner. */
import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { Corner, Hall } from '../../session/hall';
import { grey, type Place, piece, type Rgb } from './pieces';

/** Wall boards, edge to edge: the known measure against which the background's share is seen. */
export const WALL_BOARD = 0.2;

const PAINT = 0.35;
/** Light that reaches the bottom of a groove. */
const SUNK_SHADE = 0.3;

/** Reproducible scatter in 0..1 for boards that differ a little. */
export const scatter = (n: number): number => {
  const value = Math.sin(n * 127.1 + 11.7) * 43758.5453;
  return value - Math.floor(value);
};

/** A flat four-sided piece, its corners counted anticlockwise; `far` colours the second and third. */
export function quad(
  a: Place,
  b: Place,
  c: Place,
  d: Place,
  colour: Rgb,
  far = colour,
): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute([a, b, c, a, c, d].flat(), 3));
  geometry.computeVertexNormals();
  const coloured = piece(geometry, colour);
  for (const corner of [1, 2, 4]) coloured.getAttribute('color').setXYZ(corner, ...far);
  return coloured;
}

/** Heights that the shade of the corners is worked out at: close by the floor and the ceiling. */
const levelsOf = (height: number): readonly number[] => [
  ...[0, 0.05, 0.16, 0.4, 0.9, 1.6, 2.4, 3].filter((level) => level < height - 0.5),
  height - 0.5,
  height - 0.2,
  height,
];

/** One wall board: a flat face between two chamfers that meet the neighbours in a groove. */
function wallBoard(index: number, height: number): BufferGeometry[] {
  const levels = levelsOf(height);
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

/** Boards from `from` to `to` along a wall that faces +z; whole ones, so that the ends may run on. */
function boards(from: number, to: number, height: number): BufferGeometry[] {
  const first = Math.floor(from / WALL_BOARD);
  const count = Math.ceil(to / WALL_BOARD) - first;
  return Array.from({ length: count }, (_, i) => wallBoard(first + i, height)).flat();
}

/** A wall of a corner, told on the floor. */
export interface CornerWall {
  /** How far it runs from the corner along the axis, and how long it is. */
  readonly end: number;
  readonly length: number;
  /** Unit vector square to it, into the room: x and z. */
  readonly inwards: readonly [number, number];
}

/** The corner's walls, at the sitter's left and right. */
export function cornerWalls(
  { left, right }: Hall,
  slopes: Corner,
): { readonly left: CornerWall; readonly right: CornerWall } {
  const beside = (left + right) / 2;
  const wall = (slope: number, side: 1 | -1): CornerWall => {
    const length = Math.hypot(slope, 1);
    return {
      end: beside / slope,
      length: (beside / slope) * length,
      inwards: [-side / length, slope / length],
    };
  };
  return { left: wall(slopes.left, 1), right: wall(slopes.right, -1) };
}

/** The end wall, or both walls of the corner. */
export function boardedWalls(hall: Hall): BufferGeometry[] {
  const { left, right, height, corner } = hall;
  if (!corner) return boards(-right, left, height);
  const foot = (left - right) / 2;
  const walls = cornerWalls(hall, corner);
  const stand = (pieces: BufferGeometry[], { inwards: [x, z] }: CornerWall) =>
    pieces.map((board) => board.rotateY(Math.atan2(x, z)).translate(foot, 0, 0));
  return [
    ...stand(boards(0, walls.left.length, height), walls.left),
    ...stand(boards(-walls.right.length, 0, height), walls.right),
  ];
}
