/** What the page must show, computed in Node from the same session by the program's own numbers. */
import { readFileSync } from 'node:fs';
import { loadModels } from '../../src/models/node';
import { type Measures, measure } from '../../src/readings/measures';
import { visibility } from '../../src/readings/visibility';
import { readingInput } from '../../src/session/reading-input';
import { type ResolvedPicture, resolvePicture } from '../../src/session/resolve';
import type { Letter, Session } from '../../src/session/types';
import { buildSitter, loadSculpture } from '../../src/sitter/build';
import type { Sculpture } from '../../src/sitter/sculpture';
import type { Sitter, SitterModel } from '../../src/sitter/types';

export const models = loadModels();

export function must<T>(value: T | null | undefined, what = 'a value'): T {
  if (value === null || value === undefined) throw new Error(`expected ${what}`);
  return value;
}

const sculptures = new Map<string, Promise<Sculpture>>();

function sculptureOf({ sculpture }: SitterModel): Promise<Sculpture> {
  const url = new URL(`../../models/sculpture/${sculpture}.glb`, import.meta.url);
  const loading = sculptures.get(sculpture) ?? loadSculpture(readFileSync(url));
  sculptures.set(sculpture, loading);
  return loading;
}

export async function sitterOf({ sitter }: Pick<Session, 'sitter'>): Promise<Sitter> {
  const model = must(models.sitters.get(sitter.model), sitter.model);
  return buildSitter(await sculptureOf(model), model, sitter.changes, sitter.pose);
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
