/** What can be moved in the drawing from the side. */
import { grow, type Point, type Segment } from '../geometry';
import { TARGET } from '../rail/ground';
import { boxAbout, type GripPlace } from './grips';
import type { CameraSide, SideGround } from './side';
import type { TabPlace } from './tabs';
import type { PlanContent } from './types';
import type { PlanWords } from './words';

interface Drawn {
  readonly ground: SideGround;
  readonly backdrop: Segment;
  readonly cameras: readonly CameraSide[];
  readonly tabs: readonly TabPlace[];
}

const EAST: Point = { x: 1, y: 0 };
const UP: Point = { x: 0, y: -1 };

export function gripsSide(content: PlanContent, drawn: Drawn, words: PlanWords): GripPlace[] {
  const { moves, units, room } = content;
  const { ground: g, backdrop, cameras, tabs } = drawn;
  const { names, values } = words;
  const say = (metres: number) => words.spoken(metres, units);
  const pxPerMetre = g.pxPerMetre;
  const grips: GripPlace[] = [];
  const [upper, lower] = backdrop;
  if (moves.backdrop) {
    const box = { x: lower.x - 12, y: upper.y + 12, width: 24, height: lower.y - upper.y - 12 };
    grips.push({
      id: 'backdrop',
      what: { kind: 'backdrop' },
      axes: [
        {
          name: names.backdrop,
          value: room.backdrop.offWall,
          move: moves.backdrop,
          way: EAST,
          spoken: values.offWall(say(room.backdrop.offWall)),
        },
      ],
      pxPerMetre,
      targets: [box],
      ring: { ...box, x: lower.x - 6, width: 12 },
      near: { x: lower.x, y: (upper.y + lower.y) / 2 },
    });
  }
  if (moves.backdropTop) {
    grips.push({
      id: 'backdrop-top',
      what: { kind: 'backdrop-top' },
      axes: [
        {
          name: names.backdropTop,
          value: room.backdrop.top,
          move: moves.backdropTop,
          way: UP,
          spoken: values.aboveFloor(say(room.backdrop.top)),
        },
      ],
      pxPerMetre,
      targets: [boxAbout(upper, TARGET, 0.55 * TARGET)],
      ring: boxAbout(upper, 18, 12),
      near: upper,
    });
  }
  const first = content.people[0];
  if (moves.sitter) {
    const height = ((first?.crown ?? 0.12) - g.floor) * pxPerMetre;
    const eyes = g.place(0, 0);
    const box = {
      x: eyes.x - TARGET / 2 - 0.08 * pxPerMetre,
      y: eyes.y - (first?.crown ?? 0.12) * pxPerMetre,
      width: TARGET,
      height,
    };
    grips.push({
      id: 'sitter',
      what: { kind: 'sitter' },
      axes: [
        {
          name: names.sitter,
          value: room.sitterBefore,
          move: moves.sitter,
          way: EAST,
          spoken: values.beforeBackdrop(say(room.sitterBefore)),
        },
      ],
      pxPerMetre,
      targets: [box],
      ring: box,
      near: { x: eyes.x, y: box.y },
    });
  }
  for (const { picture, pupil } of [...cameras].sort((a, b) =>
    a.picture.letter.localeCompare(b.picture.letter),
  )) {
    const { letter, move, lift, standpoint, camera } = picture;
    const height = camera.position[1] - g.floor;
    const nearest = Math.min(
      TARGET,
      ...cameras.filter((c) => c.picture !== picture).map((c) => Math.abs(c.pupil.x - pupil.x)),
    );
    if (lift) {
      grips.push({
        id: `lens-${letter}`,
        what: { kind: 'lens', letter },
        axes: [
          {
            name: names.lens(letter),
            value: height,
            move: lift,
            way: UP,
            spoken: values.aboveFloor(say(height)),
          },
        ],
        pxPerMetre,
        targets: [boxAbout(pupil, Math.max(14, nearest), 0.7 * TARGET)],
        ring: boxAbout(pupil, 1.3 * g.rem),
        near: pupil,
      });
    }
    const tab = tabs.find((place) => place.letter === letter);
    if (move && tab) {
      grips.push({
        id: `camera-${letter}`,
        what: { kind: 'camera', letter },
        axes: [
          {
            name: names.camera(letter),
            value: standpoint,
            move,
            way: EAST,
            spoken: values.fromEyes(say(standpoint)),
          },
        ],
        pxPerMetre,
        targets: [tab.target],
        ring: grow(tab.tab, 3),
        near: pupil,
      });
    }
  }
  return grips;
}
