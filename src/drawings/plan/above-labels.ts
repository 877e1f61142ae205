/** Texts of the drawing from above; what finds no place stands in the note under it. */

import { PERSONAL_DISTANCES } from '../../readings/proxemics';
import {
  type Box,
  boxInside,
  grow,
  intoBox,
  type Point,
  type Segment,
  segmentsOf,
} from '../geometry';
import { type LabelWish, type PlacedLabel, placeLabels } from '../labels';
import { splitInTwo } from '../rail/words';
import type { AboveGround, CameraAbove, FocusAbove, LightAbove, PersonAbove } from './above';
import type { DimensionPlace } from './dimension';
import { boxAbout, type GripPlace } from './grips';
import { boxOf, type Note, notesOf, ringWishes, type TextsWish } from './label-wishes';
import { TEXT } from './sheet';
import type { TabPlace } from './tabs';
import type { PlanContent, PlanPicture, PlanSheet } from './types';
import type { PlanWords } from './words';

export interface AboveLabels {
  readonly labels: readonly PlacedLabel[];
  readonly notes: readonly Note[];
}

interface Drawn {
  readonly ground: AboveGround;
  readonly kept: readonly Point[];
  readonly backdrop: Segment;
  readonly cameras: readonly CameraAbove[];
  readonly people: readonly PersonAbove[];
  readonly lights: readonly LightAbove[];
  readonly focus: readonly FocusAbove[];
  readonly tabs: readonly TabPlace[];
  readonly dimensions: readonly DimensionPlace[];
  readonly grips: readonly GripPlace[];
  readonly lines: readonly Segment[];
  readonly left: readonly PlanPicture[];
}

/** Breadth kept clear along the backdrop, pixels. */
const BEAD = 8;
/** Half the angle of the arcs of personal distance about the axis, radians. */
export const ARC = (65 * Math.PI) / 180;

/** Ends of the arc of a band, to the sitter's left and right. */
export function arcEnds(g: AboveGround, radius: number): readonly [Point, Point] {
  const [sin, cos] = [Math.sin(ARC), Math.cos(ARC)];
  return [g.placeOwn([radius * sin, radius * cos]), g.placeOwn([-radius * sin, radius * cos])];
}

/** Points of the arc inside the room, from its ends to the axis. */
function arcPoints(g: AboveGround, radius: number): Point[] {
  return [1, 0.8, 0.6, 0.4, 0.2].flatMap((share) =>
    [1, -1].flatMap((side) => {
      const at = g.placeOwn([
        side * radius * Math.sin(share * ARC),
        radius * Math.cos(share * ARC),
      ]);
      return boxInside({ ...at, width: 0, height: 0 }, g.room) ? [at] : [];
    }),
  );
}

/** Boxes along the backdrop, close enough that no text slips between them. */
function beads([a, b]: Segment): Box[] {
  const count = Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / BEAD) + 1;
  return Array.from({ length: count + 1 }, (_, i) => {
    const share = i / count;
    return boxAbout({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }, BEAD);
  });
}

export function labelAbove(
  content: PlanContent,
  { measure }: PlanSheet,
  words: PlanWords,
  drawn: Drawn,
): AboveLabels {
  const { units, room } = content;
  const { ground: g } = drawn;
  const { rem } = g;
  const say = (metres: number) => words.distance(metres, units);
  const gap = 0.5 * rem;
  const wish = (asked: TextsWish): LabelWish => ringWishes(asked, gap);

  const things = room.obstacles.map(({ id, name, x, y, length, width }) => {
    const [mx, my] = [x + length / 2, y + width / 2];
    return wish({
      id: `thing-${id}`,
      texts: name.includes(' ') ? [[name], splitInTwo(name)] : [[name]],
      at: g.place([mx, my]),
      or: [g.place([x + length, my]), g.place([x, my]), g.place([mx, y]), g.place([mx, y + width])],
      about: 'over',
    });
  });
  const reasons = drawn.grips.flatMap(({ id, axes, near, what }) =>
    axes.flatMap(({ move: { reason } }, i) =>
      reason
        ? [
            wish({
              id: `reason-${id}-${i}`,
              texts: [[reason], splitInTwo(reason)],
              at: near,
              ...(what.kind === 'camera' && { letters: [what.letter] }),
            }),
          ]
        : [],
    ),
  );
  const chosen = drawn.cameras.filter(
    ({ picture }) => content.chosen === null || picture.letter === content.chosen,
  );
  const told = chosen.slice(0, 1).flatMap(({ picture, sharp: zone, used, width, angle, arc }) => {
    const { letter, sharp } = picture;
    const [near, far] = sharp;
    const letters = [letter];
    const corner = zone?.[1];
    return [
      ...(corner
        ? [
            wish({
              id: `sharp-${letter}`,
              texts: words.sharp(letter, say(near), Number.isFinite(far) ? say(far) : null),
              at: corner,
              letters,
            }),
          ]
        : []),
      wish({
        id: `angle-${letter}`,
        texts: words.angle(letter, angle),
        at: arc[0],
        or: [arc[1]],
        letters,
      }),
      wish({
        id: `field-${letter}`,
        texts: words.field(letter, say(width)),
        at: used[0],
        or: [used[1]],
        letters,
      }),
    ];
  });
  // Its width is told by the dimension line: the name may be left out.
  const paper: LabelWish = {
    ...wish({
      id: 'backdrop',
      texts: [[words.backdrop]],
      at: drawn.backdrop[0],
      or: [drawn.backdrop[1]],
    }),
    optional: true,
  };
  const focus = drawn.focus.map(({ distance, letters, lenses, path }) =>
    wish({
      id: `focus-${distance}`,
      texts: words.focus([...letters, ...lenses], say(distance)),
      at: path[3] ?? { x: 0, y: 0 },
      ...(letters.length === 1 && { letters }),
    }),
  );
  const bands = PERSONAL_DISTANCES.flatMap(({ upTo }, i) => {
    if (!Number.isFinite(upTo) || upTo > g.floor.leaves) return [];
    const [at, ...or] = arcPoints(g, upTo);
    return at ? [wish({ id: `band-${i}`, texts: words.band(i, units), at, or })] : [];
  });
  const lights = drawn.lights.map(({ light, stand }) => {
    const at = g.place([light.x, light.y]);
    const walls = !boxInside({ ...at, width: 0, height: 0 }, g.room);
    const outside = walls ? 'walls' : light.height > room.ceiling ? 'ceiling' : null;
    return wish({
      id: `light-${light.id}`,
      texts: words.light(light.name, light.inPicture, light.shadedBy, outside),
      at: walls ? intoBox(at, g.room) : stand,
      clear: walls ? 0 : 0.3 * light.size * g.pxPerMetre,
    });
  });
  const kept = drawn.kept.length > 2 ? [keptWish()] : [];
  const wishes = [...things, ...reasons, ...told, ...focus, ...lights, ...kept, ...bands, paper];
  // A stand's bare name under the drawing would say nothing.
  const mute = new Set(
    drawn.lights
      .filter(({ light }, i) => lights[i]?.texts[0]?.join(' ') === light.name)
      .map(({ light }) => `light-${light.id}`),
  );
  const edges = [
    ...room.obstacles.map(({ x, y, length, width }) =>
      [
        [x, y],
        [x + length, y],
        [x + length, y + width],
        [x, y + width],
        [x, y],
      ].map(([px = 0, py = 0]) => g.place([px, py])),
    ),
    ...drawn.lights.map(({ box }) => box),
    ...(room.axis === 'along' ? [] : [drawn.kept]),
  ].flatMap(segmentsOf);
  const labels = placeLabels(wishes, {
    bounds: grow(g.room, -3),
    solid: [
      ...drawn.tabs.flatMap(({ tab, wedge, pupil }) => [tab, boxOf([...wedge, pupil])]),
      ...drawn.dimensions.map(({ box }) => box),
      ...drawn.people.map(({ head }) => boxOf(head)),
      ...beads(drawn.backdrop),
    ],
    lines: [...drawn.lines, ...edges],
    widthOf: (text) => measure(text, TEXT.note * rem),
    lineHeight: 1.25 * TEXT.note * rem,
    gap: 0.35 * rem,
  });
  return {
    labels,
    notes: [
      ...notesOf(
        wishes.filter((asked) => asked !== paper && !mute.has(asked.id)),
        labels,
      ),
      ...drawn.left.map(({ letter, standpoint }) => ({
        id: `standpoint-${letter}`,
        text: words.standpointOf(letter, say(standpoint)),
        letters: [letter],
      })),
    ],
  };

  /** In the strip, at its ends first; an upright strip takes the texts that are narrow enough. */
  function keptWish(): LabelWish {
    const box = boxOf(drawn.kept);
    const texts = words.kept(say(room.behindCamera));
    const upright = room.axis === 'along';
    const fitting = texts.filter((lines) =>
      lines.every((text) => measure(text, TEXT.note * rem) < box.width - 4),
    );
    const at = (share: number): Point =>
      upright
        ? { x: box.x + box.width / 2, y: box.y + share * box.height }
        : { x: box.x + share * box.width, y: box.y + box.height / 2 };
    const [first, ...or] = [0.12, 0.3, 0.88, 0.7, 0.5].map(at);
    return wish({
      id: 'kept',
      texts: upright && fitting.length > 0 ? fitting : texts,
      at: first ?? at(0.5),
      or,
      about: 'over',
    });
  }
}
