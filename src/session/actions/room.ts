/** The room: its walls, the axis through it, the backdrop, the sitter's place and what stands about. */

import { type AxisName, hangBackdrop, sidesForCameraWall } from '../../plan/run';
import { formatLength } from '../../readings/format';
import { clamp, LIMITS, MOST, NAME_LENGTH } from '../limits';
import type { Obstacle, Room, Session } from '../types';
import { action } from './action';
import { freeId } from './kit-edit';

const distance = (metres: number, { units }: Session): string =>
  formatLength(metres, units, 'distance');

const editRoom = (session: Session, change: Partial<Room>): Session => ({
  ...session,
  room: { ...session.room, ...change },
});

/** Name, length, width, ceiling and what is kept behind the camera; what is left out stays. */
export const setRoom = action<Partial<Room>>({
  edit: (session, { name, ...change }) =>
    editRoom(
      session,
      name === undefined ? change : { ...change, name: name.slice(0, NAME_LENGTH) },
    ),
  label: () => 'Room changed',
});

/** Eyes to the wall behind the camera, metres: the room becomes longer or shorter along the axis. */
export const setCameraWall = action<{ to: number }>({
  edit: (session, { to }) =>
    editRoom(session, sidesForCameraWall(session.room, clamp(to, LIMITS.cameraWall))),
  label: () => 'Room changed',
});

const AXIS_WORDS: Readonly<Record<AxisName, string>> = {
  along: 'along the room',
  across: 'across the room',
  diagonal: 'from corner to corner',
};

/** The camera's axis, in the middle of the room it then runs through. */
export const setAxis = action<{ to: AxisName }>({
  edit: (session, { to }) =>
    to === session.room.axis ? session : editRoom(session, { axis: to, aside: 0 }),
  label: (_, { to }) => `Camera ${AXIS_WORDS[to]}`,
});

/** Where the backdrop hangs, how wide and high it is; the sitter goes with it. */
export const setBackdrop = action<Partial<Room['backdrop']>>({
  edit: (session, backdrop) =>
    editRoom(session, { backdrop: { ...session.room.backdrop, ...backdrop } }),
  label: (after, { width, top }) => {
    if (width !== undefined) return `Backdrop ${distance(after.room.backdrop.width, after)} wide`;
    if (top !== undefined) return `Backdrop ${distance(after.room.backdrop.top, after)} high`;
    return `Backdrop ${distance(after.room.backdrop.offWall, after)} off the wall`;
  },
});

/** Carries the backdrop along the axis while the sitter stays where he stands. */
export const moveBackdrop = action<{ offWall: number }>({
  edit: (session, { offWall }) => {
    const { room } = session;
    const sitter = hangBackdrop(room).along + room.sitterBefore;
    const hung = hangBackdrop({
      ...room,
      backdrop: {
        ...room.backdrop,
        offWall: clamp(offWall, {
          ...LIMITS.backdropOffWall,
          most: Math.min(LIMITS.backdropOffWall.most, sitter - LIMITS.backdrop.least),
        }),
      },
    });
    return editRoom(session, {
      backdrop: { ...room.backdrop, offWall: hung.along - hung.forward },
      sitterBefore: sitter - hung.along,
    });
  },
  label: (after) => `Backdrop ${distance(after.room.backdrop.offWall, after)} off the wall`,
});

/** Where the sitter is: eyes before the backdrop, and the axis beside the room's middle, metres. */
export const setSitterPlace = action<{ before?: number; aside?: number }>({
  edit: (session, { before, aside }) =>
    editRoom(session, {
      sitterBefore: before ?? session.room.sitterBefore,
      aside: aside ?? session.room.aside,
    }),
  label: (after, { before }) => {
    const { sitterBefore, aside } = after.room;
    if (before !== undefined) return `Sitter ${distance(sitterBefore, after)} before the backdrop`;
    if (aside === 0) return 'Axis in the middle of the room';
    return `Axis ${distance(Math.abs(aside), after)} to the sitter’s ${aside > 0 ? 'left' : 'right'}`;
  },
});

/** How large a new thing and the ground of a door are, metres: by eye. */
const USUAL_THING = { length: 1, width: 0.5, height: 1 };
const USUAL_DOOR = { length: 0.85, width: 0.85, height: 2 };

/** Something that stands in the room, or the ground a door sweeps; in the middle unless told where. */
export const addObstacle = action<Pick<Obstacle, 'kind'> & Partial<Omit<Obstacle, 'id'>>>({
  edit: (session, { kind, ...told }) => {
    const { room } = session;
    if (room.obstacles.length >= MOST.obstacles) return session;
    const size = { ...(kind === 'door' ? USUAL_DOOR : USUAL_THING), ...told };
    const added: Obstacle = {
      id: freeId('thing', room.obstacles),
      kind,
      x: (room.length - size.length) / 2,
      y: (room.width - size.width) / 2,
      ...size,
      name: (told.name ?? (kind === 'door' ? 'Door' : 'Thing')).slice(0, NAME_LENGTH),
    };
    return editRoom(session, { obstacles: [...room.obstacles, added] });
  },
  label: (after) => `${after.room.obstacles.at(-1)?.name ?? 'Thing'} added`,
});

/** Place, size, height, kind or name of what stands in the room; what is left out stays. */
export const setObstacle = action<{ obstacle: string } & Partial<Omit<Obstacle, 'id'>>>({
  edit: (session, { obstacle, ...change }) =>
    editRoom(session, {
      obstacles: session.room.obstacles.map((each) =>
        each.id === obstacle
          ? { ...each, ...change, name: (change.name ?? each.name).slice(0, NAME_LENGTH) }
          : each,
      ),
    }),
  label: (after, { obstacle, x, y }) => {
    const { name = 'Thing' } = after.room.obstacles.find(({ id }) => id === obstacle) ?? {};
    return `${name} ${x === undefined && y === undefined ? 'changed' : 'moved'}`;
  },
});

export const removeObstacle = action<{ obstacle: string }>({
  edit: (session, { obstacle }) =>
    editRoom(session, { obstacles: session.room.obstacles.filter(({ id }) => id !== obstacle) }),
  label: () => 'Thing removed',
});
