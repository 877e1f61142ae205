import type { Letter } from '../../../session/types';
import type { Silhouette } from '../../../stage';
import { LINES } from '../lines';
import { outlinePath } from './outline';

/** Another picture's outline over this one, in that picture's own line. */
export default function Outline({ of, silhouette }: { of: Letter; silhouette: Silhouette }) {
  const path = outlinePath(silhouette);
  const { tone, dash } = LINES[of];
  return (
    <svg
      className="print-over"
      viewBox={`0 0 ${silhouette.width / silhouette.height} 1`}
      aria-hidden="true"
    >
      <path d={path} className="over-halo" />
      <path d={path} className="over-outline" stroke={tone} strokeDasharray={dash} />
    </svg>
  );
}
