import type { DrawnLength } from './lengths';

/** Lengths over a picture, numbered as in the table beside it. */
export default function Lengths({
  lengths,
  aspect,
}: {
  lengths: readonly DrawnLength[];
  aspect: number;
}) {
  return (
    <svg className="print-over" viewBox={`0 0 ${aspect} 1`} aria-hidden="true">
      {lengths.map(({ id, number, ends: [a, b] }) => {
        const line = { x1: a[0] * aspect, y1: a[1], x2: b[0] * aspect, y2: b[1] };
        // The number stands off the line's end, on the side that looks away from the face.
        const beside = line.x2 >= aspect / 2 ? 0.022 : -0.022;
        const level = Math.abs(line.y2 - line.y1) < Math.abs(line.x2 - line.x1);
        const at = level
          ? { x: Math.max(line.x1, line.x2) + 0.022, y: line.y2 }
          : { x: line.x2 + beside, y: (line.y1 + line.y2) / 2 };
        return (
          <g key={id}>
            <line {...line} className="over-halo" />
            <line {...line} className="over-length" />
            <circle cx={line.x1} cy={line.y1} r="0.004" fill="#111" />
            <circle cx={line.x2} cy={line.y2} r="0.004" fill="#111" />
            <circle cx={at.x} cy={at.y} r="0.017" fill="#fff" stroke="#111" strokeWidth="0.0015" />
            <text
              x={at.x}
              y={at.y}
              className="over-number"
              textAnchor="middle"
              dominantBaseline="central"
            >
              {number}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
