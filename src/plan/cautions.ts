/** Which of the usual cautions a set-up calls for; their words stand elsewhere. Local rules come first. */
import type { PlanPerson, Setting } from './types';

export const CAUTIONS = [
  'close-to-face',
  'raised-camera',
  'stands-and-cables',
  'light-near-eyes',
  'child',
  'steps',
] as const;
export type Caution = (typeof CAUTIONS)[number];

/** Nearer to a face than this a lens is close; common practice, no source. Metres. */
const CLOSE = 0.5;
/** A camera higher than this over the floor is not held standing; common practice, no source. */
const RAISED = 1.8;
/** A source nearer to the eyes than this is near. Common practice, no source. */
const NEAR_LIGHT = 1;

export interface SetUp {
  readonly setting: Pick<Setting, 'noseClearance' | 'lensHeight'>;
  readonly people: readonly (PlanPerson & {
    readonly child?: boolean;
    readonly raised?: boolean;
  })[];
  /** From each source that is on to the nearest eyes. */
  readonly lights: readonly number[];
}

/** In the order in which they are told. */
export function cautionsFor({ setting, people, lights }: SetUp): Caution[] {
  const calls: Record<Caution, boolean> = {
    'close-to-face': setting.noseClearance < CLOSE,
    'raised-camera': setting.lensHeight > RAISED,
    'stands-and-cables': lights.length > 0,
    'light-near-eyes': lights.some((way) => way < NEAR_LIGHT),
    child: people.some(({ child }) => child === true),
    steps: people.some(({ raised }) => raised === true),
  };
  return CAUTIONS.filter((each) => calls[each]);
}
