import { useMemo } from 'react';
import type { RowCurve } from '../../plan/group';
import { depthForHeads, type Ends, groupFigures, rowsApartFor } from '../../plan/group-figures';
import type { PlanRequest } from '../../plan/types';
import { formatFNumber, formatPercent } from '../../readings/format';
import { hungDepth } from '../../session/group-frame';
import { bodyOf } from '../../session/kit';
import { known } from '../../session/known';
import { gathered } from '../../session/plan-people';
import { useWorkbench } from '../state/workbench';
import { group as said } from '../words/group.en';
import { showIn } from './told';

/** What rows and spacing do to heads and sharpness from the standpoint that hangs. */
export function GroupDoes(props: { request: PlanRequest }) {
  const { session, models } = useWorkbench();
  const show = showIn(session.units);
  const { asked, room } = props.request;
  const { group, picture } = session.plan;
  const depth = hungDepth(session);
  const lens = session.pictures.find(({ letter }) => letter === picture)?.cameraHeight ?? 0;
  const format = known(models.formats, bodyOf(session).format);
  const does = useMemo(() => {
    if (group === null) return null;
    const standing = (curve: RowCurve) => gathered({ ...group, curve }, depth, models)?.people;
    const people = { straight: standing('straight') ?? null, curved: standing('curved') ?? null };
    const chosen = people[group.curve] ? group.curve : 'straight';
    const seen = { people, chosen, s: depth, lens, most: asked.stretch };
    const figures = groupFigures(seen, format);
    return figures && { ...figures, chosen };
  }, [group, models, depth, lens, format, asked.stretch]);
  if (group === null || does === null) return null;
  const { width, toBackdrop, headDifference, front, rowsApart, shared, chosen, ends } = does;
  const most = asked.rowDifference;
  const rows = group.rows.length;
  /** The ends of a curved row come forward of its middle. */
  const forward = depth - front;
  const apart = most === null ? 0 : rowsApartFor(front, most) - forward;
  const tellEnds = (curve: RowCurve, { across, up, limit }: Ends) => (
    <li>
      {said.does.ends({
        curve,
        isChosen: curve === chosen,
        across: formatPercent(across - 1),
        up: formatPercent(up - 1),
      })}{' '}
      {limit &&
        said.does.limit({
          row: rows > 1 ? limit.row + 1 : null,
          aside: show(limit.aside),
          forward: curve === 'curved' ? show(limit.forward) : null,
          people: said.people(limit.people),
        })}
    </li>
  );
  const other = chosen === 'straight' ? 'curved' : 'straight';
  return (
    <section aria-label={said.does.title(show(depth))}>
      <h3>{said.does.title(show(depth))}</h3>
      <ul className="plain-list">
        <li>{said.does.width(show(width))}</li>
        {toBackdrop > room.backdrop.behind && (
          <li>
            <b>{said.does.backdrop(show(toBackdrop))}</b>
          </li>
        )}
        {headDifference > 0 && (
          <li>{said.does.heads(formatPercent(headDifference), chosen, rows)}</li>
        )}
        {most !== null && headDifference > most && (
          <li>
            {said.does.keep(
              formatPercent(most),
              show(depthForHeads(rowsApart, most) + forward),
              rows > 1 && apart > 0 ? show(apart) : null,
            )}
          </li>
        )}
        {shared && (
          <li>{said.does.focus(show(shared.focus), formatFNumber(shared.fNumber), rows)}</li>
        )}
        {ends[chosen] && tellEnds(chosen, ends[chosen])}
        {ends[other] && tellEnds(other, ends[other])}
      </ul>
    </section>
  );
}
