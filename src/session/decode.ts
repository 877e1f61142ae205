/** Anything read from outside -> a session, or a typed reason why not. Nothing here throws. */
import * as v from 'valibot';
import { describeIssue } from '../models/issue';
import type { Models } from '../models/types';
import { clampSession } from './clamp';
import { lensesOf } from './kit';
import { MIGRATIONS, migrate } from './migrate';
import { impossibility } from './person';
import { isRecord } from './record';
import { sessionSchema } from './schema';
import { SESSION_VERSION, type Session } from './types';

/** Where a session came from, as a sentence calls it. */
export type Carrier = 'file' | 'link' | 'picture' | 'saved session';

export type Fault =
  | 'too-large'
  | 'damaged'
  | 'not-a-session'
  | 'newer'
  | 'unknown-version'
  | 'unknown-model'
  | 'impossible-sitter';

export interface Undecoded {
  readonly ok: false;
  readonly fault: Fault;
  /** What is wrong, as a sentence. */
  readonly what: string;
  /** The same for the screen, saying that nothing was changed. */
  readonly sentence: string;
}
export type Decoded = { readonly ok: true; readonly session: Session } | Undecoded;

/** What tells a session's JSON from any other. */
export const FORMAT = 'standpoint-session';

export const failed = (fault: Fault, what: string): Undecoded => ({
  ok: false,
  fault,
  what,
  sentence: `${what} Nothing was changed.`,
});

/** What goes into a file, a link and the store alike. */
export const envelope = (session: object) => ({ format: FORMAT, session });

/** The envelope back to a session: migrated, validated, known to the models, clamped. */
export function decodeEnvelope(value: unknown, carrier: Carrier, models: Models): Decoded {
  if (!isRecord(value) || value.format !== FORMAT || !isRecord(value.session)) {
    return failed('not-a-session', `This ${carrier} holds no session.`);
  }
  const migrated = migrate(value.session, MIGRATIONS, SESSION_VERSION);
  if (!migrated.ok) {
    switch (migrated.reason) {
      case 'newer':
        return failed('newer', `This ${carrier} comes from a newer version.`);
      case 'unknown-version':
        return failed(
          'unknown-version',
          `This ${carrier} is of a version that was never released.`,
        );
      case 'no-version':
        return failed('damaged', `This ${carrier} is damaged: it names no version.`);
      case 'damaged':
        return failed(
          'damaged',
          `This ${carrier} is damaged at ${migrated.what}, as its version has it.`,
        );
    }
  }
  const parsed = v.safeParse(sessionSchema, migrated.session);
  if (!parsed.success) {
    const [issue] = parsed.issues;
    return failed('damaged', `This ${carrier} is damaged at ${describeIssue(issue)}.`);
  }
  const stranger = unknownModel(parsed.output, models);
  if (stranger) {
    return failed('unknown-model', `This ${carrier} asks for ${stranger}, which is not here.`);
  }
  const session = clampSession(parsed.output, models);
  for (const person of [session, ...session.comparisons].flatMap(({ people }) => people)) {
    const contradiction = impossibility(person, models);
    if (contradiction)
      return failed('impossible-sitter', `No such sitter can be: ${contradiction}.`);
  }
  return { ok: true, session };
}

/** The first thing a session names that models/ does not hold. */
function unknownModel(session: Session, models: Models): string | null {
  const { kits, plan } = session;
  const compared = [session, ...session.comparisons];
  const rows = plan.group?.rows ?? [];
  const names: [what: string, known: ReadonlyMap<string, unknown>, asked: (string | null)[]][] = [
    [
      'sitter',
      models.sitters,
      [
        ...compared.flatMap(({ people }) => people.map(({ model }) => model)),
        ...rows.flatMap((row) => row.models),
      ],
    ],
    ['format', models.formats, kits.flatMap(({ bodies }) => bodies.map(({ format }) => format))],
    [
      'framing',
      models.framings,
      [...compared.map(({ crop }) => crop.framing), ...plan.wanted.map(({ framing }) => framing)],
    ],
    [
      'lens',
      lensesOf(session, models),
      [
        ...kits.flatMap(({ lenses }) => lenses),
        ...compared.flatMap(({ pictures }) => pictures.map(({ lens }) => lens)),
      ],
    ],
  ];
  for (const [what, known, asked] of names) {
    const stranger = asked.find((id) => id !== null && !known.has(id));
    if (stranger !== undefined) return `the ${what} "${stranger}"`;
  }
  return null;
}
