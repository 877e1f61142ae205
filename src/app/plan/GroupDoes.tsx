import { useMemo } from 'react';
import { depthForHeads, groupFigures, rowsApartFor } from '../../plan/group-figures';
import type { PlanRequest } from '../../plan/types';
import { formatFNumber, formatPercent } from '../../readings/format';
import { bodyOf } from '../../session/kit';
import { known } from '../../session/known';
import { gatheredGroup } from '../../session/plan-request';
import { useWorkbench } from '../state/workbench';
import { group as said } from '../words/group.en';
import { showIn } from './told';

/** What rows and spacing do to heads and sharpness from the standpoint that hangs. */
export function GroupDoes(props: { request: PlanRequest }) {
  const { session, models } = useWorkbench();
  const show = showIn(session.units);
  const standpoint =
    session.pictures.find(({ letter }) => letter === session.plan.picture)?.standpoint ?? 1;
  const { asked } = props.request;
  const does = useMemo(() => {
    const group = gatheredGroup(session, models);
    if (group === null) return null;
    const format = known(models.formats, bodyOf(session).format);
    return groupFigures(group.people, standpoint, format, asked.stretch);
  }, [session, models, standpoint, asked.stretch]);
  if (does === null) return null;
  const { width, headDifference, front, rowsApart, shared, ends, limit } = does;
  const most = asked.rowDifference;
  return (
    <section aria-label={said.does.title(show(standpoint))}>
      <h3>{said.does.title(show(standpoint))}</h3>
      <ul className="plain-list">
        <li>{said.does.width(show(width))}</li>
        {headDifference > 0 && <li>{said.does.heads(formatPercent(headDifference))}</li>}
        {most !== null && headDifference > most && (
          <li>
            {said.does.keep(
              formatPercent(most),
              show(depthForHeads(rowsApart, most)),
              show(rowsApartFor(front, most)),
            )}
          </li>
        )}
        {shared && <li>{said.does.focus(show(shared.focus), formatFNumber(shared.fNumber))}</li>}
        <li>{said.does.ends(formatPercent(ends.straight - 1), formatPercent(ends.curved - 1))}</li>
        {limit && <li>{said.does.limit(show(limit.half), said.people(limit.people))}</li>}
      </ul>
    </section>
  );
}
