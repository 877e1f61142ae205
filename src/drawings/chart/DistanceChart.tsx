/** A reading over distance, a curve a sitter, the session's standpoints marked. Plain shapes and texts. */
import '../tones.css';
import './chart.css';
import { type Ref, useId, useMemo, useRef } from 'react';
import { useTextWidth } from '../text-width';
import { TEXT } from './ground';
import { type ChartLayout, layoutChart, type MarkPlace } from './layout';
import { type LegendEntry, nameX } from './legend';
import { curveStyle } from './styles';
import type { DistanceChart as Content } from './types';
import { chartSentences } from './words';

/** Drawn `width` pixels wide and stretched to its place. */
export function DistanceChart(props: {
  content: Content;
  width: number;
  rem: number;
  ref?: Ref<HTMLDivElement>;
}) {
  const { content, width, rem } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const measure = useTextWidth(drawing);
  const id = useId();
  const layout = useMemo(
    () => layoutChart(content, { width, rem, measure }),
    [content, width, rem, measure],
  );
  const { height, curves, marks, legend, ground } = layout;
  const { plot } = ground;
  return (
    <div className="chart" ref={props.ref}>
      <svg
        ref={drawing}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={chartSentences(content)}
      >
        <defs>
          <clipPath id={`${id}plot`}>
            <rect
              x={plot.left}
              y={plot.top - 2}
              width={plot.right - plot.left}
              height={plot.bottom - plot.top + 4}
            />
          </clipPath>
        </defs>
        <Axes layout={layout} />
        {marks.map(({ letter, x }) => (
          <path
            key={letter}
            className={`chart-at tone-${letter.toLowerCase()}`}
            d={`M${x} ${plot.top - 0.4 * rem}V${plot.bottom}`}
          />
        ))}
        <g clipPath={`url(#${id}plot)`}>
          {curves.map(({ id: curve, index, path }) => (
            <CurveLine key={curve} index={index} d={path} />
          ))}
        </g>
        {legend.map((entry) => (
          <Legend key={entry.id} entry={entry} rem={rem} />
        ))}
        {marks.map((mark) => (
          <Mark key={mark.letter} mark={mark} rem={rem} plotTop={plot.top} />
        ))}
      </svg>
    </div>
  );
}

function CurveLine({ index, d }: { index: number; d: string }) {
  const { dash, width } = curveStyle(index);
  return <path className="chart-curve" d={d} strokeDasharray={dash} strokeWidth={width} />;
}

function Axes({ layout: { ground, title, below } }: { layout: ChartLayout }) {
  const { plot, rem, across, up } = ground;
  const tick = TEXT.tick * rem;
  return (
    <>
      <path
        className="chart-grid"
        d={up.map(({ y }) => `M${plot.left} ${y}H${plot.right}`).join('')}
      />
      <path
        className="chart-axis"
        d={`M${plot.left} ${plot.bottom}H${plot.right}${across
          .map(({ x }) => `M${x} ${plot.bottom}v${0.35 * rem}`)
          .join('')}`}
      />
      {up.map(({ y, text }) => (
        <text
          key={text}
          x={plot.left - 0.4 * rem}
          y={y + 0.35 * tick}
          fontSize={tick}
          textAnchor="end"
        >
          {text}
        </text>
      ))}
      {across.map(({ x, text }) => (
        <text
          key={text}
          x={x}
          y={plot.bottom + 0.45 * rem + tick}
          fontSize={tick}
          textAnchor="middle"
        >
          {text}
        </text>
      ))}
      {title.map(({ x, y, text }) => (
        <text key={text} x={x} y={y} fontSize={TEXT.name * rem} fontWeight={TEXT.bold}>
          {text}
        </text>
      ))}
      <text className="chart-soft" x={below.x} y={below.y} fontSize={tick} textAnchor="end">
        {below.text}
      </text>
    </>
  );
}

function Legend({ entry, rem }: { entry: LegendEntry; rem: number }) {
  const { index, name, x, y, sample, end } = entry;
  return (
    <>
      {end && <path className="chart-lead" d={`M${end.x} ${end.y}L${x - 0.3 * rem} ${y}`} />}
      <CurveLine index={index} d={`M${x} ${y}h${sample}`} />
      <text x={nameX(entry, rem)} y={y + 0.35 * TEXT.name * rem} fontSize={TEXT.name * rem}>
        {name}
      </text>
    </>
  );
}

function Mark({ mark, rem, plotTop }: { mark: MarkPlace; rem: number; plotTop: number }) {
  const { letter, x, tab, dots, value } = mark;
  const middle = tab.x + tab.width / 2;
  return (
    <g className={`tone-${letter.toLowerCase()}`}>
      <path
        className="chart-tab"
        d={`M${tab.x} ${tab.y}h${tab.width}v${tab.height}H${x + 0.2 * rem}L${x} ${plotTop - 0.05 * rem}L${x - 0.2 * rem} ${tab.y + tab.height}H${tab.x}Z`}
      />
      <text
        className="chart-letter"
        x={middle}
        y={tab.y + tab.height / 2 + 0.36 * TEXT.letter * rem}
        fontSize={TEXT.letter * rem}
        fontWeight={TEXT.bold}
        textAnchor="middle"
      >
        {letter}
      </text>
      {dots.map(({ x: cx, y: cy }) => (
        <circle key={cy} className="chart-dot" cx={cx} cy={cy} r={0.26 * rem} />
      ))}
      {value && (
        <text
          className="chart-value"
          x={value.x}
          y={value.y}
          fontSize={TEXT.name * rem}
          fontWeight={TEXT.bold}
          textAnchor={value.anchor}
        >
          {value.text}
        </text>
      )}
    </g>
  );
}
