/** What is wanted and asked of a sitting, brought into the legal ranges. */
import type { Asked } from '../plan/types';
import { clamp, LIMITS, type Range } from './limits';
import type { Group, Picture, PlanPart, PlanWanted } from './types';

const orNull = (value: number | null, range: Range): number | null =>
  value === null ? null : clamp(value, range);

function clampAsked(asked: Asked): Asked {
  const [a, b] = asked.fNumber;
  const [widest, smallest] = [clamp(a, LIMITS.fNumber), clamp(b, LIMITS.fNumber)];
  return {
    noseGain: orNull(asked.noseGain, LIMITS.askedNoseGain),
    rowDifference: orNull(asked.rowDifference, LIMITS.askedRowDifference),
    stretch: orNull(asked.stretch, LIMITS.askedStretch),
    personal: orNull(asked.personal, LIMITS.askedPersonal),
    clearance: orNull(asked.clearance, LIMITS.askedClearance),
    sharp: asked.sharp,
    fNumber: [Math.min(widest, smallest), Math.max(widest, smallest)],
    softness: orNull(asked.softness, LIMITS.askedSoftness),
    backdropMargin: orNull(asked.backdropMargin, LIMITS.askedBackdropMargin),
  };
}

const clampWanted = (wanted: PlanWanted): PlanWanted => ({
  ...wanted,
  frameHeight: orNull(wanted.frameHeight, LIMITS.frameHeight),
  eyesAt: clamp(wanted.eyesAt, LIMITS.eyesAt),
  cameraHeight: clamp(wanted.cameraHeight, LIMITS.cameraHeight),
});

const clampGroup = (group: Group): Group => ({
  ...group,
  rows: group.rows.map((row) => ({ ...row, spacing: clamp(row.spacing, LIMITS.personSpacing) })),
  rowSpacing: clamp(group.rowSpacing, LIMITS.rowSpacing),
  step: clamp(group.step, LIMITS.step),
});

/** A result is hung in a picture that hangs. */
export const clampPlan = (plan: PlanPart, pictures: readonly Picture[]): PlanPart => ({
  wanted: plan.wanted.map(clampWanted),
  asked: clampAsked(plan.asked),
  group: plan.group && clampGroup(plan.group),
  picture: pictures.some(({ letter }) => letter === plan.picture)
    ? plan.picture
    : (pictures.at(-1)?.letter ?? plan.picture),
});
