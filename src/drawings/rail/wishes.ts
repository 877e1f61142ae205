/** Where each text of the room's drawing would like to stand, best first. */
import type { Letter } from '../../session/types';
import type { Box } from '../geometry';
import type { LabelWish } from '../labels';
import type { RailGround } from './ground';
import type { HandlePlace } from './handles';
import { sharesFrame } from './marks';
import type { FocusGroup, RailContent } from './types';
import { focusText, frameTexts, keptTexts, showDistance, splitInTwo } from './words';

/** Farthest that a stem may part a mark from its text, rem. */
const NEAR = 4;
/** Gap between a mark and its text, rem. */
const GAP = 0.5;

export const focusId = (distance: number): string => `focus ${distance}`;
export const reasonId = (letter: Letter): string => `reason ${letter}`;

/** The figure with its frame, in the drawing. */
export function figureBox({ figure }: RailContent, { origin, pxPerMetre, cut }: RailGround): Box {
  const back = figure?.back ?? 0;
  const front = Math.max(figure?.front ?? 0, 0.02);
  const crown = figure?.crown ?? 0;
  return {
    x: origin.x + back * pxPerMetre,
    y: origin.y - crown * pxPerMetre,
    width: (front - back) * pxPerMetre,
    height: (crown - cut) * pxPerMetre,
  };
}

/** Heights for a text of that height: at the axis first, then away from it in turn. */
function besideAxis({ band, origin, rem }: RailGround, height: number): number[] {
  const step = 0.3 * rem;
  const first = origin.y - height - 0.15 * rem;
  const count = Math.ceil(band.height / step);
  return Array.from({ length: 2 * count }, (_, i) =>
    i % 2 === 0 ? first - (i / 2) * step : origin.y + 0.15 * rem + ((i - 1) / 2) * step,
  ).filter((y) => y >= band.y && y + height <= band.y + band.height);
}

/** Heights from the foot of the room upwards. */
function fromFoot({ band, rem }: RailGround, height: number): number[] {
  const step = 0.3 * rem;
  const foot = band.y + band.height - height - 0.35 * rem;
  const count = Math.max(0, Math.floor((foot - band.y) / step) + 1);
  return Array.from({ length: count }, (_, i) => foot - i * step);
}

/** A reason stands beside its tab; where there is no room, over it and with its letter. */
export function reasonWishes(handles: readonly HandlePlace[], ground: RailGround): LabelWish[] {
  const { tab, rem } = ground;
  return handles.flatMap(({ letter, tab: body, value, picture: { reason } }): LabelWish[] => {
    if (!reason) return [];
    const right = Math.max(body.x + body.width, value.box.x + value.box.width) + GAP * rem;
    const left = Math.min(body.x, value.box.x) - GAP * rem;
    const named = `${letter}: ${reason}`;
    return [
      {
        id: reasonId(letter),
        texts: [[reason], splitInTwo(reason)],
        align: 'left',
        optional: true,
        places: (width, height) => {
          const y = tab.top + tab.height / 2 - height / 2;
          return [right, left - width].map((x) => ({ x, y }));
        },
      },
      {
        id: reasonId(letter),
        texts: [[named], splitInTwo(named)],
        align: 'left',
        places: (width, height) =>
          fromFoot(ground, height).flatMap((y) =>
            [body.x + body.width, body.x - width].map((x) => ({ x, y })),
          ),
      },
    ];
  });
}

export function roomWishes(content: RailContent, ground: RailGround, figure: Box): LabelWish[] {
  const { room, units } = content;
  const { scale, rem } = ground;
  const keptFrom = scale.toX(room.cameraWall - room.behindCamera);
  const keptTo = scale.toX(room.cameraWall);
  const backdrop = scale.toX(-room.backdrop);
  const kept: LabelWish = {
    id: 'kept',
    texts: keptTexts(content),
    align: 'middle',
    places: (width, height) => {
      const ys = besideAxis(ground, height);
      const inside = keptTo - keptFrom > width + GAP * rem;
      return ys.map((y) => ({
        x: inside ? (keptFrom + keptTo - width) / 2 : keptFrom - width - GAP * rem,
        y,
      }));
    },
  };
  return [
    {
      id: 'frame',
      texts: frameTexts(content, sharesFrame(content)),
      align: 'right',
      places: (width, height) =>
        besideAxis(ground, height).map((y) => ({ x: figure.x - width - GAP * rem, y })),
    },
    ...(room.behindCamera > 0 ? [kept] : []),
    {
      id: 'backdrop',
      texts: [
        [`backdrop, ${showDistance(room.backdrop, units)} behind`],
        ['backdrop,', `${showDistance(room.backdrop, units)} behind`],
        ['backdrop', showDistance(room.backdrop, units)],
      ],
      align: 'left',
      places: (_, height) => {
        const below = ground.band.y + ground.band.height + 0.3 * rem;
        return [...fromFoot(ground, height), below].map((y) => ({ x: backdrop + GAP * rem, y }));
      },
    },
  ];
}

export function focusWish(
  group: FocusGroup,
  handles: readonly HandlePlace[],
  ground: RailGround,
  { units }: RailContent,
): LabelWish {
  const { scale, rem } = ground;
  const x = scale.toX(group.distance);
  return {
    id: focusId(group.distance),
    texts: [[focusText(group, units)], splitInTwo(focusText(group, units))],
    align: 'left',
    letters: group.letters,
    places: (width, height) => {
      const gap = GAP * rem;
      const beside = x + Math.min(width, NEAR * rem);
      const crossed = handles.filter((handle) => handle.x > x && handle.x < beside);
      const starts = [x + gap, ...crossed.map((handle) => handle.x + 1.5 * gap), x - width - gap];
      return starts.flatMap((start) => besideAxis(ground, height).map((y) => ({ x: start, y })));
    },
  };
}

/** Last, where there is room: how long the room is. */
export function wallWish({ room, units }: RailContent, ground: RailGround): LabelWish {
  const wall = ground.scale.toX(room.cameraWall);
  return {
    id: 'wall',
    texts: [[`wall, ${showDistance(room.cameraWall, units)}`]],
    align: 'right',
    optional: true,
    places: (width, height) =>
      fromFoot(ground, height).map((y) => ({ x: wall - width - GAP * ground.rem, y })),
  };
}
