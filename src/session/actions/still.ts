/** Pictures brought back from a picture file. */
import { comparedOf } from '../comparison';
import { bodyOf, kitOf } from '../kit';
import { MOST } from '../limits';
import { nameless, relensed } from '../picture-state';
import type { Body, Kit, OwnLens, Session } from '../types';
import { action } from './action';
import { freeId } from './kit-edit';

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The own lenses of both; one that is there already, whatever it is called, stays the only one. */
function withLenses(session: Session, taken: readonly OwnLens[]) {
  const bare = ({ id: _, name: __, ...lens }: OwnLens) => lens;
  const ownLenses = [...session.ownLenses];
  const ids = new Map<string, string | null>();
  for (const lens of taken) {
    const known = ownLenses.find((own) => isSame(bare(own), bare(lens)));
    const added = !known && ownLenses.length < MOST.ownLenses;
    const id = known?.id ?? freeId('own', ownLenses);
    if (added) ownLenses.push({ ...lens, id });
    ids.set(lens.id, known || added ? id : null);
  }
  return { ownLenses, ids };
}

/** The kit in use with a body of that format in use: one of its own, else one more. */
function withBody(kit: Kit, wanted: Body): Kit {
  const found = kit.bodies.find(({ format }) => format === wanted.format);
  if (found) return { ...kit, body: found.id };
  const id = freeId('body', kit.bodies);
  const kept = kit.bodies.slice(0, MOST.bodies - 1);
  const [first, ...others] = [...kept, { ...wanted, id }];
  return { ...kit, bodies: [first as Body, ...others], body: id };
}

/** A session with the pictures of another hung in it: what is the photographer's own stays. */
function withPictures(session: Session, taken: Session): Session {
  const { ownLenses, ids } = withLenses(session, taken.ownLenses);
  const inUse = kitOf(session);
  const body = bodyOf(taken);
  const kit = bodyOf(session).format === body.format ? inUse : withBody(inUse, body);
  const [first, ...others] = session.kits.map((each) => (each.id === inUse.id ? kit : each));
  return {
    ...session,
    ...comparedOf(taken),
    pictures: relensed(taken.pictures, ids),
    series: taken.series,
    room: isSame(nameless(session.room), nameless(taken.room)) ? session.room : taken.room,
    kits: [first as Kit, ...others],
    ownLenses,
  };
}

export const hangStill = action<{ still: Session }>({
  edit: (session, { still }) => withPictures(session, still),
  label: () => 'Pictures of a still hung',
});
