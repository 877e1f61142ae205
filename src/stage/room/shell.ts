/**
 * The hall's shell: boarded walls behind the sitter, floor boards, plastered walls and ceiling. The origin
 * is the foot of the end wall straight behind the sitter; +z runs into the room.
 */
import { type BufferGeometry, PlaneGeometry } from 'three';
import type { Hall } from '../../session/hall';
import { board, grey, join, piece, type Rgb, type Shade } from './pieces';
import { boardedWalls, cornerWalls, quad, scatter } from './walls';

const FLOOR_BOARD = 0.14;
const PLASTER = grey(0.42);
const CEILING = grey(0.6);
const SKIRTING = grey(0.3);

/** A standpoint behind the wall behind the camera is refused, but its picture is not to end in the dark. */
const LEAST_DRAWN = 10;
const drawnDepth = (depth: number): number => Math.max(depth, LEAST_DRAWN);

/** Where a strip of the floor begins: at the end wall, or where it comes out of the corner's walls. */
function beginsAt({ left, right, corner }: Hall, from: number, to: number): number {
  if (!corner) return 0;
  const foot = (left - right) / 2;
  const at = (x: number) => Math.max((x - foot) / corner.left, (foot - x) / corner.right);
  return from < foot && to > foot ? 0 : Math.min(at(from), at(to));
}

/** Joints between boards are drawn in pieces: a software rasteriser misplaces longer slivers in depth. */
const JOINT_PIECE = 0.3;

/** Floor boards run into the room; their ends meet at scattered places. */
function floorBoards(hall: Hall): BufferGeometry[] {
  const pieces: BufferGeometry[] = [];
  const depth = drawnDepth(hall.depth);
  const first = -Math.ceil(hall.right / FLOOR_BOARD);
  const last = Math.ceil(hall.left / FLOOR_BOARD);
  // A joint every 2.9 m or so, the last before the wall behind the camera.
  const joints = Array.from({ length: Math.ceil(depth / 2.9) }, (_, n) => n + 1);
  for (let i = first; i < last; i++) {
    const left = i * FLOOR_BOARD;
    const right = left + FLOOR_BOARD;
    const gap = 0.0018;
    const begin = beginsAt(hall, left, right);
    const stops = [
      begin,
      ...[0.08, 0.3, 0.8].map((after) => begin + after),
      ...joints
        .map((n) => n * 2.9 - 2 * scatter(i * 3 + n))
        .filter((joint) => joint > begin + 0.8 && joint < depth),
      depth,
    ];
    stops.slice(1).forEach((end, n) => {
      const start = stops[n] as number;
      const tone = 0.9 + 0.2 * scatter(i * 7 + Math.max(0, n - 3) * 31);
      const wood: Rgb = [0.175 * tone, 0.135 * tone, 0.1 * tone];
      const long = end - start;
      const strip = (wide: number, count: number, x: number, colour: Rgb) =>
        piece(
          new PlaneGeometry(wide, long, 1, count),
          colour,
          [x, 0, start + long / 2],
          [-Math.PI / 2, 0, 0],
        );
      pieces.push(
        strip(FLOOR_BOARD - 2 * gap, 1, left + FLOOR_BOARD / 2, wood),
        strip(2 * gap, Math.ceil(long / JOINT_PIECE), right, grey(0.02)),
      );
    });
  }
  return pieces;
}

/** How far from the wall behind a point of the hall is, and how far from the next wall. */
function wallDistances(hall: Hall): (x: number, z: number) => readonly [number, number] {
  const { left, right, corner } = hall;
  if (!corner) return (x, z) => [z, Math.min(left - x, right + x)];
  const walls = cornerWalls(hall, corner);
  const foot = (left - right) / 2;
  return (x, z) => {
    const [a, b] = [walls.left, walls.right].map(
      ({ inwards }) => (x - foot) * inwards[0] + z * inwards[1],
    ) as [number, number];
    return [Math.min(a, b), Math.max(a, b)];
  };
}

/** Corners are darker: light reaches them from fewer sides. */
function cornersOf(hall: Hall): Shade {
  const distances = wallDistances(hall);
  const near = (distance: number, reach: number, depth: number) =>
    1 - depth * Math.exp(-Math.max(distance, 0) / reach);
  return (x, y, z) => {
    const [behind, side] = distances(x, z);
    const wall = y < 0.001 ? near(behind, 0.16, 0.45) : near(y, 0.12, 0.32);
    return wall * near(side, 0.35, 0.3) * near(hall.height - y, 0.5, 0.3);
  };
}

/** The plastered walls: beside the axis, or from the corners beside it to the one behind the camera. */
function plasteredWalls(hall: Hall): BufferGeometry[] {
  const { left, right, height, depth, corner } = hall;
  if (corner) {
    const walls = cornerWalls(hall, corner);
    const wall = (x0: number, z0: number, x1: number, z1: number) =>
      quad([x0, 0, z0], [x1, 0, z1], [x1, height, z1], [x0, height, z0], PLASTER);
    const foot = (left - right) / 2;
    const far = walls.left.end + walls.right.end;
    return [wall(left, walls.left.end, foot, far), wall(foot, far, -right, walls.right.end)];
  }
  const drawn = drawnDepth(depth);
  return [-right, left].map((x) =>
    piece(
      new PlaneGeometry(drawn, height, 12, 12),
      PLASTER,
      [x, height / 2, drawn / 2],
      [0, (-Math.sign(x) * Math.PI) / 2, 0],
    ),
  );
}

export function hallShell(hall: Hall): BufferGeometry {
  const { left, right, height, corner } = hall;
  const depth = drawnDepth(hall.depth);
  const [width, middle] = [left + right, (left - right) / 2];
  const ceiling = piece(
    new PlaneGeometry(width, depth, 12, 12),
    CEILING,
    [middle, height, depth / 2],
    [Math.PI / 2, 0, 0],
  );
  const skirting = corner
    ? []
    : [piece(board(width, 0.17, 0.022, 0.006), SKIRTING, [middle, 0.085, 0.009])];
  return join(
    [...boardedWalls(hall), ...floorBoards(hall), ...plasteredWalls(hall), ceiling, ...skirting],
    cornersOf(hall),
  );
}
