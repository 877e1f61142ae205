import './numbers.css';
import { useMemo } from 'react';
import { DistanceChart } from '../../../drawings/chart';
import { CHARTED_ROWS, rangeChart } from '../../../handout/range-chart';
import type { ReadingId } from '../../../readings/rows';
import { useSheet } from '../../state/useSheet';
import { useWorkbench } from '../../state/workbench';
import type { PageSitting } from '../useSitting';
import { tabledOf } from './tabled';

/** What the nose gains, and what the ears lose. */
const CHARTED: readonly ReadingId[] = ['nose_to_ear_ratio', 'size_ratio.ears'];

/** Root font sizes across one chart: its texts are then as large on paper as the page's own. */
const ACROSS = 23;

/** Two charts side by side, over the standpoints of the session's table. */
export function ChartPart({ sitting }: { sitting: PageSitting }) {
  const { models } = useWorkbench();
  const { session, pronoun } = sitting;
  const { tabled, pictures, units } = session;
  const { ref, rem } = useSheet();
  const charts = useMemo(
    () =>
      CHARTED.flatMap((id) => {
        const row = CHARTED_ROWS.find((each) => each.id === id);
        const sitters = tabledOf(sitting, models);
        const asked = row && { row, sitters, tabled, pictures, scale: 'even' as const };
        const content = asked ? rangeChart(asked, { units, pronoun }) : null;
        return content ? [{ id, content }] : [];
      }),
    [sitting, models, tabled, pictures, units, pronoun],
  );
  return (
    <div ref={ref} className="page-charts">
      {charts.map(({ id, content }) => (
        <DistanceChart key={id} content={content} width={ACROSS * rem} rem={rem} />
      ))}
    </div>
  );
}
