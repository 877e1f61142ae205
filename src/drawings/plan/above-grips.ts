/** What can be moved in the drawing from above. */
import { intoBox, type Point, type Segment } from '../geometry';
import { TARGET } from '../rail/ground';
import type { AboveGround, LightAbove } from './above';
import { boxAbout, type GripAxis, type GripPlace } from './grips';
import type { TabPlace } from './tabs';
import type { Move, PlanContent } from './types';
import type { PlanWords } from './words';

interface Drawn {
  readonly ground: AboveGround;
  readonly tabs: readonly TabPlace[];
  readonly lights: readonly LightAbove[];
  readonly backdrop: Segment;
  readonly eyes: Point;
}

const EAST: Point = { x: 1, y: 0 };
const NORTH: Point = { x: 0, y: -1 };

export function gripsAbove(content: PlanContent, drawn: Drawn, words: PlanWords): GripPlace[] {
  const { units, moves, room } = content;
  const { ground: g, tabs, lights, backdrop, eyes } = drawn;
  const { names, values } = words;
  const say = (metres: number) => words.spoken(metres, units);
  const pxPerMetre = g.pxPerMetre;
  const onFloor = (
    name: string,
    [x, y]: readonly [number, number],
    [moveX, moveY]: readonly [Move, Move],
  ): readonly [GripAxis, GripAxis] => [
    {
      name: names.along(name),
      value: x,
      move: moveX,
      way: EAST,
      spoken: values.fromEndWall(say(x)),
    },
    {
      name: names.across(name),
      value: y,
      move: moveY,
      way: NORTH,
      spoken: values.fromSideWall(say(y)),
    },
  ];

  const obstacles = room.obstacles.flatMap((thing): GripPlace[] => {
    const move = moves.obstacles?.[thing.id];
    if (!move) return [];
    const corner = g.place([thing.x, thing.y + thing.width]);
    const box = { ...corner, width: thing.length * pxPerMetre, height: thing.width * pxPerMetre };
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    return [
      {
        id: `obstacle-${thing.id}`,
        what: { kind: 'obstacle', id: thing.id },
        axes: onFloor(thing.name, [thing.x, thing.y], move),
        pxPerMetre,
        targets: [boxAbout(middle, Math.max(TARGET, box.width), Math.max(TARGET, box.height))],
        ring: box,
        near: middle,
      },
    ];
  });

  const stands = lights.flatMap(({ light }): GripPlace[] => {
    if (!light.move) return [];
    // A stand outside the room is taken hold of at the wall; a huge soft box does not bar the drawing.
    const at = intoBox(g.place([light.x, light.y]), g.room);
    const size = Math.min(2 * TARGET, Math.max(TARGET, light.size * pxPerMetre));
    return [
      {
        id: `light-${light.id}`,
        what: { kind: 'light', id: light.id },
        axes: onFloor(light.name, [light.x, light.y], light.move),
        pxPerMetre,
        targets: [boxAbout(at, size)],
        ring: boxAbout(at, size),
        near: at,
      },
    ];
  });

  const paper: GripPlace[] = moves.backdrop
    ? [
        {
          id: 'backdrop',
          what: { kind: 'backdrop' },
          axes: [
            {
              name: names.backdrop,
              value: room.backdrop.offWall,
              move: moves.backdrop,
              way: g.along,
              spoken: values.offWall(say(room.backdrop.offWall)),
            },
          ],
          pxPerMetre,
          targets: [segmentBox(backdrop, TARGET)],
          ring: segmentBox(backdrop, 12),
          near: backdrop[0],
        },
      ]
    : [];

  const first = content.people[0];
  const half = Math.max(TARGET / 2, ((first?.shoulders.breadth ?? 0.4) / 2) * pxPerMetre);
  const before: GripAxis | null = moves.sitter
    ? {
        name: names.sitter,
        value: room.sitterBefore,
        move: moves.sitter,
        way: g.along,
        spoken: values.beforeBackdrop(say(room.sitterBefore)),
      }
    : null;
  const aside: GripAxis | null = moves.aside
    ? {
        name: names.aside,
        value: room.aside,
        move: moves.aside,
        way: g.left,
        spoken: values.aside(say(Math.abs(room.aside)), room.aside >= 0),
      }
    : null;
  const sitter: GripPlace[] = before
    ? [
        {
          id: 'sitter',
          what: { kind: 'sitter' },
          axes: aside ? [before, aside] : [before],
          pxPerMetre,
          targets: [boxAbout(eyes, 2 * half)],
          ring: boxAbout(eyes, 2 * half),
          near: { x: eyes.x, y: eyes.y - half },
        },
      ]
    : [];

  // Cameras last: they lie over the rest and are taken first.
  const cameras = [...tabs]
    .sort((a, b) => a.letter.localeCompare(b.letter))
    .flatMap(({ letter, tab, target, pupil }): GripPlace[] => {
      const picture = content.pictures.find((other) => other.letter === letter);
      if (!picture?.move) return [];
      return [
        {
          id: `camera-${letter}`,
          what: { kind: 'camera', letter },
          axes: [
            {
              name: names.camera(letter),
              value: picture.standpoint,
              move: picture.move,
              way: g.along,
              spoken: values.fromEyes(say(picture.standpoint)),
            },
          ],
          pxPerMetre,
          targets: [target, boxAbout(pupil, 0.5 * TARGET)],
          ring: { x: tab.x - 3, y: tab.y - 3, width: tab.width + 6, height: tab.height + 6 },
          near: pupil,
        },
      ];
    });
  return [...paper, ...obstacles, ...stands, ...sitter, ...cameras];
}

/** The upright box round a segment, at least so broad. */
function segmentBox([a, b]: Segment, least: number) {
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return boxAbout(
    middle,
    Math.max(least, Math.abs(a.x - b.x)),
    Math.max(least, Math.abs(a.y - b.y)),
  );
}
