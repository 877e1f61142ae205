/** Drawings of the plan: the room from above and from the side, and one standpoint as a chart. Fetched with the plan. */

export type { ProfileOutline } from '../profile/outline';
export type {
  ChartContent,
  ChartFraming,
  ChartLens,
  ChartPicture,
  ChartSpan,
  ChartZone,
} from './chart';
export type { DrawingProps } from './DrawingSheet';
export { FromAbove } from './FromAbove';
export { FromSide } from './FromSide';
export { figureOf } from './figure';
export { type ChartProps, OneStandpointChart } from './OneStandpointChart';
export { A4_FREE, PRINT_REM, PRINT_SCALES } from './print';
export { pageScale, paperScale } from './sheet';
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
} from './types';
export { PLAN_WORDS, type PlanWords } from './words';
