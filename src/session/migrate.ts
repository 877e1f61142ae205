/**
 * Sessions of older versions are lifted one version at a time, so that each step is written
 * once, when a version is left behind, and never touched again.
 */

export interface Migration {
  /** The version it starts from; it yields the next one. */
  readonly from: number;
  /** What changed, for whoever reads the list. */
  readonly what: string;
  /** A session of version `from` -> version `from + 1`, `version` apart; throws on what it cannot read. */
  readonly lift: (session: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** One entry for each version left behind, oldest first. Version 1 is the first. */
export const MIGRATIONS: readonly Migration[] = [];

export type Migrated =
  | { readonly ok: true; readonly session: Record<string, unknown> }
  | { readonly ok: false; readonly reason: 'newer' | 'unknown-version' | 'damaged' };

/** Throws unless the list runs without a gap up to `target`: a fault of the program, not of a file. */
export function checkMigrations(migrations: readonly Migration[], target: number): void {
  const first = target - migrations.length;
  for (const [i, { from }] of migrations.entries()) {
    if (from !== first + i) throw new Error(`migration ${i} starts from ${from}, not ${first + i}`);
  }
}

/** Lifts a session of any known version to `target`. */
export function migrate(
  session: Readonly<Record<string, unknown>>,
  migrations: readonly Migration[],
  target: number,
): Migrated {
  checkMigrations(migrations, target);
  const { version } = session;
  if (!Number.isInteger(version)) return { ok: false, reason: 'damaged' };
  const start = Number(version);
  if (start > target) return { ok: false, reason: 'newer' };
  const steps = migrations.filter(({ from }) => from >= start);
  if (start + steps.length !== target) return { ok: false, reason: 'unknown-version' };
  try {
    const lifted = steps.reduce<Record<string, unknown>>(
      (older, { from, lift }) => ({ ...lift(older), version: from + 1 }),
      { ...session },
    );
    return { ok: true, session: lifted };
  } catch {
    return { ok: false, reason: 'damaged' };
  }
}
