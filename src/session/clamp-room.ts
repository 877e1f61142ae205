/** A room brought into the legal ranges: sitter, camera and things stand inside its walls. */
import { axisOf, hangBackdrop, LEAST_BEFORE, LEAST_TO_WALL } from '../plan/run';
import { clamp, LIMITS } from './limits';
import type { Obstacle, Room } from './types';

/** Way from where the axis enters the room to where it leaves it, at least. */
const LEAST_RUN = LIMITS.roomSide.least;

/** How far the axis may lie beside the middle of a room. */
function mostAside({ length, width, axis }: Room): number {
  const { least } = LIMITS.besideAxis;
  if (axis === 'along') return width / 2 - least;
  if (axis === 'across') return length / 2 - least;
  // Shifted by a, a diagonal of length h is shorter by a (length / width + width / length).
  const lost = length / width + width / length;
  return Math.max(0, (Math.hypot(length, width) - LEAST_RUN) / lost);
}

/** A thing no larger than the room, inside it. */
function clampObstacle(obstacle: Obstacle, room: Room): Obstacle {
  const { least, most } = LIMITS.obstacleSize;
  const length = clamp(obstacle.length, { least, most: Math.min(most, room.length) });
  const width = clamp(obstacle.width, { least, most: Math.min(most, room.width) });
  return {
    ...obstacle,
    x: clamp(obstacle.x, { least: 0, most: room.length - length }),
    y: clamp(obstacle.y, { least: 0, most: room.width - width }),
    length,
    width,
    height: clamp(obstacle.height, {
      least: LIMITS.obstacleHeight.least,
      most: Math.min(LIMITS.obstacleHeight.most, room.ceiling),
    }),
  };
}

export function clampRoom(asked: Room): Room {
  const sided: Room = {
    ...asked,
    length: clamp(asked.length, LIMITS.roomSide),
    width: clamp(asked.width, LIMITS.roomSide),
    ceiling: clamp(asked.ceiling, LIMITS.ceiling),
    behindCamera: clamp(asked.behindCamera, LIMITS.behindCamera),
  };
  const most = mostAside(sided);
  const aside = clamp(asked.aside, { least: -most, most });
  const { leaves } = axisOf({ ...sided, aside });
  const room: Room = {
    ...sided,
    aside,
    backdrop: {
      offWall: clamp(asked.backdrop.offWall, {
        least: LIMITS.backdropOffWall.least,
        most: Math.min(LIMITS.backdropOffWall.most, leaves - LEAST_BEFORE - LEAST_TO_WALL),
      }),
      width: clamp(asked.backdrop.width, LIMITS.backdropWidth),
      top: clamp(asked.backdrop.top, {
        least: LIMITS.backdropTop.least,
        most: Math.min(LIMITS.backdropTop.most, sided.ceiling),
      }),
    },
  };
  const { least: nearest, most: farthest } = LIMITS.backdrop;
  const left = leaves - hangBackdrop(room).along - LEAST_TO_WALL;
  return {
    ...room,
    sitterBefore: clamp(asked.sitterBefore, {
      least: nearest,
      // By rounding less may be left than the backdrop always leaves.
      most: Math.max(nearest, Math.min(farthest, left)),
    }),
    obstacles: asked.obstacles.map((obstacle) => clampObstacle(obstacle, sided)),
  };
}
