/** Lenses that the photographer typed or measured. */
import { type FrameReading, measuredLens, measureLens } from '../../optics/measure-lens';
import type { Lens } from '../../optics/types';
import { metres } from '../../optics/units';
import type { ActionContext } from '../follow';
import { bodyOf, kitOf, lensesOf } from '../kit';
import { known } from '../known';
import { MOST, NAME_LENGTH } from '../limits';
import type { Measured, MeasuredFrame, OwnLens, Session } from '../types';
import { action } from './action';
import { editKit, freeId, freeLenses, mapSome } from './kit-edit';

type Figures = Omit<OwnLens, 'id'>;

const nameOf = (name: string): string => name.trim().slice(0, NAME_LENGTH) || 'Lens';

/** A new own lens in the kit in use, in place of `replaced` where that is told. */
function withOwn(session: Session, figures: Figures, replaced?: string): Session {
  const { lenses } = kitOf(session);
  const isNew = replaced === undefined || !lenses.includes(replaced);
  if (session.ownLenses.length >= MOST.ownLenses || (isNew && lenses.length >= MOST.lenses)) {
    return session;
  }
  const id = freeId('own', session.ownLenses);
  const after = {
    ...session,
    ownLenses: [...session.ownLenses, { ...figures, name: nameOf(figures.name), id }],
  };
  return editKit(after, (kit) => ({
    ...kit,
    lenses: isNew ? [...kit.lenses, id] : kit.lenses.map((each) => (each === replaced ? id : each)),
  }));
}

/** A lens typed by its figures, in the kit in use. */
export const addOwnLens = action<Figures>({
  edit: (session, figures) => withOwn(session, figures),
  label: (_, { name }) => `Lens added: ${nameOf(name)}`,
});

/** Figures of an own lens; those given as undefined are forgotten, those left out stay. */
export const setOwnLens = action<
  { lens: string } & { [Name in keyof Figures]?: Figures[Name] | undefined }
>({
  edit: (session, { lens, ...change }) => ({
    ...session,
    ownLenses: session.ownLenses.map((own) => {
      if (own.id !== lens) return own;
      const all = Object.entries({ ...own, ...change }).filter(([, value]) => value !== undefined);
      const edited = { ...own, ...Object.fromEntries(all) };
      return withoutForgotten({ ...edited, name: nameOf(edited.name) }, change);
    }),
  }),
  label: (after, { lens }) =>
    `Lens changed: ${after.ownLenses.find(({ id }) => id === lens)?.name ?? lens}`,
});

const FORGETTABLE = [
  'largestMagnification',
  'entrancePupil',
  'pupilMagnification',
  'measured',
] as const satisfies readonly (keyof Figures)[];

function withoutForgotten(lens: OwnLens, change: Readonly<Record<string, unknown>>): OwnLens {
  const left: { -readonly [Name in keyof OwnLens]: OwnLens[Name] } = { ...lens };
  for (const name of FORGETTABLE)
    if (name in change && change[name] === undefined) delete left[name];
  return left;
}

/** An own lens is gone from every kit; a picture that named it is taken by any lens of the kit. */
export const removeOwnLens = action<{ lens: string }>({
  edit: (session, { lens }, context) => {
    if (!session.ownLenses.some(({ id }) => id === lens)) return session;
    return {
      ...session,
      ...freeLenses(session, (id) => id !== lens, context),
      kits: mapSome(session.kits, (kit) => ({
        ...kit,
        lenses: kit.lenses.filter((id) => id !== lens),
      })),
      ownLenses: session.ownLenses.filter(({ id }) => id !== lens),
    };
  },
  label: () => 'Lens removed',
});

/** What an own lens keeps of another: its figures, not where a class has them from. */
function figuresOf(lens: Lens): Figures {
  const { name, focal, widest, smallest, nearestFocus, length } = lens;
  const { entrancePupil, pupilMagnification } = lens;
  return {
    name,
    focal,
    widest,
    smallest,
    nearestFocus,
    length,
    ...(entrancePupil === undefined ? {} : { entrancePupil }),
    ...(pupilMagnification === undefined ? {} : { pupilMagnification }),
  };
}

const reading = ({ tape, frame }: MeasuredFrame): FrameReading => ({
  tape: metres(tape),
  frame: metres(frame),
});

/**
 * A lens as two measured frames have it, along the long side of the body in use: its entrance pupil and the
 * focal length as it acts. An own prime is mended; any other lens is replaced in the kit by an own one, set
 * to `mark`. Frames that no lens can have change nothing (`measureLens` of optics says why).
 */
export const takeMeasure = action<{ lens: string; mark?: number } & Measured>({
  edit: (session, { lens: id, mark, ...measured }, { models }: ActionContext) => {
    const lens = lensesOf(session, models).get(id);
    if (!lens) return session;
    const measure = measureLens({
      format: known(models.formats, bodyOf(session).format),
      side: 'long',
      readings: [reading(measured.near), reading(measured.far)],
      length: lens.length,
      ...(measured.focusedAt === undefined ? {} : { focusedAt: metres(measured.focusedAt) }),
      ...(lens.pupilMagnification === undefined
        ? {}
        : { pupilMagnification: lens.pupilMagnification }),
    });
    if (!measure.ok) return session;
    const used = measuredLens(lens, metres(mark ?? lens.focal[1]), measure.value);
    if (!used.ok) return session;
    const figures = figuresOf(used.value);
    const own = session.ownLenses.find((each) => each.id === id);
    if (!own || own.focal[0] !== own.focal[1]) {
      return withOwn(session, { ...figures, name: `${lens.name}, measured`, measured }, id);
    }
    return {
      ...session,
      ownLenses: session.ownLenses.map((each) =>
        each === own ? { ...figures, id, name: own.name, measured } : each,
      ),
    };
  },
  label: (after, { lens }, { models }) =>
    `Lens measured: ${lensesOf(after, models).get(lens)?.name ?? lens}`,
});
