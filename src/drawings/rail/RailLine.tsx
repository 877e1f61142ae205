/** The distance line with its numbers, and the bands of personal distance. */
import { TYPE } from './ground';
import type { RailLayout } from './layout';

export function RailLine({ layout }: { readonly layout: RailLayout }) {
  const { ground, marks, numbers, zones, aside } = layout;
  const { line, scale, extent, rem } = ground;
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
      {aside?.lines.map((text, i) => (
        <text
          key={text}
          className="rail-text"
          x={aside.x}
          y={aside.y + i * 1.3 * TYPE.note * rem}
          textAnchor="end"
        >
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
