/** A person from the side: the outline of the own mesh, or a plain shape from the dimensions. */
import { ringsPath } from '../geometry';
import type { Ring } from '../profile/outline';
import type { SideGround } from './side';
import type { PlanFigure } from './types';

interface FigureSideProps {
  readonly person: PlanFigure;
  readonly ground: SideGround;
}

/** The seat of a stool, metres: breadth and thickness. */
const SEAT = { breadth: 0.33, thickness: 0.034 } as const;
/** Eyes above the seat of somebody who sits: sitting height less the way from eyes to crown. */
const EYES_OVER_SEAT = 0.78;

export function FigureSide({ person, ground: g }: FigureSideProps) {
  const { eyes, profile } = person;
  const path = (rings: readonly Ring[]) =>
    ringsPath(rings.map((ring) => ring.map(({ x, y }) => g.place(eyes[2] + x, eyes[1] + y))));
  if (profile) {
    return (
      <g>
        <path className="plan-skin" d={path(profile.whole)} />
        <path className="plan-cloth" d={path(profile.top)} />
        <path className="plan-cloth" d={path(profile.below)} />
        <path className="plan-hair" d={path(profile.hair)} />
        <path className="plan-outline" d={path(profile.whole)} />
      </g>
    );
  }
  return <Plain person={person} ground={g} />;
}

/** Head, trunk and legs as plain rounded shapes while the mesh is not there. */
function Plain({ person, ground: g }: FigureSideProps) {
  const { eyes, head, crown, chin, shoulders, shoulderHeight, seated, stepHeight } = person;
  const [, y, z] = eyes;
  const k = g.pxPerMetre;
  const middle = g.place(z - head.behind, y + (crown + chin) / 2);
  const stands = g.floor + stepHeight;
  const upper = y + shoulderHeight + 0.05;
  const seat = y - EYES_OVER_SEAT;
  const lower = seated ? seat : stands;
  const back = z - shoulders.behind - shoulders.depth / 2;
  const trunk = g.place(back, upper);
  const knee = z + 0.35;
  return (
    <g>
      <rect
        className="plan-cloth plan-outline-fill"
        x={trunk.x}
        y={trunk.y}
        width={shoulders.depth * k}
        height={(upper - lower) * k}
        rx={0.1 * k}
      />
      {seated && (
        <>
          <path
            className="plan-limb"
            style={{ strokeWidth: 0.13 * k }}
            d={limb(g, [back + 0.1, seat + 0.06], [knee, seat + 0.06])}
          />
          <path
            className="plan-limb"
            style={{ strokeWidth: 0.1 * k }}
            d={limb(g, [knee, seat], [knee, stands + 0.05])}
          />
          <rect
            className="plan-step"
            x={trunk.x}
            y={g.place(back, seat).y}
            width={SEAT.breadth * k}
            height={SEAT.thickness * k}
          />
          <path
            className="plan-tripod"
            d={
              limb(g, [back + 0.06, seat - SEAT.thickness], [back, stands]) +
              limb(g, [back + 0.26, seat - SEAT.thickness], [back + 0.33, stands])
            }
          />
        </>
      )}
      <ellipse
        className="plan-body"
        cx={middle.x}
        cy={middle.y}
        rx={(head.depth / 2) * k}
        ry={((crown - chin) / 2) * k}
      />
    </g>
  );
}

const limb = (
  g: SideGround,
  from: readonly [z: number, y: number],
  to: readonly [z: number, y: number],
): string => {
  const [a, b] = [g.place(...from), g.place(...to)];
  return `M${a.x} ${a.y}L${b.x} ${b.y}`;
};
