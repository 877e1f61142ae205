/** Texts of the drawing from the side; what finds no place stands in the note under it. */
import { boxInside, grow, type Point, type Segment, segmentsOf } from '../geometry';
import { type LabelWish, type PlacedLabel, placeLabels } from '../labels';
import { splitInTwo } from '../rail/words';
import type { DimensionPlace } from './dimension';
import type { SideEdge } from './field';
import { boxAbout, type GripPlace } from './grips';
import { boxOf, type Note, notesOf, ringWishes, type TextsWish } from './label-wishes';
import { TEXT } from './sheet';
import type { CameraSide, SideGround } from './side';
import { SAME_HEIGHT } from './side-dimensions';
import type { LightSide } from './side-lights';
import type { TabPlace } from './tabs';
import type { PlanContent, PlanPicture, PlanSheet } from './types';
import type { PlanWords } from './words';

interface Drawn {
  readonly ground: SideGround;
  readonly backdrop: Segment;
  readonly kept: readonly Point[];
  readonly cameras: readonly CameraSide[];
  readonly lights: readonly LightSide[];
  readonly tabs: readonly TabPlace[];
  readonly dimensions: readonly DimensionPlace[];
}

export function labelSide(
  content: PlanContent,
  drawn: Drawn & { readonly grips: readonly GripPlace[] },
  { measure }: PlanSheet,
  words: PlanWords,
): { readonly labels: readonly PlacedLabel[]; readonly notes: readonly Note[] } {
  const { units, room } = content;
  const { ground: g, cameras, kept, backdrop, tabs, dimensions, grips } = drawn;
  const { rem } = g;
  const say = (metres: number) => words.distance(metres, units);
  const wish = (asked: TextsWish): LabelWish => ringWishes(asked, 0.5 * rem);
  const lettersOf = (letters: readonly PlanPicture['letter'][]) =>
    letters.length === 1 ? { letters } : {};

  const ending = (end: SideEdge['end'], id: string, texts: PlanWords['overBackdrop']) => {
    const found = cameras.flatMap(({ picture, edges }) =>
      edges
        .filter(({ edge }) => edge.end === end)
        .map(({ edge }) => ({ letter: picture.letter, at: edge.passes ?? edge.to })),
    );
    const [first] = found;
    if (!first) return [];
    const letters = found.map(({ letter }) => letter);
    return [wish({ id, texts: texts(letters), at: g.place(...first.at), ...lettersOf(letters) })];
  };
  const reasons = grips.flatMap(({ id, axes: [axis], near, what }) =>
    axis.move.reason
      ? [
          wish({
            id: `reason-${id}`,
            texts: [[axis.move.reason], splitInTwo(axis.move.reason)],
            at: near,
            ...('letter' in what && { letters: [what.letter] }),
          }),
        ]
      : [],
  );
  const sharp = cameras
    .filter(({ picture }) => (content.chosen ?? picture.letter) === picture.letter)
    .slice(0, 1)
    .flatMap(
      ({
        picture: {
          letter,
          sharp: [near, far],
        },
        sharp: zone,
      }) => {
        const at = zone?.[3];
        const or = zone?.[0];
        return at && or
          ? [
              wish({
                id: `sharp-${letter}`,
                texts: words.sharp(letter, say(near), Number.isFinite(far) ? say(far) : null),
                at,
                or: [or],
                letters: [letter],
              }),
            ]
          : [];
      },
    );
  const strip =
    kept.length > 0
      ? [0.12, 0.3, 0.75].map((share) =>
          g.place(g.leaves - room.behindCamera / 2, g.ceiling + share * (g.floor - g.ceiling)),
        )
      : [];
  const wide = room.behindCamera * g.pxPerMetre - 4;
  const keptTexts = words.kept(say(room.behindCamera));
  const fitting = keptTexts.filter((lines) =>
    lines.every((text) => measure(text, TEXT.note * rem) < wide),
  );
  const wishes = [
    ...reasons,
    ...ending('over-backdrop', 'over', words.overBackdrop),
    ...ending('ceiling', 'meets', words.meetsCeiling),
    wish({
      id: 'top',
      texts: words.backdropTop(say(room.backdrop.top)),
      at: { x: backdrop[0].x, y: backdrop[0].y + 0.6 * rem },
    }),
    ...sharp,
    // One outside the room is told in the drawing from above.
    ...drawn.lights
      .filter(({ centre }) => boxInside({ ...centre, width: 0, height: 0 }, g.room))
      .map(({ light: { id, name }, centre, long }) =>
        wish({ id: `light-${id}`, texts: [[name]], at: centre, clear: 0.7 * long }),
      ),
    ...(strip[0]
      ? [
          wish({
            id: 'kept',
            texts: fitting.length > 0 ? fitting : keptTexts,
            at: strip[0],
            or: strip.slice(1),
            about: 'over',
          }),
        ]
      : []),
  ];
  const figures = content.people.map(({ eyes: [, y, z], crown }) => {
    const upper = g.place(z, y + crown);
    const width = 0.3 * g.pxPerMetre;
    return {
      x: upper.x - 0.7 * width,
      y: upper.y,
      width,
      height: g.place(z, g.floor).y - upper.y,
    };
  });
  const labels = placeLabels(wishes, {
    bounds: grow(g.room, -3),
    solid: [
      ...tabs.flatMap(({ tab, wedge, pupil }) => [tab, boxOf([...wedge, pupil])]),
      ...dimensions.map(({ box }) => box).filter((box) => boxInside(box, g.room)),
      ...figures,
      boxAbout(backdrop[0], 14, 8),
    ],
    lines: [
      ...cameras.flatMap(({ edges, field, legs }) => [
        ...edges.map(({ line }) => line),
        field,
        ...legs,
      ]),
      ...dimensions.map(({ line }) => line),
      backdrop,
      ...segmentsOf(kept.slice(0, 1).concat(kept.slice(3))),
    ],
    widthOf: (text) => measure(text, TEXT.note * rem),
    lineHeight: 1.25 * TEXT.note * rem,
    gap: 0.35 * rem,
  });
  const untold = cameras.filter(
    ({ picture, pupil }) =>
      !dimensions.some(
        ({ id, line: [, to] }) =>
          id === `lens-${picture.letter}` ||
          (id.startsWith('lens-') && Math.abs(to.y - pupil.y) < SAME_HEIGHT * g.pxPerMetre),
      ),
  );
  return {
    labels,
    notes: [
      ...notesOf(wishes, labels),
      ...untold.map(({ picture: { letter, camera } }) => ({
        id: `lens-${letter}`,
        text: `${letter}: ${words.lensAt(say(camera.position[1] - g.floor))}`,
        letters: [letter],
      })),
    ],
  };
}
