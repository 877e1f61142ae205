/** The distance line with its numbers, and the bands of personal distance. */
import type { RailLayout } from './layout';

export function RailLine({ layout }: { readonly layout: RailLayout }) {
  const { ground, marks, numbers, zones } = layout;
  const { line, scale, extent } = ground;
  return (
    <g>
      <path className="rail-rule" d={`M${scale.toX(0)} ${line}H${scale.toX(extent.to)}`} />
      <path
        className="rail-mark"
        d={marks.map(({ x, length }) => `M${x} ${line}v${length}`).join('')}
      />
      {numbers.map(({ x, text }) => (
        <text key={text} className="rail-number" x={x} y={ground.numbers} textAnchor="middle">
          {text}
        </text>
      ))}
      {zones.map(({ name, from, to, text, thickness }) => (
        <g key={name}>
          <path
            className="rail-zone"
            d={`M${from} ${ground.zones}H${to}`}
            strokeWidth={thickness}
          />
          {text && (
            <text className="rail-text" x={text.at} y={ground.zoneText} textAnchor="middle">
              {text.text}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}
