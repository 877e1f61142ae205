/** The letters' tabs beside the cameras: fanned out so that none covers another. */
import type { Letter } from '../../session/types';
import { type Box, clipSegment, type Point } from '../geometry';
import { TARGET } from '../rail/ground';
import { spread } from '../spread';
import { boxAbout } from './grips';
import { TAB } from './sheet';

export interface TabPlace {
  readonly letter: Letter;
  readonly pupil: Point;
  readonly tab: Box;
  readonly target: Box;
  /** From the tab's side to the pupil. */
  readonly wedge: readonly [Point, Point, Point];
}

/** Longer than any sheet, pixels. */
const FAR = 1e5;
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
  // Along a slant two tabs clear each other as soon as either their breadths or their heights do.
  const apart = Math.min(width / Math.abs(along.x), height / Math.abs(along.y));
  const half = Math.max(TARGET, apart) / 2;
  const first = sorted[0]?.at;
  const range = first ? tabRange(first) : { from: 0, to: 0 };
  const places = spread(
    sorted.map(({ at }) => ({ at: way(at), left: half, right: half })),
    2,
    range.from - half,
    range.to + half,
  );
  return sorted.map(({ letter, at }, i) => {
    const middle = onLine(at, (places[i] ?? way(at)) - way(at));
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
      target: boxAbout(middle, TARGET),
      wedge: [
        { x: side.x - across.x, y: side.y - across.y },
        { x: side.x + across.x, y: side.y + across.y },
        { x: side.x + tip * (at.x - side.x), y: side.y + tip * (at.y - side.y) },
      ],
    };
  });

  function onLine(at: Point, shift: number): Point {
    const aside = asideOf(at);
    return { x: aside.x + shift * along.x, y: aside.y + shift * along.y };
  }

  /** Off the axis, but no farther than the sheet goes: in a long room little of it lies above the cameras. */
  function asideOf(at: Point): Point {
    const whole = { x: at.x + TAB.off * rem * off.x, y: at.y + TAB.off * rem * off.y };
    return clipSegment([at, whole], middles(bounds))?.[1] ?? whole;
  }

  /** How far the tabs' middles may go along the axis and stay on the sheet. */
  function tabRange(at: Point) {
    const inside = clipSegment([onLine(at, -FAR), onLine(at, FAR)], middles(bounds));
    const base = way(onLine(at, 0)) - way(at);
    return inside
      ? { from: way(inside[0]) - base, to: way(inside[1]) - base }
      : { from: way(at), to: way(at) };
  }

  function middles({ x, y, width: w, height: h }: Box): Box {
    return { x: x + width / 2, y: y + height / 2, width: w - width, height: h - height };
  }
}
