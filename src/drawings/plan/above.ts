/** The room from above as places and paths: a pure function of what it is told. */
import { type Point, type Segment, segmentsOf } from '../geometry';
import type { PlacedLabel } from '../labels';
import { gatherFocus } from '../rail/marks';
import type { FocusGroup } from '../rail/types';
import { dimensionsAbove } from './above-dimensions';
import { gripsAbove } from './above-grips';
import { type AboveLabels, labelAbove } from './above-labels';
import type { DimensionPlace } from './dimension';
import { fieldAt, fieldEnds, pupilOnFloor, sharpOnFloor } from './field';
import { ellipseAbove, turned } from './figure';
import { cutOutline, type FloorPlan, floorPlan, type OnFloor } from './floor';
import type { GripPlace } from './grips';
import { type Ground, ground } from './sheet';
import { placeTabs, type TabPlace } from './tabs';
import type { PlanContent, PlanLight, PlanPicture, PlanSheet } from './types';
import type { PlanWords } from './words';

/** The room on the sheet. */
export interface AboveGround extends Ground {
  readonly floor: FloorPlan;
  /** Floor coordinates, or the sitter's x and z -> sheet. */
  place(at: readonly [x: number, y: number]): Point;
  placeOwn(at: OnFloor): Point;
  /** Unit vectors on the sheet: along the axis to the camera, and to the sitter's left. */
  readonly along: Point;
  readonly left: Point;
}

export interface CameraAbove {
  readonly picture: PlanPicture;
  readonly pupil: Point;
  readonly sensor: readonly Point[];
  readonly body: readonly Point[];
  readonly sight: readonly Segment[];
  readonly field: Segment;
  readonly used: Segment;
  /** Width of the field at the backdrop, metres, and the angle of view across, radians. */
  readonly width: number;
  readonly angle: number;
  /** Arc between the edges of the field at the pupil. */
  readonly arc: Segment;
  readonly radius: number;
  readonly sharp: readonly Point[] | null;
}

export interface LightAbove {
  readonly light: PlanLight;
  readonly box: readonly Point[];
  readonly front: Segment;
  readonly stand: Point;
  readonly toFace: Segment;
}

export interface PersonAbove {
  readonly id: string;
  readonly shoulders: readonly Point[];
  readonly head: readonly Point[];
  readonly nose: readonly Point[];
}

export interface AboveLayout extends AboveLabels {
  readonly ground: AboveGround;
  readonly kept: readonly Point[];
  readonly backdrop: Segment;
  readonly cameras: readonly CameraAbove[];
  readonly people: readonly PersonAbove[];
  readonly lights: readonly LightAbove[];
  readonly axis: Segment;
  readonly eyes: Point;
  readonly focus: readonly FocusAbove[];
  readonly dimensions: readonly DimensionPlace[];
  readonly tabs: readonly TabPlace[];
  readonly grips: readonly GripPlace[];
  readonly labels: readonly PlacedLabel[];
}

export interface FocusAbove extends FocusGroup {
  readonly path: readonly Point[];
}

export function aboveGround(content: PlanContent, sheet: PlanSheet): AboveGround {
  const { room } = content;
  const floor = floorPlan(room);
  const g = ground(
    content,
    sheet,
    { length: room.length, height: room.width },
    {
      left: room.axis === 'across' ? 1 : 2,
      top: 1,
      right: 1,
      bottom: room.axis === 'across' ? 1 : 0,
    },
  );
  const [dx, dy] = floor.towards;
  const place = ([x, y]: readonly [number, number]): Point => ({
    x: g.room.x + x * g.pxPerMetre,
    y: g.room.y + (room.width - y) * g.pxPerMetre,
  });
  return {
    ...g,
    floor,
    place,
    placeOwn: (at) => place(floor.toFloor(at)),
    along: { x: dx, y: -dy },
    left: { x: -dy, y: -dx },
  };
}

export function layoutAbove(content: PlanContent, sheet: PlanSheet, words: PlanWords): AboveLayout {
  const g = aboveGround(content, sheet);
  const { floor } = g;
  const { room } = content;
  const from = floor.leaves - room.behindCamera;
  const cameras = content.pictures.map((picture) => cameraAbove(picture, g));
  const people = content.people.map((person): PersonAbove => {
    const head = person.bodyTurn + person.headTurn;
    const half = 0.3 * person.head.breadth;
    return {
      id: person.id,
      shoulders: ellipseAbove(person, person.shoulders, person.bodyTurn).map(g.placeOwn),
      head: ellipseAbove(person, person.head, head).map(g.placeOwn),
      nose: [
        turned(person.eyes, -0.3 * half, person.nose - 0.6 * half, head),
        turned(person.eyes, 0, person.nose, head),
        turned(person.eyes, 0.3 * half, person.nose - 0.6 * half, head),
      ].map(g.placeOwn),
    };
  });
  const { behind, half } = floor.backdrop;
  const tabs = placeTabs(
    cameras.map(({ picture: { letter }, pupil }) => ({ letter, at: pupil })),
    g.along,
    g.left,
    g.rem,
    { x: 0, y: 0, width: g.width, height: g.foot },
  );
  const drawn = {
    ground: g,
    kept: room.behindCamera > 0 ? cutOutline(floor.walls, ([, z]) => z - from).map(g.placeOwn) : [],
    backdrop: [g.placeOwn([-half, -behind]), g.placeOwn([half, -behind])] as const,
    cameras,
    people,
    lights: content.lights.map((light) => lightAbove(light, g)),
    axis: [g.placeOwn([0, -behind]), g.placeOwn([0, floor.leaves])] as const,
    eyes: g.placeOwn([0, 0]),
    focus: focusAbove(content, g),
    tabs,
  };
  const dimensions = dimensionsAbove(content, g, sheet, words);
  const grips = gripsAbove(content, drawn, words);
  return {
    ...drawn,
    dimensions: dimensions.places,
    grips,
    ...labelAbove(content, sheet, words, {
      ...drawn,
      dimensions: dimensions.places,
      grips,
      lines: [
        ...cameras.flatMap(({ sight, field }) => [...sight, field]),
        ...people.flatMap(({ shoulders }) => segmentsOf(shoulders)),
        ...dimensions.places.map(({ line }) => line),
        drawn.backdrop,
      ],
      left: dimensions.left,
    }),
  };
}

/** Radius of the arc that shows the angle of view, rem. */
const ARC = 1.7;
/** Half the drawn width of a camera's body, and of a lens, metres. */
const BODY = 0.075;
const BARREL = 0.035;

function cameraAbove(picture: PlanPicture, g: AboveGround): CameraAbove {
  const [x, z] = pupilOnFloor(picture);
  const { behind } = g.floor.backdrop;
  const ends = fieldEnds(picture, g.floor);
  const pupil = g.placeOwn([x, z]);
  const sensor = z + picture.toSensor;
  const [right, left] = fieldAt(picture, z);
  const [usedRight, usedLeft] = fieldAt(picture, z + behind);
  const sharp = sharpOnFloor(picture, g.floor);
  const [a, b] = [usedRight, usedLeft].map((end) => Math.atan2(end[0] - x, z - end[1])) as [
    number,
    number,
  ];
  const radius = ARC * g.rem;
  const onArc = (angle: number): Point =>
    g.placeOwn([
      x + (radius / g.pxPerMetre) * Math.sin(angle),
      z - (radius / g.pxPerMetre) * Math.cos(angle),
    ]);
  const { half } = g.floor.backdrop;
  const onBackdrop = ([at]: OnFloor): OnFloor => [Math.min(half, Math.max(-half, at)), -behind];
  return {
    picture,
    pupil,
    sensor: [g.placeOwn([x - BODY, sensor]), g.placeOwn([x + BODY, sensor])],
    body: [
      g.placeOwn([x - BARREL, z]),
      g.placeOwn([x - BARREL, sensor]),
      g.placeOwn([x + BARREL, sensor]),
      g.placeOwn([x + BARREL, z]),
    ],
    sight: ends.map((end): Segment => [pupil, g.placeOwn(end)]),
    field: [g.placeOwn(right), g.placeOwn(left)],
    used: [g.placeOwn(onBackdrop(usedRight)), g.placeOwn(onBackdrop(usedLeft))],
    width: usedLeft[0] - usedRight[0],
    angle: b - a,
    arc: [onArc(a), onArc(b)],
    radius,
    sharp: sharp?.map(g.placeOwn) ?? null,
  };
}

/** Depth of a soft box behind its front, as a share of its side; its back is narrower. */
const DEPTH = 0.3;
const BACK = 0.35;

function lightAbove(light: PlanLight, g: AboveGround): LightAbove {
  const at = g.place([light.x, light.y]);
  const eyes = g.placeOwn([0, 0]);
  const way = Math.hypot(eyes.x - at.x, eyes.y - at.y) || 1;
  const to = { x: (eyes.x - at.x) / way, y: (eyes.y - at.y) / way };
  const size = light.size * g.pxPerMetre;
  const corner = (side: number, back: number): Point => ({
    x: at.x - side * size * to.y - back * size * to.x,
    y: at.y + side * size * to.x - back * size * to.y,
  });
  return {
    light,
    box: [corner(-0.5, 0), corner(0.5, 0), corner(BACK / 2, DEPTH), corner(-BACK / 2, DEPTH)],
    front: [corner(-0.5, 0), corner(0.5, 0)],
    stand: corner(0, DEPTH),
    toFace: [at, eyes],
  };
}

/** A bracket across the axis where a lens's nearest focus lets it stand. */
function focusAbove({ focus }: PlanContent, g: AboveGround): FocusAbove[] {
  const [side, hook] = [0.65 * g.rem, 0.25 * g.rem];
  return gatherFocus(focus, g.floor.leaves).map((group) => {
    const at = g.placeOwn([0, group.distance]);
    const corner = (across: number, along: number): Point => ({
      x: at.x + across * g.left.x + along * g.along.x,
      y: at.y + across * g.left.y + along * g.along.y,
    });
    return {
      ...group,
      path: [corner(side, hook), corner(side, 0), corner(-side, 0), corner(-side, hook)],
    };
  });
}
