/** The dimension lines of the drawing from above. */
import type { Point } from '../geometry';
import { HATCH } from '../rail/ground';
import type { AboveGround } from './above';
import { type DimensionPlace, placeDimension } from './dimension';
import { pupilOnFloor } from './field';
import { ROW, TEXT } from './sheet';
import type { PlanContent, PlanPicture, PlanSheet } from './types';
import type { PlanWords } from './words';

/** From one row to the next, rem. */
const STEP = 1.4;
/** Under the room the text stands between line and wall, rem. */
const UNDER = 1.3;
/** Below this width of the room on the sheet one picture's distance is drawn and the others are noted. */
const CROWDED = 420;
/** A dimension line inside its row, from the row's outer edge: its text stands there, rem. */
const IN_ROW = 1.15;

/** Lines round the room, and the chain backdrop, sitter, cameras; pictures without a row are left over. */
export function dimensionsAbove(
  content: PlanContent,
  g: AboveGround,
  { measure }: PlanSheet,
  words: PlanWords,
): { readonly places: readonly DimensionPlace[]; readonly left: readonly PlanPicture[] } {
  const { room, units } = content;
  const { rem, floor } = g;
  const size = TEXT.dimension * rem;
  const say = (metres: number) => words.distance(metres, units);
  const corner = (x: number, y: number) => g.place([x, y]);
  const outside = (row: number) => HATCH + (row * ROW.dimension - IN_ROW) * rem;
  const put = (
    id: string,
    from: Point,
    to: Point,
    offset: Point,
    metres: number,
    rest: { letter?: PlanPicture['letter']; strong?: boolean } = {},
  ) => placeDimension({ id, from, to, offset, text: say(metres), ...rest }, size, measure);

  const places = [
    put(
      'length',
      corner(0, room.width),
      corner(room.length, room.width),
      { x: 0, y: -outside(1) },
      room.length,
    ),
    put(
      'width',
      corner(0, 0),
      corner(0, room.width),
      { x: -outside(room.axis === 'across' ? 1 : 2), y: 0 },
      room.width,
    ),
    backdropDimension(),
  ];

  // The chain runs on the sitter's right, clear of the shoulders where the room lets it.
  const { rows, shown, left } = chainRows(content, g);
  const at = (row: number): Point => {
    const way = rows.first + row * STEP * rem;
    return { x: -g.left.x * way, y: -g.left.y * way };
  };
  const eyes = g.placeOwn([0, 0]);
  const before = put(
    'before',
    g.placeOwn([0, -floor.backdrop.behind]),
    eyes,
    at(0),
    floor.backdrop.behind,
  );
  // A text that is too wide for its line stands beyond it, where the next line of the chain would be.
  const start = before.beyond ? 1 : 0;
  places.push(
    before,
    ...shown.map((picture, row) =>
      put(
        `standpoint-${picture.letter}`,
        eyes,
        g.placeOwn(pupilOnFloor(picture)),
        at(start + row),
        picture.standpoint,
        { letter: picture.letter, strong: true },
      ),
    ),
  );
  return { places, left };

  function backdropDimension(): DimensionPlace {
    const { behind, half } = floor.backdrop;
    const [a, b] = [g.placeOwn([-half, -behind]), g.placeOwn([half, -behind])];
    const back =
      room.axis === 'along'
        ? a.x - g.room.x + outside(1)
        : room.axis === 'across'
          ? g.room.y + g.room.height - a.y + HATCH + UNDER * rem
          : 1.9 * rem;
    return put('backdrop', a, b, { x: -g.along.x * back, y: -g.along.y * back }, 2 * half);
  }
}

function chainRows({ pictures, people, chosen }: PlanContent, g: AboveGround) {
  const { rem, floor, pxPerMetre } = g;
  const widest = Math.max(
    0.2,
    ...people
      .filter(({ eyes }) => Math.abs(eyes[0]) < 0.3)
      .map(({ eyes, shoulders }) => shoulders.breadth / 2 - eyes[0]),
  );
  const farthest = Math.max(0, ...pictures.map(({ standpoint }) => standpoint));
  const reach = Math.min(floor.reach(0).right, floor.reach(farthest).right) * pxPerMetre;
  const first = Math.max(1.2 * rem, Math.min(widest * pxPerMetre + rem, 0.5 * reach));
  const fit =
    g.room.width < CROWDED ? 1 : Math.max(1, Math.floor((reach - first) / (STEP * rem)) + 1);
  const order = [...pictures].sort(
    (a, b) =>
      Number(b.letter === chosen) - Number(a.letter === chosen) || a.standpoint - b.standpoint,
  );
  const shown = order.slice(0, fit).sort((a, b) => a.standpoint - b.standpoint);
  return { rows: { first }, shown, left: order.slice(fit) };
}
