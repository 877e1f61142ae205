/** Drawings made from the session: the rail. */
// The tracing itself is fetched apart, from ./profile/outline: the first picture does not wait for it.

export type {
  ChartContent,
  ChartFraming,
  ChartLens,
  ChartPicture,
  ChartSpan,
  ChartZone,
} from './plan/chart';
export type { DrawingProps } from './plan/DrawingSheet';
export { FromAbove } from './plan/FromAbove';
export { FromSide } from './plan/FromSide';
export { figureOf } from './plan/figure';
export { type ChartProps, OneStandpointChart } from './plan/OneStandpointChart';
export { A4_FREE, PRINT_REM, PRINT_SCALES } from './plan/print';
export type {
  Move,
  Moved,
  MovePhase,
  PlanActions,
  PlanContent,
  PlanFigure,
  PlanLight,
  PlanPicture,
  PlanStep,
  PlanThing,
} from './plan/types';
export { PLAN_WORDS, type PlanWords } from './plan/words';
export type { ProfileOutline } from './profile/outline';
export { Rail, type RailProps } from './rail/Rail';
export { type FrameSpan, frameAtEyePlane } from './rail/sight';
export type { FocusMark, RailContent, RailPicture, RailRoom } from './rail/types';
export type { ScaleKind } from './scale';
