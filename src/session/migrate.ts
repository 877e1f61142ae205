/**
 * Sessions of older versions are lifted one version at a time, so that each step is written
 * once, when a version is left behind, and never touched again.
 */
import { isRecord } from './record';

export interface Migration {
  /** The version it starts from; it yields the next one. */
  readonly from: number;
  /** What changed, for whoever reads the list. */
  readonly what: string;
  /** A session of version `from` -> version `from + 1`, `version` apart; throws on what it cannot read. */
  readonly lift: (session: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** What an old session lacks: the field and what was expected there. */
class Lack extends TypeError {
  constructor(field: string, expected: string) {
    super(`${field}: expected ${expected}`);
  }
}

const record = (value: unknown, field: string): Record<string, unknown> => {
  if (!isRecord(value)) throw new Lack(field, 'an object');
  return value;
};
const list = (value: unknown, field: string): unknown[] => {
  if (!Array.isArray(value)) throw new Lack(field, 'a list');
  return value;
};
const number = (value: unknown, field: string): number => {
  if (typeof value !== 'number') throw new Lack(field, 'a number');
  return value;
};
const picturesOf = (value: unknown): Record<string, unknown>[] =>
  list(value, 'pictures').map((picture, i) => record(picture, `pictures.${i}`));

/** One entry for each version left behind, oldest first. Version 1 is the first. */
export const MIGRATIONS: readonly Migration[] = [
  {
    from: 1,
    what: 'one or two people with looks and gaze in place of one sitter; each picture names who is in it; four lights in place of the key',
    lift: ({ sitter, pictures, light, ...rest }) => {
      const { model, changes, pose } = record(sitter, 'sitter');
      const key = record(light, 'light');
      // The others stood, unseen, on the side away from the key.
      const side = typeof key.azimuth === 'number' && key.azimuth < 0 ? -1 : 1;
      return {
        ...rest,
        people: [
          {
            id: '1',
            model,
            changes,
            pose: { stance: 'standing', arms: 'hanging', lean: 0, ...record(pose, 'sitter.pose') },
            looks: {},
            // Eyes were fixed in the head.
            gaze: 'ahead',
          },
        ],
        beside: { right: 0.45, forward: 0 },
        light: {
          key: { ...key, strength: 1 },
          fill: { azimuth: side * -0.698, elevation: 0.209, strength: 1, softness: 0.8 },
          hair: { azimuth: side * -2.583, elevation: 0.628, strength: 1, softness: 0.2 },
          background: { azimuth: 0, elevation: -0.07, strength: 1, softness: 0.8 },
        },
        pictures: picturesOf(pictures).map((picture) => ({ of: ['1'], ...picture })),
      };
    },
  },
  {
    from: 2,
    what: 'kits of several bodies in place of one body and its lenses; own lenses; a room with sides; lights at a distance; the plan',
    lift: ({ body, lenses, light, room, ...rest }) => {
      const { backdrop, cameraWall, behindCamera } = record(room, 'room');
      const lamps = record(light, 'light');
      const crop = record(rest.crop, 'crop');
      const pictures = picturesOf(rest.pictures);
      // The backdrop was taken to hang 0.20 m off the wall.
      const length =
        0.2 + number(backdrop, 'room.backdrop') + number(cameraWall, 'room.cameraWall');
      return {
        ...rest,
        kits: [
          {
            id: 'kit-1',
            name: 'Kit',
            bodies: [{ id: 'body-1', name: 'Body', ...record(body, 'body') }],
            body: 'body-1',
            lenses,
          },
        ],
        kit: 'kit-1',
        ownLenses: [],
        // Where the lamps were drawn; their sizes are such that they stay as soft as they were.
        light: Object.fromEntries(
          Object.entries({ key: 2.2, fill: 3.7, hair: 2.1, background: 1.4 }).map(
            ([name, distance]) => {
              const { softness, ...lamp } = record(lamps[name], `light.${name}`);
              return [
                name,
                { ...lamp, distance, size: number(softness, `light.${name}.softness`) * distance },
              ];
            },
          ),
        ),
        room: {
          name: '',
          length,
          width: 4,
          ceiling: 2.6,
          axis: 'along',
          aside: 0,
          backdrop: { offWall: 0.2, width: 2.72, top: 2.3 },
          sitterBefore: backdrop,
          behindCamera,
          obstacles: [],
        },
        plan: {
          wanted: [
            {
              id: 'wanted-1',
              framing: crop.framing,
              frameHeight: crop.framing === null ? crop.frameHeight : null,
              orientation: crop.orientation,
              eyesAt: crop.eyesAt,
              cameraHeight: 0,
              of: '1',
            },
          ],
          asked: {
            noseGain: 0.08,
            rowDifference: 0.1,
            stretch: 0.1,
            personal: null,
            clearance: 0.3,
            sharp: 'eyes',
            fNumber: [1.4, 16],
            softness: null,
            backdropMargin: 0.05,
          },
          group: null,
          picture: pictures.at(-1)?.letter,
        },
      };
    },
  },
  {
    from: 3,
    what: 'kept comparisons, the standpoints of strips and tables, and the handout',
    // What it lacks is as usual.
    lift: (session) => ({ ...session }),
  },
];

export type Migrated =
  | { readonly ok: true; readonly session: Record<string, unknown> }
  | { readonly ok: false; readonly reason: 'newer' | 'unknown-version' | 'no-version' }
  /** `what` is the field and what was expected there. */
  | { readonly ok: false; readonly reason: 'damaged'; readonly what: string };

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
  if (!Number.isInteger(version)) return { ok: false, reason: 'no-version' };
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
  } catch (error) {
    return { ok: false, reason: 'damaged', what: (error as Error).message };
  }
}
