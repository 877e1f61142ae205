/** Kits and their bodies. */
import { bodyOf, kitOf, lensesOf } from '../kit';
import { known } from '../known';
import { MOST, NAME_LENGTH } from '../limits';
import type { Body } from '../types';
import { action } from './action';
import { editKit, freeId, freeLenses, lensName, mapSome, withoutOne } from './kit-edit';

/** Which kit an action means: the one in use when none is named. */
export interface WhichKit {
  readonly kit?: string;
}

const named = (text: string, otherwise: string): string =>
  text.trim().slice(0, NAME_LENGTH) || otherwise;

/** Another kit, with the body in use and no lens; it is used from then on. */
export const addKit = action<{ name: string }>({
  edit: (session, { name }, context) => {
    if (session.kits.length >= MOST.kits) return session;
    const id = freeId('kit', session.kits);
    const body: Body = { ...bodyOf(session), id: 'body-1' };
    return {
      ...session,
      kits: [
        ...session.kits,
        { id, name: named(name, 'Kit'), bodies: [body], body: body.id, lenses: [] },
      ],
      kit: id,
      ...freeLenses(session, () => false, context),
    };
  },
  label: (after) => `Kit added: ${kitOf(after).name}`,
});

/** Takes a kit away; the last one stays. */
export const removeKit = action<{ kit: string }>({
  edit: (session, { kit }, context) => {
    const kits = withoutOne(session.kits, kit);
    if (kits === null || kits.length === session.kits.length) return session;
    const after = { ...session, kits };
    const { lenses } = kitOf(after);
    return {
      ...after,
      kit: kitOf(after).id,
      ...(kit === session.kit && freeLenses(session, (lens) => lenses.includes(lens), context)),
    };
  },
  label: () => 'Kit removed',
});

export const renameKit = action<WhichKit & { name: string }>({
  edit: (session, { kit, name }) =>
    editKit(session, (each) => ({ ...each, name: named(name, each.name) }), kit),
  label: (after, { kit }) =>
    `Kit named ${(after.kits.find(({ id }) => id === kit) ?? kitOf(after)).name}`,
});

/** Uses another kit. A picture that names a lens which is not in it is taken by any lens of the kit. */
export const chooseKit = action<{ kit: string }>({
  edit: (session, { kit }, context) => {
    const chosen = session.kits.find(({ id }) => id === kit);
    if (!chosen || kit === session.kit) return session;
    return {
      ...session,
      kit,
      ...freeLenses(session, (lens) => chosen.lenses.includes(lens), context),
    };
  },
  label: (after) => `Kit in use: ${kitOf(after).name}`,
});

/** Another body in the kit. */
export const addBody = action<WhichKit & Omit<Body, 'id'>>({
  edit: (session, { kit, ...body }, { models }) =>
    models.formats.has(body.format)
      ? editKit(
          session,
          (each) =>
            each.bodies.length >= MOST.bodies
              ? each
              : {
                  ...each,
                  bodies: [
                    ...each.bodies,
                    { ...body, name: named(body.name, 'Body'), id: freeId('body', each.bodies) },
                  ],
                },
          kit,
        )
      : session,
  label: (_, { format }, { models }) => `Body added: ${models.formats.get(format)?.name ?? format}`,
});

/** Name, format and megapixels of a body; what is left out stays. */
export const setBody = action<WhichKit & { body: string } & Partial<Omit<Body, 'id'>>>({
  edit: (session, { kit, body: id, ...change }, { models }) => {
    if (change.format !== undefined && !models.formats.has(change.format)) return session;
    const edit = (body: Body): Body =>
      body.id === id
        ? { ...body, ...change, name: named(change.name ?? body.name, body.name) }
        : body;
    return editKit(session, (each) => ({ ...each, bodies: mapSome(each.bodies, edit) }), kit);
  },
  label: (_, { name, format }, { models }) => {
    if (format !== undefined) return `Format: ${models.formats.get(format)?.name ?? format}`;
    return name === undefined ? 'Body changed' : `Body named ${name}`;
  },
});

/** Takes a body out of the kit; the last one stays. */
export const removeBody = action<WhichKit & { body: string }>({
  edit: (session, { kit, body }) =>
    editKit(
      session,
      (each) => ({ ...each, bodies: withoutOne(each.bodies, body) ?? each.bodies }),
      kit,
    ),
  label: () => 'Body removed',
});

/** The body that pictures are taken with. */
export const chooseBody = action<{ body: string }>({
  edit: (session, { body }) =>
    kitOf(session).bodies.some(({ id }) => id === body)
      ? editKit(session, (kit) => ({ ...kit, body }))
      : session,
  label: (after) => `Body in use: ${bodyOf(after).name}`,
});

/** The sensor format of the body in use and what it records. */
export const setFormat = action<{ format: string; megapixels?: number }>({
  edit: (session, { format, megapixels }, context) => {
    const { id: body } = bodyOf(session);
    return setBody.edit(
      session,
      { body, format, ...(megapixels === undefined ? {} : { megapixels }) },
      context,
    );
  },
  label: (after, _, { models }) => `Format: ${known(models.formats, bodyOf(after).format).name}`,
});

/** The lenses that are there, each once; unknown ones are left out. */
export const setKit = action<WhichKit & { lenses: readonly string[] }>({
  edit: (session, { kit, lenses }, { models }) =>
    editKit(
      session,
      (each) => ({
        ...each,
        lenses: [...new Set(lenses)]
          .filter((id) => lensesOf(session, models).has(id))
          .slice(0, MOST.lenses),
      }),
      kit,
    ),
  label: (after, { kit }) => {
    const { length } = (after.kits.find(({ id }) => id === kit) ?? kitOf(after)).lenses;
    return `Kit of ${length} ${length === 1 ? 'lens' : 'lenses'}`;
  },
});

/** Puts a lens of models/ or an own one into the kit. */
export const addLens = action<WhichKit & { lens: string }>({
  edit: (session, { kit, lens }, { models }) =>
    lensesOf(session, models).has(lens)
      ? editKit(
          session,
          (each) =>
            each.lenses.includes(lens) || each.lenses.length >= MOST.lenses
              ? each
              : { ...each, lenses: [...each.lenses, lens] },
          kit,
        )
      : session,
  label: (after, { lens }, context) => `Lens added: ${lensName(after, lens, context)}`,
});

/** Takes a lens out of the kit; an own one is kept for another. */
export const removeLens = action<WhichKit & { lens: string }>({
  edit: (session, { kit, lens }) =>
    editKit(session, (each) => ({ ...each, lenses: each.lenses.filter((id) => id !== lens) }), kit),
  label: (after, { lens }, context) => `Lens removed: ${lensName(after, lens, context)}`,
});
