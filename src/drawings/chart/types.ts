/** What a chart of a reading over distance shows. */
import type { AxisUnit } from '../../readings/axis';
import type { Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';

export interface CurvePoint {
  /** Standpoint distance, metres. */
  readonly distance: number;
  /** SI; null where the reading has no value. */
  readonly value: number | null;
}

export interface Curve {
  readonly id: string;
  /** Whose it is. */
  readonly name: string;
  /** Rising in distance. */
  readonly points: readonly CurvePoint[];
}

/** even: a metre is as long everywhere; inverse: even in 1/d, where most curves are nearly straight. */
export type ChartScale = 'even' | 'inverse';

export interface DistanceChart {
  readonly units: Units;
  readonly scale: ChartScale;
  readonly reading: {
    readonly name: string;
    readonly axis: AxisUnit;
    /** As the table writes it. */
    readonly show: (value: number) => string;
  };
  readonly curves: readonly Curve[];
  /** The session's standpoints; each is a point of every curve. */
  readonly marks: readonly { readonly letter: Letter; readonly standpoint: number }[];
}
