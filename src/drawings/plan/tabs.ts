/** The letters' tabs beside the cameras: fanned out so that none covers another. */
import type { Letter } from '../../session/types';
import type { Box, Point } from '../geometry';
import { TARGET } from '../rail/ground';
import { spread } from '../spread';
import { TAB } from './sheet';

export interface TabPlace {
  readonly letter: Letter;
  readonly pupil: Point;
  readonly tab: Box;
  readonly target: Box;
  /** From the tab's side to the pupil. */
  readonly wedge: readonly [Point, Point, Point];
}

/** Half the wedge's base, rem. */
const WEDGE = 0.42;

/** Tabs at `off` from the axis, spread along it; `along` and `off` are unit vectors of the sheet. */
export function placeTabs(
  pupils: readonly { readonly letter: Letter; readonly at: Point }[],
  along: Point,
  off: Point,
  rem: number,
  bounds: Box,
): TabPlace[] {
  const [width, height] = [TAB.width * rem, TAB.height * rem];
  const way = (p: Point) => p.x * along.x + p.y * along.y;
  const sorted = [...pupils].sort((a, b) => way(a.at) - way(b.at));
  const half = TARGET / 2;
  const places = spread(
    sorted.map(({ at }) => ({ at: way(at), left: half, right: half })),
    2,
    -1e5,
    1e5,
  );
  return sorted.map(({ letter, at }, i) => {
    const shift = (places[i] ?? way(at)) - way(at);
    const x = at.x + shift * along.x + TAB.off * rem * off.x;
    const y = at.y + shift * along.y + TAB.off * rem * off.y;
    const middle = {
      x: Math.min(Math.max(x, bounds.x + width / 2), bounds.x + bounds.width - width / 2),
      y: Math.min(Math.max(y, bounds.y + height / 2), bounds.y + bounds.height - height / 2),
    };
    const base = WEDGE * rem;
    const to = { x: at.x - middle.x, y: at.y - middle.y };
    // From the side of the tab that faces the pupil.
    const upright = Math.abs(to.y) * width >= Math.abs(to.x) * height;
    const side = upright
      ? { x: middle.x, y: middle.y + (Math.sign(to.y) * height) / 2 }
      : { x: middle.x + (Math.sign(to.x) * width) / 2, y: middle.y };
    const across = upright ? { x: base, y: 0 } : { x: 0, y: base };
    const length = Math.hypot(at.x - side.x, at.y - side.y) || 1;
    const tip = Math.max(0, length - 0.3 * rem) / length;
    return {
      letter,
      pupil: at,
      tab: { x: middle.x - width / 2, y: middle.y - height / 2, width, height },
      target: { x: middle.x - half, y: middle.y - half, width: TARGET, height: TARGET },
      wedge: [
        { x: side.x - across.x, y: side.y - across.y },
        { x: side.x + across.x, y: side.y + across.y },
        { x: side.x + tip * (at.x - side.x), y: side.y + tip * (at.y - side.y) },
      ],
    };
  });
}
