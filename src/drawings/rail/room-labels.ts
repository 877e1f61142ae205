/** Places the texts inside the room's drawing, and the nearest-focus marks beside theirs. */
import type { Letter } from '../../session/types';
import { type Box, type Point, type Segment, segmentsOf } from '../geometry';
import { placeLabels } from '../labels';
import type { MeasureText } from '../text-width';
import { type RailGround, TYPE } from './ground';
import type { HandlePlace } from './handles';
import { gatherFocus } from './marks';
import type { RailContent } from './types';
import {
  figureBox,
  focusId,
  focusWish,
  reasonId,
  reasonWishes,
  roomWishes,
  wallWish,
} from './wishes';

/** A nearest focus: a bracket, open towards the distances that are sharp. */
export interface FocusPlace {
  readonly letters: readonly Letter[];
  readonly x: number;
  /** Middle and half height of the bracket. */
  readonly y: number;
  readonly half: number;
}

interface Drawn {
  readonly handles: readonly HandlePlace[];
  readonly lines: readonly Segment[];
}

/** Places the texts of the room's drawing; those of the narrow rail stand in the note instead. */
export function placeRailLabels(
  content: RailContent,
  ground: RailGround,
  measure: MeasureText,
  { handles, lines }: Drawn,
) {
  const { rem, band, scale } = ground;
  const lineHeight = 1.3 * TYPE.note * rem;
  const half = 0.55 * rem;
  const groups = gatherFocus(content.focus, ground.extent.to);
  const figure = figureBox(content, ground);
  const stems = handles.flatMap(({ stem }) => segmentsOf(stem));
  const wishes = ground.narrow
    ? []
    : [
        ...reasonWishes(handles, ground),
        ...roomWishes(content, ground, figure),
        ...groups.map((group) => focusWish(group, handles, ground, content)),
        wallWish(content, ground),
      ];
  const labels = placeLabels(wishes, {
    bounds: { x: 0, y: band.y, width: ground.width, height: ground.line - band.y },
    solid: [
      figure,
      ...wallBoxes(content, ground),
      ...handles.flatMap(({ tab, value, pupil }) => [tab, value.box, around(pupil, 0.4 * rem)]),
    ],
    lines: [
      ...lines,
      ...stems,
      upright(ground, content.room.cameraWall - content.room.behindCamera),
      ...groups.map(({ distance }) => upright(ground, distance)),
    ],
    widthOf: (text) => measure(text, TYPE.note * rem),
    lineHeight,
    gap: 0.2 * rem,
  });
  const middle = (id: string): number | null => {
    const box = labels.find((label) => label.id === id)?.box;
    return box ? box.y + box.height / 2 : null;
  };
  return {
    labels,
    focus: groups.map((group) => ({
      letters: group.letters,
      x: scale.toX(group.distance),
      y: middle(focusId(group.distance)) ?? band.y + band.height - half - 2,
      half,
    })),
    reasonsLeft: handles.flatMap(({ letter, picture: { reason } }) =>
      reason && middle(reasonId(letter)) === null ? [{ letter, text: reason }] : [],
    ),
  };
}

/** The backdrop and the walls. */
function wallBoxes({ room }: RailContent, { scale, band }: RailGround): Box[] {
  return [-(room.rearWall ?? room.backdrop), -room.backdrop, room.cameraWall].map((distance) => ({
    x: scale.toX(distance),
    y: band.y,
    width: 0,
    height: band.height,
  }));
}

/** The room's whole height at a distance. */
function upright({ scale, band }: RailGround, distance: number): Segment {
  const x = scale.toX(distance);
  return [
    { x, y: band.y },
    { x, y: band.y + band.height },
  ];
}

function around({ x, y }: Point, half: number): Box {
  return { x: x - half, y: y - half, width: 2 * half, height: 2 * half };
}
