import { eyeDepth } from '../../../optics/camera';
import type { Camera } from '../../../optics/types';
import { formatLength, type Units } from '../../../readings/format';
import type { Landmarks } from '../../../sitter/types';
import { words } from '../../words';
import { drawnLengths } from './lengths';

/** Landmarks over a picture, with the lengths between them as drawn. */
export function Lengths(props: {
  camera: Camera;
  landmarks: Landmarks;
  aspect: number;
  units: Units;
}) {
  const show = (metres: number) => formatLength(metres, props.units, 'depth');
  const lengths = drawnLengths(props.camera, props.landmarks, eyeDepth(props.camera));
  return (
    <div className="print-over">
      <svg width="100%" height="100%" viewBox={`0 0 ${props.aspect} 1`} aria-hidden="true">
        {lengths.map(({ id, ends: [a, b] }) => {
          const line = { x1: a[0] * props.aspect, y1: a[1], x2: b[0] * props.aspect, y2: b[1] };
          return (
            <g key={id}>
              <line {...line} className="over-halo" />
              <line {...line} className="over-length" />
              <circle cx={line.x1} cy={line.y1} r="0.005" fill="#111" />
              <circle cx={line.x2} cy={line.y2} r="0.005" fill="#111" />
            </g>
          );
        })}
      </svg>
      {lengths.map(({ id, ends: [a, b], drawn, real }) => (
        <span
          key={id}
          className="over-label"
          style={{ left: `${50 * (a[0] + b[0])}%`, top: `${50 * (a[1] + b[1])}%` }}
        >
          {words.looks.length(id, show(drawn), show(real))}
        </span>
      ))}
    </div>
  );
}
