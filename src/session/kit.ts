/** What the session's pictures are taken with and where: kit, body, lenses, the run of the room. */
import type { Models } from '../models/types';
import type { Lens } from '../optics/types';
import { metres } from '../optics/units';
import { type Run, runThrough } from '../plan/run';
import { type Hall, hallOf } from './hall';
import type { Body, Kit, OwnLens, Room, Session } from './types';

/** The kit in use. */
export const kitOf = ({ kits, kit }: Pick<Session, 'kits' | 'kit'>): Kit =>
  kits.find(({ id }) => id === kit) ?? kits[0];

/** The body in use of the kit in use. */
export function bodyOf(session: Pick<Session, 'kits' | 'kit'>): Body {
  const { bodies, body } = kitOf(session);
  return bodies.find(({ id }) => id === body) ?? bodies[0];
}

function lensOf(own: OwnLens): Lens {
  const { focal, nearestFocus, largestMagnification, entrancePupil, pupilMagnification } = own;
  return {
    id: own.id,
    name: own.name,
    widest: own.widest,
    smallest: own.smallest,
    focal: [metres(focal[0]), metres(focal[1])],
    nearestFocus: [metres(nearestFocus[0]), metres(nearestFocus[1])],
    length: metres(own.length),
    ...(largestMagnification === undefined ? {} : { largestMagnification }),
    ...(entrancePupil === undefined ? {} : { entrancePupil: metres(entrancePupil) }),
    ...(pupilMagnification === undefined ? {} : { pupilMagnification }),
  };
}

const withOwn = new WeakMap<readonly OwnLens[], WeakMap<Models, ReadonlyMap<string, Lens>>>();

/** Every lens there is: those of models/ and the photographer's own. */
export function lensesOf(
  { ownLenses }: Pick<Session, 'ownLenses'>,
  models: Models,
): ReadonlyMap<string, Lens> {
  if (ownLenses.length === 0) return models.lenses;
  const before = withOwn.get(ownLenses) ?? new WeakMap<Models, ReadonlyMap<string, Lens>>();
  withOwn.set(ownLenses, before);
  const found = before.get(models);
  if (found !== undefined) return found;
  const lenses = new Map<string, Lens>(models.lenses);
  for (const own of ownLenses) lenses.set(own.id, lensOf(own));
  before.set(models, lenses);
  return lenses;
}

/** The room as the pictures meet it, from the eyes. */
export interface RoomRun extends Run {
  /** Kept free behind the sensor mark for the photographer. */
  readonly behindCamera: number;
  readonly hall: Hall;
}

export const runOf = (room: Room): RoomRun => ({
  ...runThrough(room),
  behindCamera: room.behindCamera,
  hall: hallOf(room),
});
