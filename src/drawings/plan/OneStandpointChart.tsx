/** One standpoint for the sitting, as a chart and, for those who listen, as a table. */
import '../tones.css';
import './plan.css';
import { useId, useMemo, useRef } from 'react';
import { chainPath, ringsPath } from '../geometry';
import { useTextWidth } from '../text-width';
import { ChartTable } from './ChartTable';
import { type ChartContent, type ChartLayout, type ChartTab, layoutChart } from './chart';
import { GripOf } from './DrawingSheet';
import { toneOf } from './Parts';
import { TEXT } from './sheet';
import type { PlanActions } from './types';
import { PLAN_WORDS, type PlanWords } from './words';

export interface ChartProps extends PlanActions {
  readonly content: ChartContent;
  readonly width: number;
  readonly rem: number;
  /** On paper nothing moves. */
  readonly still?: boolean;
  readonly words?: PlanWords;
}

export function OneStandpointChart(props: ChartProps) {
  const { content, width, rem, still = false, words = PLAN_WORDS } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const measure = useTextWidth(drawing);
  const id = useId();
  const layout = useMemo(
    () => layoutChart(content, { width, rem, measure }, words),
    [content, width, rem, measure, words],
  );
  const { height, tabs, grips } = layout;
  return (
    <div className="plan-chart">
      <ChartTable content={content} words={words} />
      <svg
        ref={drawing}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        role={still ? 'img' : 'group'}
        aria-label={words.chart.title}
      >
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
        <g aria-hidden="true">
          <Zones layout={layout} id={id} />
          <Lines layout={layout} />
          <Bands layout={layout} />
          <Scale layout={layout} />
        </g>
        {tabs.map((tab) => (
          <GripOf
            key={tab.letter}
            grips={grips}
            id={`camera-${tab.letter}`}
            units={content.units}
            actions={props}
            still={still}
            className={toneOf([tab.letter])}
          >
            <ChartHandle place={tab} layout={layout} />
          </GripOf>
        ))}
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
        <g aria-hidden="true" pointerEvents="none">
          <Names layout={layout} />
        </g>
      </svg>
    </div>
  );
}

interface PartProps {
  readonly layout: ChartLayout;
}

function Zones({ layout: { zones, zoneNames, ground }, id }: PartProps & { id: string }) {
  const kinds = [...new Set(zones.map(({ index }) => index))];
  return (
    <>
      <defs>
        {kinds.map((kind) => (
          <pattern
            key={kind}
            id={`${id}zone${kind}`}
            width={6 + kind}
            height={6 + kind}
            patternUnits="userSpaceOnUse"
            patternTransform={`rotate(${kind % 2 === 0 ? 45 : -45})`}
          >
            <path className="plan-hatch plan-hatch-fine" d={`M0 0V${6 + kind}`} />
          </pattern>
        ))}
      </defs>
      {zones.map(({ id: zone, index, box }) => (
        <rect key={`${zone}${box.y}${box.x}`} {...box} fill={`url(#${id}zone${index})`} />
      ))}
      {zoneNames.map(({ id: zone, text, x, y }) => (
        <text
          key={zone}
          className="plan-soft"
          x={x}
          y={y}
          fontSize={TEXT.note * ground.rem}
          textAnchor="middle"
        >
          {text}
        </text>
      ))}
    </>
  );
}

function Lines({ layout: { rows, ground } }: PartProps) {
  return rows.map(({ id, top, bottom }) => (
    <path
      key={id}
      className="plan-row-line"
      d={`M0 ${top}H${ground.plot.right}M0 ${bottom}H${ground.plot.right}`}
    />
  ));
}

function Bands({ layout: { rows } }: PartProps) {
  return rows.flatMap(({ id, bands }) =>
    bands.map((band) => (
      <g key={`${id} ${band.id}`}>
        {band.reach.map((box) => (
          <rect key={box.x} className="plan-open" {...box} />
        ))}
        {band.works.map((box) => (
          <rect key={box.x} className="plan-filled" {...box} />
        ))}
      </g>
    )),
  );
}

function Scale({ layout: { line, marks, numbers, ground } }: PartProps) {
  const { rem, plot } = ground;
  return (
    <>
      <path
        className="plan-bar"
        d={`M${plot.left} ${line}H${plot.right}${marks.map(({ x, long }) => `M${x} ${line}v${(long ? 0.5 : 0.25) * rem}`).join('')}`}
      />
      {numbers.map(({ x, text }) => (
        <text
          key={text}
          className="plan-figure-text"
          x={x}
          y={line + 1.45 * rem}
          fontSize={TEXT.note * rem}
          textAnchor="middle"
        >
          {text}
        </text>
      ))}
    </>
  );
}

function Names({ layout: { rows, ground } }: PartProps) {
  const { rem } = ground;
  return rows.map(({ id, title, frame, bands }) => (
    <g key={id}>
      <text
        className="plan-figure-text"
        x={title.x}
        y={title.y}
        fontSize={TEXT.dimension * rem}
        fontWeight={TEXT.bold}
      >
        {title.text}
      </text>
      {frame && (
        <text className="plan-soft" x={frame.x} y={frame.y} fontSize={TEXT.note * rem}>
          {frame.text}
        </text>
      )}
      {bands.map(({ id: lens, name }) => (
        <text
          key={lens}
          className="plan-figure-text"
          x={name.x}
          y={name.y}
          fontSize={TEXT.note * rem}
          textAnchor={name.anchor}
        >
          {name.text}
        </text>
      ))}
    </g>
  ));
}

/** The standpoint's line through all rows and its tab under the scale. */
function ChartHandle({ place, layout }: PartProps & { readonly place: ChartTab }) {
  const { letter, x, tab, value } = place;
  const { rem, plot } = layout.ground;
  const middle = tab.x + tab.width / 2;
  const half = 0.42 * rem;
  const from = layout.line + 1.7 * rem;
  return (
    <>
      <path
        className="plan-at"
        d={chainPath([
          { x, y: plot.top - 4 },
          { x, y: from },
        ])}
      />
      <path
        className="plan-tab"
        d={ringsPath([
          [
            { x: middle - half, y: tab.y },
            { x: middle + half, y: tab.y },
            { x, y: from },
          ],
        ])}
      />
      <rect className="plan-tab" {...tab} />
      <text
        className="plan-letter"
        x={middle}
        y={tab.y + tab.height / 2 + 0.36 * TEXT.letter * rem}
        fontSize={TEXT.letter * rem}
        textAnchor="middle"
      >
        {letter}
      </text>
      <text
        className={`plan-figure-text ${toneOf([letter])}`}
        x={value.x}
        y={value.y}
        fontSize={TEXT.dimension * rem}
        fontWeight={TEXT.bold}
        textAnchor={value.anchor}
      >
        {value.text}
      </text>
    </>
  );
}
