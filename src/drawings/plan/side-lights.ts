/** Light stands from the side: a soft box that faces the eyes is seen as an ellipse. */
import type { Point, Segment } from '../geometry';
import type { FloorPlan } from './floor';
import type { SideGround } from './side';
import type { PlanLight } from './types';

export interface LightSide {
  readonly light: PlanLight;
  readonly centre: Point;
  /** Half axes in pixels, and the turn of the longer one in degrees on the sheet. */
  readonly long: number;
  readonly short: number;
  readonly turn: number;
  readonly stand: readonly Segment[];
}

/** Half the spread of a stand's legs and their height, metres. */
const LEGS = { half: 0.2, height: 0.35 } as const;

/**
 * A disc whose normal is n keeps its diameter square to n in the drawing and is narrowed along it to the
 * share of n that points at the viewer: the sine of the angle between n and the plane of the drawing.
 */
export function lightSide(light: PlanLight, floor: FloorPlan, g: SideGround): LightSide {
  const [x, z] = floor.toSitter([light.x, light.y]);
  const y = g.floor + light.height;
  const way = Math.hypot(x, y, z) || 1;
  const centre = g.place(z, y);
  const radius = (light.size / 2) * g.pxPerMetre;
  const top = g.floor + Math.min(LEGS.height, light.height / 2);
  return {
    light,
    centre,
    long: radius,
    short: (radius * Math.abs(x)) / way,
    turn: (Math.atan2(z, y) * 180) / Math.PI,
    stand: [
      [centre, g.place(z, g.floor)],
      [g.place(z, top), g.place(z - LEGS.half, g.floor)],
      [g.place(z, top), g.place(z + LEGS.half, g.floor)],
    ],
  };
}
