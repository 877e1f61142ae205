/**
 * What of a session its pictures hang on, which is all that a picture file carries: no title, notes, names,
 * kit, handout, kept comparisons or measured body.
 */
import { comparedOf } from './comparison';
import { demoSession } from './demo';
import { bodyOf } from './kit';
import type { Obstacle, OwnLens, Person, Picture, Room, Session } from './types';

const ROOM = 'Room';
const LENS = 'Lens';
const NAMES: Readonly<Record<Obstacle['kind'], string>> = { thing: 'Thing', door: 'Door' };

export const nameless = (room: Room): Room => ({
  ...room,
  name: ROOM,
  obstacles: room.obstacles.map((each) => ({ ...each, name: NAMES[each.kind] })),
});

/** Those that a picture is taken with. */
const ownLensesOf = ({ pictures, ownLenses }: Session): OwnLens[] =>
  ownLenses.filter(({ id }) => pictures.some(({ lens }) => lens === id));

/** The pictures with other ids for the lenses that have one; null: any lens. */
export const relensed = (
  pictures: readonly Picture[],
  ids: ReadonlyMap<string, string | null>,
): readonly Picture[] =>
  pictures.map((picture) => {
    const to = picture.lens === null ? undefined : ids.get(picture.lens);
    return to === undefined ? picture : { ...picture, lens: to };
  });

/** The people as their models are: whose body it is stays with the photographer. */
const unmeasured = ([first, ...others]: Session['people']): Session['people'] => {
  const bare = (person: Person): Person => ({ ...person, changes: {} });
  return [bare(first), ...others.map(bare)];
};

/** A session whose pictures are the same (but for measured bodies), and which says nothing else of anybody. */
export function picturesOnly(session: Session): Session {
  const demo = demoSession();
  const { format, megapixels } = bodyOf(session);
  const [kit] = demo.kits;
  const [body] = kit.bodies;
  const own = ownLensesOf(session).map((lens, i) => ({ lens, id: `lens-${i + 1}` }));
  const ids = new Map(own.map(({ lens, id }) => [lens.id, id]));
  const lenses = session.pictures.flatMap(({ lens }) => lens ?? []).map((id) => ids.get(id) ?? id);
  return {
    ...demo,
    ...comparedOf(session),
    title: '',
    units: session.units,
    people: unmeasured(session.people),
    pictures: relensed(session.pictures, ids),
    room: nameless(session.room),
    series: session.series,
    kits: [{ ...kit, bodies: [{ ...body, format, megapixels }], lenses: [...new Set(lenses)] }],
    ownLenses: own.map(({ lens, id }, i) => ({ ...lens, id, name: `${LENS} ${i + 1}` })),
  };
}
