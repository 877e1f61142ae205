/** The room from the side, cut along the camera's axis: a pure function of what it is told. */
import type { Point, Segment } from '../geometry';
import type { PlacedLabel } from '../labels';
import type { DimensionPlace } from './dimension';
import { type SideEdge, sideEdges } from './field';
import { floorPlan } from './floor';
import type { GripPlace } from './grips';
import type { Note } from './label-wishes';
import { type Ground, ground } from './sheet';
import { dimensionsSide } from './side-dimensions';
import { gripsSide } from './side-grips';
import { labelSide } from './side-labels';
import { type LightSide, lightSide } from './side-lights';
import { placeTabs, type TabPlace } from './tabs';
import type { PlanContent, PlanPicture, PlanSheet } from './types';
import type { PlanWords } from './words';

export interface SideGround extends Ground {
  /** The sitter's frame: z towards the camera, height above the eyes. */
  place(z: number, y: number): Point;
  readonly floor: number;
  readonly ceiling: number;
  readonly rear: number;
  readonly leaves: number;
}

export interface CameraSide {
  readonly picture: PlanPicture;
  readonly pupil: Point;
  readonly body: readonly Point[];
  readonly sensor: Segment;
  readonly legs: readonly Segment[];
  readonly edges: readonly { readonly edge: SideEdge; readonly line: Segment }[];
  readonly field: Segment;
  readonly sharp: readonly Point[] | null;
}

export interface SideLayout {
  readonly ground: SideGround;
  readonly backdrop: Segment;
  readonly kept: readonly Point[];
  readonly cameras: readonly CameraSide[];
  readonly lights: readonly LightSide[];
  readonly axis: Segment;
  readonly dimensions: readonly DimensionPlace[];
  readonly tabs: readonly TabPlace[];
  readonly grips: readonly GripPlace[];
  readonly labels: readonly PlacedLabel[];
  readonly notes: readonly Note[];
}

export function sideGround(content: PlanContent, sheet: PlanSheet): SideGround {
  const floor = floorPlan(content.room);
  const bottom = -content.eyeHeight;
  const { ceiling } = content.room;
  const g = ground(
    content,
    sheet,
    { length: floor.leaves - floor.enters, height: ceiling },
    { left: content.room.axis === 'across' ? 1 : 2, top: 0, right: 1, bottom: 1 },
  );
  return {
    ...g,
    floor: bottom,
    ceiling: bottom + ceiling,
    rear: floor.enters,
    leaves: floor.leaves,
    place: (z, y) => ({
      x: g.room.x + (z - floor.enters) * g.pxPerMetre,
      y: g.room.y + (bottom + ceiling - y) * g.pxPerMetre,
    }),
  };
}

export function layoutSide(content: PlanContent, sheet: PlanSheet, words: PlanWords): SideLayout {
  const g = sideGround(content, sheet);
  const { room, pictures } = content;
  const behind = room.sitterBefore;
  const top = g.floor + Math.min(room.backdrop.top, room.ceiling);
  const cameras = pictures.map((picture) => cameraSide(picture, g, behind, top));
  const from = g.leaves - room.behindCamera;
  const tabs = placeTabs(
    cameras.map(({ picture: { letter }, pupil }) => ({ letter, at: pupil })),
    { x: 1, y: 0 },
    { x: 0, y: -1 },
    g.rem,
    { x: 0, y: 0, width: g.width, height: g.foot },
  );
  const dimensions = dimensionsSide(content, g, cameras, sheet, words);
  const drawn = {
    ground: g,
    backdrop: [g.place(-behind, top), g.place(-behind, g.floor)] as const,
    kept:
      room.behindCamera > 0
        ? [
            g.place(from, g.ceiling),
            g.place(g.leaves, g.ceiling),
            g.place(g.leaves, g.floor),
            g.place(from, g.floor),
          ]
        : [],
    cameras,
    lights: content.lights.map((light) => lightSide(light, floorPlan(room), g)),
    axis: [g.place(-behind, 0), g.place(g.leaves, 0)] as const,
    tabs,
    dimensions,
  };
  const grips = gripsSide(content, drawn, words);
  return { ...drawn, grips, ...labelSide(content, { ...drawn, grips }, sheet, words) };
}

/** Height of a drawn camera's body, metres, and the spread of a stand's legs. */
const BODY = 0.06;
const BARREL = 0.032;
const LEGS = 0.26;
/** Where the legs leave the column, a share of the way up. */
const SHOULDER = 0.5;

function cameraSide(picture: PlanPicture, g: SideGround, behind: number, top: number): CameraSide {
  const [, y, z] = picture.camera.position;
  const { frustum, tilt } = picture.camera;
  const sensor = z + picture.toSensor;
  const edges = sideEdges(picture, {
    behind,
    top,
    floor: g.floor,
    ceiling: g.ceiling,
    rear: g.rear,
  });
  const mid = z + picture.toSensor / 2;
  const shoulder = g.floor + SHOULDER * (y - g.floor);
  const at = (depth: number, edge: number): Point => {
    const back = Math.cos(tilt) - edge * Math.sin(tilt);
    return g.place(z - depth, y + ((edge * Math.cos(tilt) + Math.sin(tilt)) / back) * depth);
  };
  const near = Math.max(0, picture.sharp[0]);
  const far = Math.min(z + behind, picture.sharp[1]);
  return {
    picture,
    pupil: g.place(z, y),
    body: [
      g.place(z, y - BARREL),
      g.place(sensor, y - BARREL),
      g.place(sensor, y + BARREL),
      g.place(z, y + BARREL),
    ],
    sensor: [g.place(sensor, y - BODY), g.place(sensor, y + BODY)],
    legs: [
      [g.place(mid, y - BARREL), g.place(mid, shoulder)],
      [g.place(mid, shoulder), g.place(mid - LEGS, g.floor)],
      [g.place(mid, shoulder), g.place(mid + LEGS, g.floor)],
      [g.place(mid, shoulder), g.place(mid, g.floor)],
    ],
    edges: edges.map((edge) => ({ edge, line: [g.place(...edge.from), g.place(...edge.to)] })),
    field: [at(z, frustum.top), at(z, frustum.bottom)],
    sharp:
      far > near
        ? [
            at(near, frustum.top),
            at(far, frustum.top),
            at(far, frustum.bottom),
            at(near, frustum.bottom),
          ]
        : null,
  };
}
