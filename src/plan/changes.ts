/** A request with one thing changed, as a remedy tries it. Metres. */
import { crossings } from './polygon';
import type { PlanRequest, PlanRoom, Wanted } from './types';

/** One pair's part of a request. */
export interface Asking {
  readonly request: Omit<PlanRequest, 'cameras' | 'wanted'>;
  readonly wanted: Wanted;
  readonly camera: PlanRequest['cameras'][number];
}

export const roomOf = ({ request, wanted }: Asking): PlanRoom => wanted.room ?? request.room;

export const withRoom = (asking: Asking, room: PlanRoom): Asking => ({
  ...asking,
  request: { ...asking.request, room },
  wanted: { ...asking.wanted, room },
});

export const withWanted = (asking: Asking, change: Partial<Wanted>): Asking => ({
  ...asking,
  wanted: { ...asking.wanted, ...change },
});

export const withAsked = (asking: Asking, change: Partial<PlanRequest['asked']>): Asking => ({
  ...asking,
  request: { ...asking.request, asked: { ...asking.request.asked, ...change } },
});

/**
 * The wall behind the camera farther away; what stands in the room stays. On a diagonal both sides grow, in
 * proportion, from the corner that the axis comes out of (`sidesForCameraWall` does the same to the room itself).
 */
export function longer(room: PlanRoom, by: number): PlanRoom {
  const grown = isSquare(room) ? behind(room, by) : away(room, by);
  return { ...room, wallBehindCamera: room.wallBehindCamera + by, walls: grown };
}

function behind({ walls }: PlanRoom, by: number): PlanRoom['walls'] {
  const back = Math.max(...walls.map(([, z]) => z));
  return walls.map(([x, z]) => [x, z === back ? z + by : z]);
}

function away({ walls }: PlanRoom, by: number): PlanRoom['walls'] {
  const { corner, whole } = diagonalOf(walls);
  const times = 1 + by / whole;
  return walls.map(([x, z]) => [
    corner[0] + times * (x - corner[0]),
    corner[1] + times * (z - corner[1]),
  ]);
}

/** The corner that a diagonal axis comes out of (walls are listed from there), and how long the diagonal is. */
function diagonalOf(walls: PlanRoom['walls']) {
  const [corner, , opposite] = walls as [FloorCorner, FloorCorner, FloorCorner];
  return { corner, whole: Math.hypot(opposite[0] - corner[0], opposite[1] - corner[1]) };
}
type FloorCorner = PlanRoom['walls'][number];

/**
 * Does the sitter stay where they are when the room grows? Not on a diagonal whose backdrop is so wide that it
 * hangs by the room's middle: it would go along.
 */
export function staysIn(room: PlanRoom): boolean {
  if (isSquare(room)) return true;
  const { corner, whole } = diagonalOf(room.walls);
  return -room.backdrop.behind - corner[1] < whole / 2 - 1e-6;
}

/** Are the walls square to the camera's axis? */
const isSquare = ({ walls }: PlanRoom): boolean =>
  walls.every(([x, z], i) => {
    const [x2, z2] = walls[(i + 1) % walls.length] as readonly [number, number];
    return Math.abs(x - x2) < 1e-9 || Math.abs(z - z2) < 1e-9;
  });

/** The sitter at another distance before the backdrop: all else comes as much nearer. */
export function sitterAt(room: PlanRoom, behind: number): PlanRoom {
  const by = behind - room.backdrop.behind;
  const moved = (outline: PlanRoom['walls']): PlanRoom['walls'] =>
    outline.map(([x, z]) => [x, z - by]);
  return {
    ...room,
    backdrop: { ...room.backdrop, behind },
    wallBehindCamera: room.wallBehindCamera - by,
    walls: moved(room.walls),
    obstacles: room.obstacles.map((each) => ({ ...each, outline: moved(each.outline) })),
  };
}

/** The widest backdrop that hangs between the walls there. */
export function widestBackdrop({ walls, backdrop }: PlanRoom): number {
  const reach = crossings(walls, 1, -backdrop.behind);
  return reach.length < 2 ? 0 : 2 * Math.min(Math.max(...reach), -Math.min(...reach));
}

/** The backdrop at another width, its middle on the axis. */
export const backdropWide = (room: PlanRoom, width: number): PlanRoom => ({
  ...room,
  backdrop: { ...room.backdrop, left: width / 2, right: -width / 2 },
});
