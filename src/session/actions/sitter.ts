/** Who sits and how. */
import { formatLength } from '../../readings/format';
import type { DimensionName, Pose } from '../../sitter/types';
import { unsculpted } from '../cast';
import { clampDimension } from '../clamp';
import type { ActionContext } from '../follow';
import { usualFrameHeight } from '../framed';
import { known } from '../known';
import { impossibility, personDimensions, personOf } from '../person';
import { resolvePicture } from '../resolve';
import type {
  Beside,
  Company,
  Gaze,
  Letter,
  LooksChanges,
  Person,
  PersonId,
  Picture,
  Session,
} from '../types';
import { action, editPictures, pictureOf } from './action';
import { framedPerson } from './crop';

/** A little air beside the heads of two: by eye. */
const ROOM_ROUND_HEADS = 1.06;
const CENTIMETRE = 0.01;

/** Whom an action means; the first person when nobody is named. */
export interface Whom {
  readonly person?: PersonId;
}

const editPerson = (
  session: Session,
  { person = '1' }: Whom,
  edit: (person: Person) => Person,
): Session => {
  const [first, ...others] = session.people;
  const change = (each: Person) => (each.id === person ? edit(each) : each);
  return { ...session, people: [change(first), ...others.map(change)] };
};

/** A named framing follows the person it is measured by. */
function reframed(before: Session, session: Session, { models }: ActionContext): Session {
  const { framing: id } = session.crop;
  const framing = id === null ? undefined : models.framings.get(id);
  if (!framing || framedPerson(before) === framedPerson(session)) return session;
  const frameHeight = usualFrameHeight(framedPerson(session), framing, models);
  return { ...session, crop: { ...session.crop, frameHeight } };
}

/** "Person 2: " where there are two, so that a label says who is meant. */
const named = ({ people }: Session, { person = '1' }: Whom): string =>
  people.length > 1 ? `Person ${person}: ` : '';

/** Another sitter, with that sitter's own dimensions and looks; pose and gaze stay. */
export const setSitter = action<Whom & { model: string }>({
  edit: (session, { model, ...whom }, context) => {
    const now = personOf(session, whom.person ?? '1');
    if (!context.models.sitters.has(model) || now.model === model) return session;
    const after = editPerson(session, whom, (person) => ({
      ...person,
      model,
      changes: {},
      looks: {},
    }));
    return reframed(session, after, context);
  },
  label: (after, whom, { models }) =>
    `${named(after, whom)}${known(models.sitters, personOf(after, whom.person ?? '1').model).name}`,
});

/**
 * Changes one dimension, millimetres; null gives the sitter's own back. What no person can have
 * together changes nothing (`impossibility` says why).
 */
export const setDimension = action<Whom & { dimension: DimensionName; to: number | null }>({
  edit: (session, { dimension, to, ...whom }, context) => {
    const person = personOf(session, whom.person ?? '1');
    const changed = withDimension(person, dimension, to, context);
    if (impossibility(changed, context.models)) return session;
    return reframed(
      session,
      editPerson(session, whom, () => changed),
      context,
    );
  },
  label: (after, { dimension, ...whom }, { models }) => {
    const { name } = models.dimensions[dimension];
    const mm = personOf(after, whom.person ?? '1').changes[dimension];
    return `${named(after, whom)}${mm === undefined ? `${name} as measured` : `${name} set to ${Math.round(mm)} mm`}`;
  },
});

/** The person with one dimension changed, whether such a person can be or not. */
export function withDimension(
  person: Person,
  dimension: DimensionName,
  to: number | null,
  { models }: Pick<ActionContext, 'models'>,
): Person {
  const { [dimension]: _changed, ...others } = person.changes;
  if (to === null) return { ...person, changes: others };
  const mm = clampDimension(to, dimension, person.model, models);
  return { ...person, changes: { ...others, [dimension]: mm } };
}

/** All dimensions back to the sitter's own. */
export const resetDimensions = action<Whom>({
  edit: (session, whom, context) => {
    const { changes } = personOf(session, whom.person ?? '1');
    if (Object.keys(changes).length === 0) return session;
    const after = editPerson(session, whom, (person) => ({ ...person, changes: {} }));
    return reframed(session, after, context);
  },
  label: (after, whom) => `${named(after, whom)}all dimensions as measured`,
});

/** How one stands or sits and is turned, radians; what is left out stays. Hands in the lap sit one down. */
export const setPose = action<Whom & Partial<Pose>>({
  edit: (session, { person, ...pose }) =>
    editPerson(session, person === undefined ? {} : { person }, (each) => ({
      ...each,
      pose: {
        ...each.pose,
        ...pose,
        ...(pose.arms === 'lap' ? { stance: 'seated' as const } : {}),
      },
    })),
  label: (after, whom) => `${named(after, whom)}${poseWords(whom)}`,
});

function poseWords({ stance, arms, lean }: Partial<Pose>): string {
  if (stance !== undefined) return stance === 'seated' ? 'Sitter seated' : 'Sitter standing';
  if (arms !== undefined) return 'Arms moved';
  return lean !== undefined ? 'Sitter leant' : 'Sitter turned';
}

/** Hair, beard, glasses, clothes, smile and colours; what is left out stays. */
export const setLooks = action<Whom & { looks: LooksChanges }>({
  edit: (session, { looks, ...whom }) =>
    editPerson(session, whom, (person) => ({
      ...person,
      looks: {
        ...person.looks,
        ...looks,
        ...(looks.colours ? { colours: { ...person.looks.colours, ...looks.colours } } : {}),
      },
    })),
  label: (after, { looks, ...whom }) => {
    const [first] = Object.keys(looks.colours ?? looks);
    return `${named(after, whom)}${LOOK_WORDS[first as keyof typeof LOOK_WORDS] ?? 'Looks'} changed`;
  },
});

const LOOK_WORDS = {
  hair: 'Hair',
  beard: 'Beard',
  glasses: 'Glasses',
  clothes: 'Clothes',
  smile: 'Smile',
  skin: 'Skin',
  eyes: 'Eyes',
  top: 'Cloth',
  outer: 'Cloth',
  trousers: 'Cloth',
} as const;

/** The looks back to the model's own. */
export const resetLooks = action<Whom>({
  edit: (session, whom) => editPerson(session, whom, (person) => ({ ...person, looks: {} })),
  label: (after, whom) => `${named(after, whom)}looks as the sitter’s own`,
});

/** Where the eyes look. */
export const setGaze = action<Whom & { to: Gaze }>({
  edit: (session, { to, ...whom }) => editPerson(session, whom, (each) => ({ ...each, gaze: to })),
  label: (after, { to, ...whom }) =>
    `${named(after, whom)}${to === 'lens' ? 'Eyes to the lens' : to === 'ahead' ? 'Eyes straight ahead' : 'Eyes turned'}`,
});

/** A second person, who takes the last picture, or joins the first one in the only picture. */
export const addPerson = action<{ model: string }>({
  edit: (session, { model }, context) => {
    const [first, second] = session.people;
    if (second || !context.models.sitters.has(model)) return session;
    const added: Person = { ...first, id: '2', model, changes: {}, looks: {} };
    const of: Company = session.pictures.length > 1 ? ['2'] : ['1', '2'];
    const last = session.pictures.at(-1) as Picture;
    const after = editPictures({ ...session, people: [first, added] }, last, (picture) => ({
      ...picture,
      of,
    }));
    return widened(after, last.letter, context);
  },
  label: (_, { model }, { models }) => `Second person: ${known(models.sitters, model).name}`,
});

/** The session with a crop that holds both heads of a picture. */
function widened(session: Session, letter: Letter, { models, cast }: ActionContext): Session {
  const picture = pictureOf(session, letter);
  if (!picture || picture.of.length < 2) return session;
  const { '2': second = unsculpted(personDimensions(personOf(session, '2'), models)) } = cast;
  const { limits } = resolvePicture(session, picture, models, { ...cast, '2': second });
  const cut = limits.find(({ reason }) => reason === 'outside-frame');
  if (!cut || !Number.isFinite(cut.asked)) return session;
  const wanted = (session.crop.frameHeight * cut.asked) / cut.limit;
  const frameHeight = Math.ceil((wanted * ROOM_ROUND_HEADS) / CENTIMETRE) * CENTIMETRE;
  return { ...session, crop: { ...session.crop, frameHeight, framing: null } };
}

/** The second person leaves; pictures of nobody else show the first. */
export const removePerson = action<Record<string, never>>({
  edit: (session, _, context) => {
    if (session.people.length < 2) return session;
    return reframed(session, { ...session, people: [session.people[0]] }, context);
  },
  label: () => 'Second person gone',
});

/**
 * Who is in a picture; its distances are taken to the first. When two do not fit into the crop, it grows
 * until it holds both heads.
 */
export const setCompany = action<{ letter: Letter; of: Company }>({
  edit: (session, { letter, of }, context) => {
    const after = editPictures(session, { letter }, (picture) => ({ ...picture, of }));
    return widened(reframed(session, after, context), letter, context);
  },
  label: (after, { letter }) =>
    `${letter} shows ${(pictureOf(after, letter)?.of ?? []).map((id) => `person ${id}`).join(' and ')}`,
});

/** Where the second person is beside the first, metres. */
export const setBeside = action<Partial<Beside>>({
  edit: (session, beside) => ({ ...session, beside: { ...session.beside, ...beside } }),
  label: ({ beside, units }) =>
    `Second person ${formatLength(Math.abs(beside.right), units, 'distance')} to the ${beside.right < 0 ? 'left' : 'right'}`,
});
