/** What the page must show, computed in Node from the same session by the program's own numbers. */
import { loadModels, readSculpture } from '../../src/models/node';
import { type Measures, measure } from '../../src/readings/measures';
import { visibility } from '../../src/readings/visibility';
import { type Cast, leadOf, placeCompany } from '../../src/session/cast';
import { looking } from '../../src/session/gaze';
import { personLooks, personOf } from '../../src/session/person';
import { readingInput } from '../../src/session/reading-input';
import { type ResolvedPicture, resolvePicture } from '../../src/session/resolve';
import type { Letter, Person, Session } from '../../src/session/types';
import { buildSitter } from '../../src/sitter/build';
import { sculptures } from '../../src/sitter/compose';
import type { Sitter } from '../../src/sitter/types';

export const models = loadModels();

export function must<T>(value: T | null | undefined, what = 'a value'): T {
  if (value === null || value === undefined) throw new Error(`expected ${what}`);
  return value;
}

const sculptureOf = sculptures(readSculpture);

async function built(person: Person): Promise<Sitter> {
  const model = must(models.sitters.get(person.model), person.model);
  const looks = personLooks(person, models);
  const sculpture = await sculptureOf(model, looks);
  return buildSitter(sculpture, { ...model, looks }, person.changes, person.pose);
}

/** Everybody of a session, the eyes as built. */
export async function castOf({ people: [first, second] }: Session): Promise<Cast> {
  return second
    ? { '1': await built(first), '2': await built(second) }
    : { '1': await built(first) };
}

/** The first person of a session, the eyes as built. */
export const sitterOf = async (session: Session): Promise<Sitter> => (await castOf(session))['1'];

export const resolveAll = (session: Session, cast: Cast): ResolvedPicture[] =>
  session.pictures.map((picture) => resolvePicture(session, picture, models, cast));

/** Whom each picture's distances are taken to, looking as that picture sees it. */
export const leadsOf = (session: Session, cast: Cast): Sitter[] =>
  resolveAll(session, cast).map(({ camera }, i) => {
    const picture = must(session.pictures[i]);
    const { gaze } = personOf(session, picture.of[0]);
    return looking(leadOf(cast, picture), gaze, camera.position);
  });

export interface Expected {
  readonly letter: Letter;
  readonly resolved: ResolvedPicture;
  readonly measures: Measures;
}

/** Every picture resolved and its first person measured, the rays of visibility included. */
export async function expectedOf(session: Session): Promise<Expected[]> {
  const cast = await castOf(session);
  const leads = leadsOf(session, cast);
  return resolveAll(session, cast).map((resolved, i) => {
    const sitter = must(leads[i]);
    const input = readingInput(session, resolved, { sitter, at: [0, 0, 0] });
    const [, ...beside] = placeCompany(cast, must(session.pictures[i]).of, session.beside);
    const neighbours = beside.map(({ sitter: { meshes }, at }) => ({ meshes, at }));
    return {
      letter: resolved.letter,
      resolved,
      measures: measure(input, visibility(sitter, resolved.camera.position, neighbours)),
    };
  });
}
