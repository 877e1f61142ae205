/**
 * What stands and hangs in the hall, at known depths before the end wall, clear of the strip straight
 * behind the sitter's head and of a backdrop that hangs by itself. Same origin as the shell.
 */
import { type BufferGeometry, PlaneGeometry, SphereGeometry } from 'three';
import type { Hall } from '../../session/hall';
import { bar, board, grey, join, type Place, piece, type Rgb, rod, type Shade } from './pieces';

const PLY: Rgb = [0.3, 0.225, 0.16];
const OAK: Rgb = [0.2, 0.145, 0.1];
const STEEL = grey(0.16);
const TRIM = grey(0.5);
const IRON = grey(0.42);

interface WindowPlan {
  readonly left: number;
  readonly right: number;
  readonly sill: number;
  readonly head: number;
}
const WINDOW: WindowPlan = { left: -1.86, right: -0.74, sill: 1.02, head: 2.5 };

/** Beside the axis towards the picture's left (-) and right, and from the end wall into the room. */
interface Ground {
  readonly from: number;
  readonly to: number;
  readonly before: number;
}

/** Room for a stand beside the sheet. */
const BESIDE_SHEET = 0.3;

/** Does it stand behind the sheet, or beside it? */
const clearOf = ({ sheet, behind }: Hall, { from, to, before }: Ground): boolean =>
  sheet === null ||
  before < behind ||
  from > sheet.width / 2 + BESIDE_SHEET ||
  to < -sheet.width / 2 - BESIDE_SHEET;

/** The middle of the coat stand: beside the strip behind the head, and beside a sheet. */
const standAt = ({ sheet }: Hall): Place =>
  sheet ? [-(sheet.width / 2) - BESIDE_SHEET - 0.3, 0, 0.45] : [-0.44, 0, 0.25];
const chairsAt = ({ left }: Hall): Place => [Math.min(1.42, left - 0.38), 0, 0.55];

const STAGE = { width: 1.56, depth: 3.24 } as const;

/** What has room, with its outermost points, beside the axis, up to the ceiling and into the room. */
const FITS = {
  window: (hall: Hall) =>
    hall.right >= 2 &&
    hall.height >= 2.65 &&
    clearOf(hall, { from: WINDOW.left, to: WINDOW.right, before: 0.19 }),
  board: (hall: Hall) =>
    hall.left >= 1.36 && hall.height >= 2 && clearOf(hall, { from: 0.38, to: 1.34, before: 0.035 }),
  chairs: (hall: Hall) => {
    const [x] = chairsAt(hall);
    return (
      hall.left >= 1.65 &&
      hall.depth >= 1 &&
      clearOf(hall, { from: x - 0.3, to: x + 0.3, before: 0.9 })
    );
  },
  stand: (hall: Hall) =>
    hall.right >= 0.3 - standAt(hall)[0] && hall.height >= 1.9 && hall.depth >= 0.75,
  stage: (hall: Hall) =>
    hall.left >= 3.4 &&
    hall.depth >= 3.4 &&
    clearOf(hall, { from: hall.left - STAGE.width, to: hall.left, before: STAGE.depth }),
} as const;

/** A corner has no wall square to the axis for any of it to stand at. */
const has = (what: keyof typeof FITS, hall: Hall): boolean =>
  hall.corner === null && FITS[what](hall);

const moved = (pieces: readonly BufferGeometry[], [x, y, z]: Place, turn = 0): BufferGeometry[] =>
  pieces.map((part) => part.rotateY(turn).translate(x, y, z));

function windowFrame({ left, right, sill, head }: WindowPlan): BufferGeometry[] {
  const [width, height] = [right - left, head - sill];
  const [x, y] = [(left + right) / 2, (sill + head) / 2];
  const upright = (at: number, wide: number, deep: number) =>
    piece(board(wide, height + 0.1, deep, 0.006), TRIM, [at, y, deep / 2]);
  const level = (at: number, high: number, deep: number) =>
    piece(board(width + 0.02, high, deep, 0.006), TRIM, [x, at, deep / 2]);
  return [
    upright(left - 0.04, 0.1, 0.045),
    upright(right + 0.04, 0.1, 0.045),
    level(head + 0.04, 0.1, 0.045),
    piece(board(width + 0.26, 0.036, 0.11, 0.01), TRIM, [x, sill - 0.01, 0.055]),
    upright(left + width / 3, 0.028, 0.026),
    upright(left + (2 * width) / 3, 0.028, 0.026),
    ...[1, 2, 3].map((row) => level(sill + (row * height) / 4, row === 2 ? 0.055 : 0.028, 0.026)),
  ];
}

/** The frosted panes, which glow by themselves: overcast daylight, brighter above. None without a window. */
export function windowPanes(hall: Hall): BufferGeometry | null {
  if (!has('window', hall)) return null;
  const { left, right, sill, head } = WINDOW;
  const panes = new PlaneGeometry(right - left, head - sill, 1, 8);
  const glow: Shade = (_x, y) => 0.62 + (0.38 * (y - sill)) / (head - sill);
  return join(
    [piece(panes, [0.6, 0.61, 0.62], [(left + right) / 2, (sill + head) / 2, 0.004])],
    glow,
  );
}

function radiator({ left, right }: WindowPlan): BufferGeometry[] {
  const count = 13;
  const step = (right - left) / count;
  const columns = Array.from({ length: count }, (_, i) =>
    piece(board(step * 0.72, 0.62, 0.1, 0.03), IRON, [left + (i + 0.5) * step, 0.45, 0.12]),
  );
  const pipe = [0.2, 0.7].map((y) => bar([left, y, 0.12], [right, y, 0.12], 0.022, IRON));
  const feet = [left + step / 2, right - step / 2].map((x) =>
    piece(board(0.05, 0.16, 0.08, 0.01), IRON, [x, 0.08, 0.12]),
  );
  return [...columns, ...pipe, ...feet];
}

function noticeBoard(): BufferGeometry[] {
  const at = (x: number, y: number, z: number): Place => [0.86 + x, 1.62 + y, z];
  const edge = (w: number, h: number, x: number, y: number) =>
    piece(board(w, h, 0.03, 0.006), OAK, at(x, y, 0.015));
  const sheet = (x: number, y: number, w: number, h: number, tone: number, lean: number) =>
    piece(new PlaneGeometry(w, h), grey(tone), at(x, y, 0.018), [0, 0, lean]);
  return [
    piece(new PlaneGeometry(0.9, 0.6), [0.16, 0.135, 0.11], at(0, 0, 0.014)),
    edge(0.96, 0.04, 0, 0.32),
    edge(0.96, 0.04, 0, -0.32),
    edge(0.04, 0.68, -0.47, 0),
    edge(0.04, 0.68, 0.47, 0),
    sheet(-0.29, 0.09, 0.21, 0.297, 0.55, 0.02),
    sheet(-0.04, 0.07, 0.21, 0.297, 0.47, -0.015),
    sheet(0.25, 0.12, 0.297, 0.21, 0.52, 0.01),
    sheet(0.17, -0.13, 0.148, 0.21, 0.36, -0.03),
    sheet(0.34, -0.12, 0.105, 0.148, 0.5, 0.04),
    sheet(-0.28, -0.18, 0.148, 0.105, 0.42, 0.03),
  ];
}

function chair(): BufferGeometry[] {
  const leg = (x: number, z: number, top: number) =>
    bar([x * 1.06, 0.01, z * 1.12], [x, top, z], 0.011, STEEL);
  return [
    piece(board(0.4, 0.014, 0.4, 0.006), PLY, [0, 0.45, 0]),
    piece(board(0.4, 0.2, 0.012, 0.005), PLY, [0, 0.76, -0.222], [-0.16, 0, 0]),
    leg(-0.18, 0.17, 0.44),
    leg(0.18, 0.17, 0.44),
    leg(-0.18, -0.18, 0.44),
    leg(0.18, -0.18, 0.44),
    bar([-0.17, 0.44, -0.19], [-0.17, 0.84, -0.232], 0.011, STEEL),
    bar([0.17, 0.44, -0.19], [0.17, 0.84, -0.232], 0.011, STEEL),
    bar([-0.18, 0.435, -0.18], [-0.18, 0.435, 0.17], 0.01, STEEL),
    bar([0.18, 0.435, -0.18], [0.18, 0.435, 0.17], 0.01, STEEL),
  ];
}

const chairStack = (count: number): BufferGeometry[] =>
  Array.from({ length: count }, (_, i) => moved(chair(), [0, i * 0.085, i * 0.012])).flat();

function coatStand(): BufferGeometry[] {
  const hooks = Array.from({ length: 6 }, (_, i): BufferGeometry[] => {
    const turn = (i * Math.PI) / 3;
    const [x, z] = [Math.cos(turn), Math.sin(turn)];
    const height = i % 2 === 0 ? 1.66 : 1.5;
    const tip: Place = [x * 0.13, height + 0.09, z * 0.13];
    return [
      bar([x * 0.02, height, z * 0.02], tip, 0.01, OAK),
      piece(new SphereGeometry(0.018, 16, 12), OAK, tip),
    ];
  }).flat();
  const feet = Array.from({ length: 4 }, (_, i) => {
    const turn = (i * Math.PI) / 2 + 0.5;
    const [x, z] = [Math.cos(turn), Math.sin(turn)];
    return bar([x * 0.02, 0.16, z * 0.02], [x * 0.27, 0.015, z * 0.27], 0.016, OAK);
  });
  return [
    piece(rod(0.024, 1.7, 0.019), OAK, [0, 0.95, 0]),
    piece(new SphereGeometry(0.033, 20, 16), OAK, [0, 1.82, 0]),
    ...hooks,
    ...feet,
  ];
}

/** The edge of a low stage along the picture's right-hand wall. */
const stageEdge = (): BufferGeometry[] => [
  piece(board(1.5, 0.34, 3.2, 0.004), [0.12, 0.1, 0.085], [0.01, 0.17, 1.6]),
  piece(board(STAGE.width, 0.03, STAGE.depth, 0.012), OAK, [0, 0.352, STAGE.depth / 2]),
];

/** What of it fits the hall; null where nothing does. */
export function furniture(hall: Hall): BufferGeometry | null {
  const pieces = [
    ...(has('window', hall) ? [...windowFrame(WINDOW), ...radiator(WINDOW)] : []),
    ...(has('board', hall) ? noticeBoard() : []),
    ...(has('chairs', hall) ? moved(chairStack(5), chairsAt(hall), -0.5) : []),
    ...(has('stand', hall) ? moved(coatStand(), standAt(hall)) : []),
    ...(has('stage', hall) ? moved(stageEdge(), [hall.left - STAGE.width / 2, 0, 0]) : []),
  ];
  return pieces.length > 0 ? join(pieces) : null;
}
