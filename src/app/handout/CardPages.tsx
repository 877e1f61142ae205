import '../plan/cards.css';
import { type ReactNode, useMemo } from 'react';
import { shootingList } from '../../plan/shooting-list';
import { formatFNumber, formatFocal } from '../../readings/format';
import { planRequest } from '../../session/plan-request';
import { Card } from '../plan/Cards';
import { showIn } from '../plan/told';
import { usePlanned } from '../plan/usePlanned';
import { useWorkbench } from '../state/workbench';
import { cards } from '../words/cards.en';
import { plan } from '../words/plan.en';
import { IS_PENDING } from './whole';

/** Cards that a sheet holds. */
const HELD = { portrait: 6, landscape: 3 } as const;

/** The list in shooting order and a card for each picture, on as many sheets as they need. */
export function CardPages(props: {
  /** A sheet with its place among the sheets of this page, from 1. */
  sheet: (place: number, count: number, content: ReactNode) => ReactNode;
}) {
  const { session, models } = useWorkbench();
  const wanted = useMemo(() => planRequest(session, models), [session, models]);
  const { request, planned } = usePlanned(wanted);
  if (!request || !planned)
    return props.sheet(
      1,
      1,
      <p role="status" {...IS_PENDING}>
        {plan.working}
      </p>,
    );
  const { shots } = shootingList(request, planned);
  if (shots.length === 0) return props.sheet(1, 1, <p>{cards.none}</p>);
  const show = showIn(session.units);
  const held = HELD[session.handout.orientation];
  const count = Math.ceil(shots.length / held);
  const list = (
    <ol className="page-shots">
      {shots.map(({ wanted: id, setting }) => (
        <li key={id}>
          <b>{request.wanted.find((each) => each.id === id)?.name}</b>: {show(setting.standpoint)},{' '}
          {formatFocal(setting.mark)}, {formatFNumber(setting.fNumber)}
        </li>
      ))}
    </ol>
  );
  return Array.from({ length: count }, (_, sheet) =>
    props.sheet(
      sheet + 1,
      count,
      <>
        {sheet === 0 && list}
        <div className="page-cards">
          {shots.slice(sheet * held, (sheet + 1) * held).map((shot, i) => (
            <Card key={shot.wanted} shot={shot} place={sheet * held + i} request={request} />
          ))}
        </div>
      </>,
    ),
  );
}
