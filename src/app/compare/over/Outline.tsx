import type { Letter } from '../../../session/types';
import { LINES } from '../lines';
import { type Mask, outlinePath } from './outline';

/** Another picture's outline over this one, in that picture's own line. */
export function Outline({ of, mask }: { of: Letter; mask: Mask }) {
  const path = outlinePath(mask);
  const { tone, dash } = LINES[of];
  return (
    <svg className="print-over" viewBox={`0 0 ${mask.width / mask.height} 1`} aria-hidden="true">
      <path d={path} className="over-halo" />
      <path d={path} className="over-outline" stroke={tone} strokeDasharray={dash} />
    </svg>
  );
}
