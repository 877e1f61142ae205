/** What hangs on the people and the camera's height alone: the same for every lens. */
import type { Solved } from './conditions';
import { GREATEST_HEIGHT } from './conditions';
import { everywhere, where } from './intervals';
import type { NoseAndEars } from './nose-gain';
import { lessTimes, linear, times } from './polynomial';
import type { Asked, Condition, PlanPerson, PlanRoom, Wanted } from './types';

/** A camera is carried and tripods stand between these heights over the floor and under the ceiling, metres. */
const LEAST_HEIGHT = 0.1;

function noseGain({ id, nose, ears }: NoseAndEars, most: number): Solved[] {
  const by: Condition = { name: 'nose-gain', of: id };
  return ears.map((ear) => ({ by, at: where(lessTimes(times(nose, 1 + most), 1, ear), by) }));
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

/** Standing before everything that is to be sharp and every nose, so that their depths are positive. */
function beforeAll(people: readonly PlanPerson[]): Solved {
  const by: Condition = { name: 'clearance' };
  let nearest = 0;
  for (const { noseTip, pupils } of people)
    nearest = Math.max(nearest, noseTip[2], pupils[0][2], pupils[1][2]);
  return { by, at: nearest > 0 ? where(linear(-nearest, 1), by) : everywhere };
}

/** Everything about the people, in the order in which it is named. */
export function faceConditions(
  wanted: Wanted,
  noses: readonly NoseAndEars[],
  room: PlanRoom,
  asked: Asked,
): Solved[] {
  const { people, cameraHeight: height } = wanted;
  const found = [cameraHeight(wanted, room)];
  if (asked.noseGain !== null)
    for (const each of noses) found.push(...noseGain(each, asked.noseGain));
  if (asked.personal !== null)
    for (const each of people) found.push(personal(each, height, asked.personal));
  if (asked.stretch !== null)
    for (const each of people) found.push(stretch(each, height, asked.stretch));
  if (asked.rowDifference !== null) found.push(...rowDifference(people, asked.rowDifference));
  found.push(beforeAll(people));
  return found;
}
