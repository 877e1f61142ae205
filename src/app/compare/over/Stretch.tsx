import type { Camera } from '../../../optics/types';
import { ballImages } from './stretch';

/** Rings over a picture: what becomes of small balls at equal distance from the lens. */
export default function Stretch({ camera, aspect }: { camera: Camera; aspect: number }) {
  return (
    <svg className="print-over" viewBox={`0 0 ${aspect} 1`} aria-hidden="true">
      {ballImages(camera).map((ball) => {
        const ring = {
          cx: ball.x,
          cy: ball.y,
          rx: ball.along,
          ry: ball.across,
          transform: `rotate(${ball.turn} ${ball.x} ${ball.y})`,
        };
        return (
          <g key={`${ball.x} ${ball.y}`}>
            <ellipse {...ring} className="over-halo" />
            <ellipse {...ring} className="over-outline" stroke="#111" />
          </g>
        );
      })}
    </svg>
  );
}
