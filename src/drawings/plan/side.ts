/** The room from the side, cut along the camera's axis: a pure function of what it is told. */
import { boxInside, grow, type Point, type Segment, segmentsOf } from '../geometry';
import { type LabelWish, type PlacedLabel, placeLabels } from '../labels';
import { HATCH, TARGET } from '../rail/ground';
import { type DimensionPlace, placeDimension } from './dimension';
import { type SideEdge, sideEdges } from './field';
import { floorPlan } from './floor';
import { boxAbout, type GripPlace } from './grips';
import { boxOf, type Note, notesOf, ringWishes, type TextsWish } from './label-wishes';
import { type Ground, ground, ROW, TEXT } from './sheet';
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

/** Lens heights closer than this share a line, metres. */
const SAME_HEIGHT = 0.005;

function dimensionsSide(
  content: PlanContent,
  g: SideGround,
  cameras: readonly CameraSide[],
  { measure }: PlanSheet,
  words: PlanWords,
): DimensionPlace[] {
  const { room, units, chosen } = content;
  const { rem } = g;
  const size = TEXT.dimension * rem;
  const say = (metres: number) => words.distance(metres, units);
  const under = HATCH + (ROW.dimension - 0.15) * rem;
  const put = (id: string, from: Point, to: Point, offset: Point, text: string) =>
    placeDimension({ id, from, to, offset, text }, size, measure);
  const shown: CameraSide[] = [];
  const order = [...cameras].sort(
    (a, b) => Number(b.picture.letter === chosen) - Number(a.picture.letter === chosen),
  );
  for (const camera of order) {
    const told = shown.some(
      ({ pupil: { x, y } }) =>
        Math.abs(y - camera.pupil.y) < SAME_HEIGHT * g.pxPerMetre ||
        Math.abs(x - camera.pupil.x) < 2.4 * rem,
    );
    if (!told) shown.push(camera);
  }
  return [
    put(
      'ceiling',
      g.place(g.leaves, g.floor),
      g.place(g.leaves, g.ceiling),
      { x: HATCH + 1.05 * rem, y: 0 },
      say(room.ceiling),
    ),
    put(
      'before',
      g.place(-room.sitterBefore, g.floor),
      g.place(0, g.floor),
      { x: 0, y: under },
      say(room.sitterBefore),
    ),
    ...shown.flatMap(({ picture: { letter, camera } }) => {
      const [, y, z] = camera.position;
      const height = say(y - g.floor);
      const fitting = [words.lensAt(height), height]
        .map((text) =>
          placeDimension(
            {
              id: `lens-${letter}`,
              from: g.place(z, g.floor),
              to: g.place(z, y),
              offset: { x: -1.2 * rem, y: 0 },
              text,
              letter,
            },
            size,
            measure,
          ),
        )
        .find(({ beyond }) => !beyond);
      return fitting ? [fitting] : [];
    }),
  ];
}

interface Drawn {
  readonly ground: SideGround;
  readonly backdrop: Segment;
  readonly kept: readonly Point[];
  readonly cameras: readonly CameraSide[];
  readonly tabs: readonly TabPlace[];
  readonly dimensions: readonly DimensionPlace[];
}

const EAST: Point = { x: 1, y: 0 };
const UP: Point = { x: 0, y: -1 };

function gripsSide(content: PlanContent, drawn: Drawn, words: PlanWords): GripPlace[] {
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

function labelSide(
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
            texts: [[axis.move.reason]],
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
