/** What hangs on the people and the camera's height alone: the same for every lens. */
import type { Solved } from './conditions';
import { GREATEST_HEIGHT } from './conditions';
import { everywhere, where } from './intervals';
import { linear, type Polynomial, sum, times } from './polynomial';
import type { Asked, Condition, PlanPerson, PlanRoom, Wanted } from './types';

/** A camera is carried and tripods stand between these heights over the floor and under the ceiling, metres. */
const LEAST_HEIGHT = 0.1;

/**
 * |C|^2 - C . P for a camera C = (0, h, s), both told from a person's eyes: the distance to the eyes times the
 * depth of P before the lens, along the line to the eyes. Its quotient for two points is the ratio of their
 * sizes (optics/perspective).
 */
function depthTimesDistance(
  { eyes: [x, y, z] }: PlanPerson,
  point: PlanPerson['noseTip'],
  height: number,
): Polynomial {
  const up = height - y;
  const [px, py, pz] = [point[0] - x, point[1] - y, point[2] - z];
  // C told from the eyes is (-x, up, s - z).
  return [x * x + up * up + z * z + x * px - up * py + z * pz, -2 * z - pz, 1];
}

function noseGain(person: PlanPerson, height: number, most: number): Solved[] {
  const by: Condition = { name: 'nose-gain', of: person.id };
  const nose = depthTimesDistance(person, person.noseTip, height);
  return person.ears.map((ear) => ({
    by,
    at: where(sum(times(nose, 1 + most), times(depthTimesDistance(person, ear, height), -1)), by),
  }));
}

/** x^2 + (y - h)^2 <= ((1 + most)^2 - 1) (s - z)^2: sec t - 1 <= most. */
function stretch({ id, eyes: [x, y, z] }: PlanPerson, height: number, most: number): Solved {
  const by: Condition = { name: 'stretch', of: id };
  const tangent = Math.sqrt((1 + most) ** 2 - 1);
  const aside = Math.hypot(x, y - height);
  return { by, at: aside === 0 ? everywhere : where(linear(-tangent * z - aside, tangent), by) };
}

function personal({ id, eyes: [x, y, z] }: PlanPerson, height: number, least: number): Solved {
  const by: Condition = { name: 'personal', of: id };
  return { by, at: where([x * x + (y - height) ** 2 + z * z - least * least, -2 * z, 1], by) };
}

/** (s - far) / (s - near) - 1 <= most. */
function rowDifference(people: readonly PlanPerson[], most: number): Solved[] {
  const depths = people.map(({ eyes: [, , z] }) => z);
  const [near, far] = [Math.max(...depths), Math.min(...depths)];
  const by: Condition = { name: 'row-difference' };
  return near === far ? [] : [{ by, at: where(linear(far - (1 + most) * near, most), by) }];
}

function cameraHeight({ cameraHeight: h }: Wanted, room: PlanRoom): Solved {
  const by: Condition = { name: 'camera-height' };
  if (h - LEAST_HEIGHT < room.floor || h + LEAST_HEIGHT > room.ceiling) return { by, at: [] };
  // |h| <= GREATEST_HEIGHT d, with d^2 = s^2 + h^2.
  const least = Math.abs(h) * Math.sqrt(1 / GREATEST_HEIGHT ** 2 - 1);
  return { by, at: least === 0 ? everywhere : where(linear(-least, 1), by) };
}

/** Everything about the people, in the order in which it is named. */
export function faceConditions(wanted: Wanted, room: PlanRoom, asked: Asked): Solved[] {
  const { people, cameraHeight: height } = wanted;
  const each = (one: (person: PlanPerson) => readonly Solved[]) => people.flatMap(one);
  return [
    cameraHeight(wanted, room),
    ...(asked.noseGain === null ? [] : each((p) => noseGain(p, height, asked.noseGain as number))),
    ...(asked.personal === null
      ? []
      : each((p) => [personal(p, height, asked.personal as number)])),
    ...(asked.stretch === null ? [] : each((p) => [stretch(p, height, asked.stretch as number)])),
    ...(asked.rowDifference === null ? [] : rowDifference(people, asked.rowDifference)),
  ];
}
