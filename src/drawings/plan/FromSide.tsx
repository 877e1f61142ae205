/** The room from the side along the camera's axis, to scale. */
import '../tones.css';
import './plan.css';
import { useId, useMemo, useRef } from 'react';
import { chainPath, type Point, ringsPath } from '../geometry';
import { useTextWidth } from '../text-width';
import { type DrawingProps, DrawingSheet, GripOf } from './DrawingSheet';
import { FigureSide } from './FigureSide';
import { Dimensions, Foot, Labels, Patterns, Tab, toneOf, Walls } from './Parts';
import { layoutSide } from './side';
import { PLAN_WORDS } from './words';

/** Half the cross where a frame's edge leaves the backdrop or meets the ceiling, pixels. */
const CROSS = 5;

export function FromSide(props: DrawingProps) {
  const { content, width, rem, maxHeight, printScale, words = PLAN_WORDS } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const measure = useTextWidth(drawing);
  const id = useId();
  const layout = useMemo(
    () => layoutSide(content, { width, rem, maxHeight, printScale, measure }, words),
    [content, width, rem, maxHeight, printScale, measure, words],
  );
  const { ground, cameras, backdrop, kept, grips, tabs, labels, notes, dimensions, axis } = layout;
  const grip = { grips, units: content.units, actions: props, still: printScale !== undefined };
  // Rows behind stand behind on the sheet too.
  const people = [...content.people].sort((a, b) => a.eyes[2] - b.eyes[2]);
  return (
    <DrawingSheet drawing={drawing} ground={ground} label={words.side} notes={notes}>
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
      <g aria-hidden="true">
        <Patterns id={id} />
        <clipPath id={`${id}room`}>
          <rect {...ground.room} />
        </clipPath>
        <Walls room={ground.room} id={id} />
        {kept.length > 0 && (
          <path className="plan-kept" d={ringsPath([kept])} fill={`url(#${id}kept)`} />
        )}
        {content.steps.map(({ from, to, height }) => {
          const { x, y } = ground.place(from, ground.floor + height);
          return (
            <rect
              key={from}
              className="plan-step"
              x={x}
              y={y}
              width={(to - from) * ground.pxPerMetre}
              height={height * ground.pxPerMetre}
            />
          );
        })}
        {cameras.map(({ picture: { letter }, sharp }) =>
          sharp && (content.chosen ?? letter) === letter ? (
            <path
              key={letter}
              className="plan-sharp"
              d={ringsPath([sharp])}
              clipPath={`url(#${id}room)`}
            />
          ) : null,
        )}
        <path className="plan-axis" d={chainPath(axis)} />
        {layout.lights.map(({ light, centre, long, short, turn, stand }) => (
          <g key={light.id} clipPath={`url(#${id}room)`}>
            <path className="plan-tripod" d={stand.map((line) => chainPath(line)).join('')} />
            <ellipse
              className="plan-softbox"
              rx={long}
              ry={Math.max(2, short)}
              transform={`translate(${centre.x} ${centre.y}) rotate(${turn})`}
            />
          </g>
        ))}
      </g>
      <GripOf {...grip} id="backdrop">
        <path className="plan-backdrop" d={chainPath(backdrop)} />
      </GripOf>
      <GripOf {...grip} id="backdrop-top">
        <path className="plan-roll" d={`M${backdrop[0].x - 7} ${backdrop[0].y}h14`} />
      </GripOf>
      <GripOf {...grip} id="sitter">
        {people.map((person) => (
          <FigureSide key={person.id} person={person} ground={ground} />
        ))}
      </GripOf>
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
      <g aria-hidden="true" pointerEvents="none">
        {cameras.map(({ picture: { letter }, edges, field, legs }) => (
          <g key={letter} className={toneOf([letter])}>
            <path className="plan-tripod" d={legs.map((leg) => chainPath(leg)).join('')} />
            <path className="plan-sight" d={edges.map(({ line }) => chainPath(line)).join('')} />
            <path className="plan-field" d={chainPath(field)} clipPath={`url(#${id}room)`} />
            {edges.map(({ edge }) => {
              const at = edge.passes ?? (edge.end === 'ceiling' ? edge.to : null);
              return at && <Cross key={edge.end} at={ground.place(...at)} />;
            })}
          </g>
        ))}
      </g>
      {cameras.map(({ picture: { letter }, body, sensor, pupil }) => (
        <GripOf key={letter} {...grip} id={`lens-${letter}`} className={toneOf([letter])}>
          <path className="plan-camera" d={ringsPath([body])} />
          <path className="plan-sensor" d={chainPath(sensor)} />
          <circle className="plan-pupil" cx={pupil.x} cy={pupil.y} r={0.28 * rem} />
        </GripOf>
      ))}
      {tabs.map((place) => (
        <GripOf
          key={place.letter}
          {...grip}
          id={`camera-${place.letter}`}
          className={toneOf([place.letter])}
        >
          <Tab place={place} rem={rem} />
        </GripOf>
      ))}
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
      <g aria-hidden="true" pointerEvents="none">
        <Dimensions places={dimensions} />
        <Labels labels={labels} rem={rem} />
        <Foot ground={ground} imperial={content.units === 'imperial'} words={words} />
      </g>
    </DrawingSheet>
  );
}

const Cross = ({ at: { x, y } }: { readonly at: Point }) => (
  <path
    className="plan-passes"
    d={`M${x - CROSS} ${y - CROSS}l${2 * CROSS} ${2 * CROSS}m0 ${-2 * CROSS}l${-2 * CROSS} ${2 * CROSS}`}
  />
);
