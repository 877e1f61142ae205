/** Charts of a reading over distance. */
export { DistanceChart } from './DistanceChart';
export type { ChartScale, Curve, DistanceChart as ChartContent } from './types';
