/** The room's drawing: walls, figure, frame, sight lines and their texts. */
import { useId } from 'react';
import type { Letter } from '../../session/types';
import { chainPath, ringsPath } from '../geometry';
import type { ProfileOutline, Ring } from '../profile/outline';
import { HATCH, type RailGround, TYPE } from './ground';
import type { RailLayout } from './layout';
import type { RailRoom as Room } from './types';

interface RailRoomProps {
  readonly layout: RailLayout;
  readonly room: Room;
  readonly figure: ProfileOutline | null;
}

export function RailRoom({ layout, room, figure }: RailRoomProps) {
  const id = useId();
  const { ground, sight, floor, frames, focus } = layout;
  const { band, origin, rem, scale, line } = ground;
  const foot = band.y + band.height;
  const kept = scale.toX(room.cameraWall - room.behindCamera);
  const bracket = 0.25 * rem;
  return (
    <g>
      <pattern
        id={`${id}hatch`}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path className="rail-hatch" d="M0 0V6" />
      </pattern>
      <Walls ground={ground} room={room} hatch={`url(#${id}hatch)`} />
      {floor && <path className="rail-wall" d={chainPath(floor)} />}
      <path className="rail-axis" d={`M${band.x} ${origin.y}H${band.x + band.width}`} />
      {room.behindCamera > 0 && <path className="rail-kept" d={`M${kept} ${band.y}V${foot}`} />}
      {sight.map(({ letter, points }) => (
        <path
          key={`${letter}${points[points.length - 1]?.y}`}
          className={`rail-line rail-sight tone-${letter.toLowerCase()}`}
          d={chainPath(points)}
        />
      ))}
      {figure && <Figure ground={ground} figure={figure} clip={`${id}bust`} />}
      {frames.map(({ letter, points: [top, bottom] }) => (
        <path
          key={letter ?? 'all'}
          className={`rail-frame ${letter ? `rail-line tone-${letter.toLowerCase()}` : ''}`}
          d={`${chainPath([top, bottom])}M${top.x - bracket} ${top.y}h${2 * bracket}M${bottom.x - bracket} ${bottom.y}h${2 * bracket}`}
        />
      ))}
      <circle className="rail-eye" cx={origin.x} cy={origin.y} r={0.14 * rem} />
      {focus.map(({ letters, x, y, half }) => (
        <path
          key={x}
          className={`rail-near ${letterClass(letters)}`}
          d={`M${x + bracket} ${y - half}H${x}V${y + half}h${bracket}M${x} ${line - 0.4 * rem}V${line}`}
        />
      ))}
    </g>
  );
}

interface WallsProps {
  readonly ground: RailGround;
  readonly room: Room;
  readonly hatch: string;
}

/** The backdrop, the wall behind it and the wall behind the camera, as far as they are shown. */
function Walls({ ground: { band, scale, extent }, room, hatch }: WallsProps) {
  const foot = band.y + band.height;
  const front = scale.toX(room.cameraWall);
  const rear = room.rearWall ?? room.backdrop;
  const shows = (distance: number) => -distance >= extent.from - 1e-9;
  const backdrop = scale.toX(-room.backdrop);
  return (
    <>
      {shows(rear) && (
        <rect
          x={scale.toX(-rear) - HATCH}
          y={band.y}
          width={HATCH}
          height={band.height}
          fill={hatch}
        />
      )}
      {shows(rear) && rear > room.backdrop && (
        <path className="rail-wall" d={`M${scale.toX(-rear)} ${band.y}V${foot}`} />
      )}
      {shows(room.backdrop) && (
        <path className="rail-backdrop" d={`M${backdrop} ${band.y}V${foot}`} />
      )}
      <rect x={front} y={band.y} width={HATCH} height={band.height} fill={hatch} />
      <path className="rail-wall" d={`M${front} ${band.y}V${foot}`} />
    </>
  );
}

interface FigureProps {
  readonly ground: RailGround;
  readonly figure: ProfileOutline;
  readonly clip: string;
}

/** The sitter, cut where the bust ends; the cut itself has no line. */
function Figure({ ground, figure, clip }: FigureProps) {
  const { origin, pxPerMetre, cut } = ground;
  const path = (rings: readonly Ring[]) =>
    ringsPath(
      rings.map((ring) =>
        ring.map(({ x, y }) => ({ x: origin.x + x * pxPerMetre, y: origin.y - y * pxPerMetre })),
      ),
    );
  const top = origin.y - figure.crown * pxPerMetre - 4;
  return (
    <>
      <clipPath id={clip}>
        <rect
          x={origin.x + figure.back * pxPerMetre - 4}
          y={top}
          width={(figure.front - figure.back) * pxPerMetre + 8}
          height={origin.y - cut * pxPerMetre - top}
        />
      </clipPath>
      <g clipPath={`url(#${clip})`} className="rail-figure">
        <path className="rail-skin" d={path(figure.whole)} />
        <path className="rail-cloth" d={path(figure.top)} />
        <path className="rail-cloth rail-cloth-below" d={path(figure.below)} />
        <path className="rail-hair" d={path(figure.hair)} />
        <path className="rail-ear" d={path(figure.ear)} />
        <path className="rail-outline" d={path(figure.whole)} />
      </g>
    </>
  );
}

/** A mark of one picture wears its accent; a shared one does not. */
function letterClass([letter, ...others]: readonly Letter[]): string {
  return letter && others.length === 0 ? `tone tone-${letter.toLowerCase()}` : '';
}

/** The texts of the room's drawing; drawn over all lines. */
export function RailLabels({ layout }: { readonly layout: RailLayout }) {
  const { ground, labels } = layout;
  const lineHeight = 1.3 * TYPE.note * ground.rem;
  return labels.map(({ id, box, lines, align, letters = [] }) => {
    const x = box.x + { left: 0, middle: box.width / 2, right: box.width }[align];
    const anchor = ({ left: 'start', middle: 'middle', right: 'end' } as const)[align];
    return (
      <text key={id} className={`rail-text ${letterClass(letters)}`} textAnchor={anchor}>
        {lines.map((text, i) => (
          <tspan key={text} x={x} y={box.y + (i + 0.76) * lineHeight}>
            {text}
          </tspan>
        ))}
      </text>
    );
  });
}
