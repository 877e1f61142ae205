/** One picture's handle: pupil, stem, tab and value. */
import type { Units } from '../../readings/quantities';
import { type Box, chainPath, type Point, ringsPath } from '../geometry';
import { type RailGround, TYPE } from './ground';
import type { HandlePlace } from './handles';
import { type RailActions, useHandle } from './useHandle';
import { speakStandpoint } from './words';

interface RailHandleProps extends RailActions {
  readonly place: HandlePlace;
  readonly ground: RailGround;
  readonly units: Units;
}

/** Half the width of a tab's tip where it leaves the tab, rem. */
const TIP_HALF = 0.42;
/** Height and half width of the mark on the line when the tab stands aside, rem. */
const MARK = { height: 0.375, half: 0.28 } as const;

export function RailHandle({ place, ground, units, ...actions }: RailHandleProps) {
  const { letter, picture, x, targets } = place;
  const { dragging, handlers } = useHandle({
    ...actions,
    letter,
    units,
    x,
    standpoint: picture.standpoint,
    min: picture.min,
    max: picture.max,
    toDistance: ground.scale.toDistance,
  });
  return (
    <g
      {...handlers}
      className={`rail-handle tone-${letter.toLowerCase()}`}
      data-dragging={dragging || undefined}
      role="slider"
      tabIndex={0}
      aria-label={`Standpoint ${letter}`}
      aria-orientation="horizontal"
      aria-valuemin={round(picture.min)}
      aria-valuemax={round(picture.max)}
      aria-valuenow={round(picture.standpoint)}
      aria-valuetext={speakStandpoint(picture.standpoint, units, picture.reason)}
    >
      {targets.map((target) => (
        <rect key={target.y} {...target} className="rail-target" />
      ))}
      <HandleMark place={place} ground={ground} />
    </g>
  );
}

interface HandleMarkProps {
  readonly place: HandlePlace;
  readonly ground: RailGround;
}

/** What is seen of a handle, on screen and on paper alike. */
export function HandleMark({ place, ground: { rem, line } }: HandleMarkProps) {
  const { letter, x, pupil, stem, head, tab, value } = place;
  const middle = tab.x + tab.width / 2;
  const foot = tab.y + tab.height;
  return (
    <>
      <path className="rail-line" d={chainPath([...stem, head])} />
      <circle className="rail-pupil" cx={pupil.x} cy={pupil.y} r={0.3125 * rem} />
      <rect
        className="rail-focus"
        x={tab.x - 3}
        y={tab.y - 3}
        width={tab.width + 6}
        height={tab.height + 6}
      />
      <rect className="rail-tab" {...tab} />
      <Tip from={{ x: middle, y: foot }} to={{ x, y: line }} tab={tab} rem={rem} />
      <text
        className="rail-letter"
        x={middle}
        y={tab.y + tab.height / 2 + 0.36 * TYPE.letter * rem}
        textAnchor="middle"
      >
        {letter}
      </text>
      <text
        className="rail-value"
        x={value.x}
        y={value.y}
        fontSize={value.size}
        textAnchor={value.anchor}
      >
        {value.text}
      </text>
    </>
  );
}

interface TipProps {
  readonly from: Point;
  readonly to: Point;
  readonly tab: Box;
  readonly rem: number;
}

/** Points from the tab to its exact place: the tab's own tip, or a led mark when it stands aside. */
function Tip({ from, to, tab, rem }: TipProps) {
  const half = TIP_HALF * rem;
  if (Math.abs(to.x - from.x) <= tab.width / 2 - half) {
    return (
      <path
        className="rail-tip"
        d={ringsPath([[{ ...from, x: to.x - half }, { ...from, x: to.x + half }, to]])}
      />
    );
  }
  const top = to.y - MARK.height * rem;
  const side = MARK.half * rem;
  return (
    <>
      <path className="rail-lead" d={chainPath([from, { x: to.x, y: top }])} />
      <path
        className="rail-tip"
        d={ringsPath([[{ x: to.x - side, y: top }, { x: to.x + side, y: top }, to]])}
      />
    </>
  );
}

const round = (metres: number): number => Number(metres.toFixed(4));
