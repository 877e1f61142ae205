/** What the page must show, computed in Node from the same session by the program's own numbers. */
import { loadModels, readSculpture } from '../../src/models/node';
import { type Measures, measure } from '../../src/readings/measures';
import { visibility } from '../../src/readings/visibility';
import { readingInput } from '../../src/session/reading-input';
import { type ResolvedPicture, resolvePicture } from '../../src/session/resolve';
import type { Letter, Session } from '../../src/session/types';
import { buildSitter } from '../../src/sitter/build';
import { sculptures } from '../../src/sitter/compose';
import type { Sitter } from '../../src/sitter/types';

export const models = loadModels();

export function must<T>(value: T | null | undefined, what = 'a value'): T {
  if (value === null || value === undefined) throw new Error(`expected ${what}`);
  return value;
}

const sculptureOf = sculptures(readSculpture);

export async function sitterOf({ sitter }: Pick<Session, 'sitter'>): Promise<Sitter> {
  const model = must(models.sitters.get(sitter.model), sitter.model);
  return buildSitter(await sculptureOf(model, model.looks), model, sitter.changes, sitter.pose);
}

export function resolveAll(session: Session, sitter: Sitter): ResolvedPicture[] {
  return session.pictures.map((picture) => resolvePicture(session, picture, models, sitter));
}

export interface Expected {
  readonly letter: Letter;
  readonly resolved: ResolvedPicture;
  readonly measures: Measures;
}

/** Every picture resolved and measured, the rays of visibility included. */
export async function expectedOf(session: Session): Promise<Expected[]> {
  const sitter = await sitterOf(session);
  return resolveAll(session, sitter).map((resolved) => ({
    letter: resolved.letter,
    resolved,
    measures: measure(
      readingInput(session, resolved, sitter),
      visibility(sitter, resolved.camera.position),
    ),
  }));
}
