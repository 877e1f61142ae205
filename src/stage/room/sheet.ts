/**
 * The backdrop where it is not the wall: a sheet of paper off a roll, down to the floor and a little way
 * along it, on a tube between two stands. The origin is the foot of the sheet; +z runs into the room.
 */
import { BufferGeometry, Float32BufferAttribute, PlaneGeometry } from 'three';
import type { Hall, Sheet } from '../../session/hall';
import { bar, grey, join, type Place, piece, rod } from './pieces';

/** Radius of the bend into the floor, and where the paper ends on it: by eye, clear of the sitter. */
const BEND = 0.22;
const RUN = 0.6;
/** The paper lies on the boards. */
const LYING = 0.003;
const BEND_STEPS = 12;

const PAPER = grey(0.4);
const STEEL = grey(0.16);

const ROLL = 0.042;
const TUBE = 0.016;
const POLE = 0.014;
/** Middle of a pole beside the paper's edge. */
const BESIDE = 0.07;
/** A leg's foot from its pole. */
const LEG = 0.32;

interface Line {
  readonly y: number;
  readonly z: number;
  /** From the upright sheet (0) to the one that lies (a right angle). */
  readonly turned: number;
}

/** Level lines of the sheet: straight down, round the bend, along the floor. */
function levels(top: number): readonly Line[] {
  const bend = Math.min(BEND, top / 2);
  const round = Array.from({ length: BEND_STEPS + 1 }, (_, i): Line => {
    const turned = (i / BEND_STEPS) * (Math.PI / 2);
    const [y, z] = [bend * (1 - Math.sin(turned)), bend * (1 - Math.cos(turned))];
    return { y: y + LYING, z, turned };
  });
  return [{ y: top, z: 0, turned: 0 }, ...round, { y: LYING, z: RUN, turned: Math.PI / 2 }];
}

function face({ width, top }: Sheet): BufferGeometry {
  const lines = levels(top);
  const corners = lines.slice(1).flatMap((lower, i) => {
    const upper = lines[i] as Line;
    return (
      [
        [lower, -1],
        [lower, 1],
        [upper, 1],
        [lower, -1],
        [upper, 1],
        [upper, -1],
      ] as const
    ).map(([line, side]) => ({ ...line, x: (side * width) / 2 }));
  });
  const geometry = new BufferGeometry();
  const set = (name: string, of: (corner: (typeof corners)[number]) => Place) =>
    geometry.setAttribute(name, new Float32BufferAttribute(corners.flatMap(of), 3));
  set('position', ({ x, y, z }) => [x, y, z]);
  set('normal', ({ turned }) => [0, Math.sin(turned), Math.cos(turned)]);
  return piece(geometry, PAPER);
}

/** How far the sheet's back hangs behind its face, and by how much it is narrower. */
const THICK = 0.012;
const INSET = 0.002;

/** Casts the sheet's shadow in its stead: the bent face would shade itself. */
const back = ({ width, top }: Sheet): BufferGeometry =>
  piece(new PlaneGeometry(width - INSET, top - INSET), PAPER, [0, (top - INSET) / 2, -THICK]);

/** The roll behind the sheet's upper edge, and what carries it; no more than has room. */
function carriers({ width, top }: Sheet, { left, right, behind, corner }: Hall): BufferGeometry[] {
  const half = width / 2;
  const depth = -ROLL - 0.004;
  if (behind < 2 * ROLL + 0.02) return [];
  const height = top - ROLL;
  const roll = piece(rod(ROLL, width - 0.01), PAPER, [0, height, depth], [0, 0, Math.PI / 2]);
  const beside = Math.min(left, right) - half;
  if (corner || beside < BESIDE + 0.05) return [roll];
  const pole = half + BESIDE;
  const tube = bar([-pole, height, depth], [pole, height, depth], TUBE, STEEL);
  const leg = Math.min(LEG, 2 * (behind + depth) - 0.03, beside - BESIDE);
  const stand = (x: number) => [
    piece(rod(POLE, height), STEEL, [x, height / 2, depth]),
    ...[0, 1, 2].map((i) => {
      const turn = Math.PI / 2 + (i * 2 * Math.PI) / 3;
      const [dx, dz] = [Math.cos(turn), Math.sin(turn)];
      const foot: Place = [x + leg * dx, 0.012, depth + leg * dz];
      return bar([x, 1.2 * leg, depth], foot, 0.009, STEEL);
    }),
  ];
  return [roll, tube, ...stand(-pole), ...stand(pole)];
}

/** The sheet's face, which is matte, and what is behind it, which casts its shadow. */
export const hangingSheet = (
  hall: Hall,
  sheet: Sheet,
): { readonly face: BufferGeometry; readonly behind: BufferGeometry } => ({
  face: face(sheet),
  behind: join([back(sheet), ...carriers(sheet, hall)]),
});
