/** The dimension lines of the drawing from the side. */
import type { Point } from '../geometry';
import { HATCH } from '../rail/ground';
import { type DimensionPlace, placeDimension } from './dimension';
import { ROW, TEXT } from './sheet';
import type { CameraSide, SideGround } from './side';
import type { PlanContent, PlanSheet } from './types';
import type { PlanWords } from './words';

/** Lens heights closer than this share a line, metres. */
export const SAME_HEIGHT = 0.005;

export function dimensionsSide(
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
