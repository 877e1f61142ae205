import '../../plan/cards.css';
import { useMemo } from 'react';
import { shootingList } from '../../../plan/shooting-list';
import { formatFNumber, formatFocal } from '../../../readings/format';
import { planRequest } from '../../../session/plan-request';
import { Card } from '../../plan/Cards';
import { showIn } from '../../plan/told';
import { usePlanned } from '../../plan/usePlanned';
import { useWorkbench } from '../../state/workbench';
import { cards } from '../../words/cards.en';
import { plan } from '../../words/plan.en';

/** The list in shooting order and a card for each picture. */
export function CardsPart() {
  const { session, models } = useWorkbench();
  const wanted = useMemo(() => planRequest(session, models), [session, models]);
  const { request, planned } = usePlanned(wanted);
  if (!request || !planned) return <p role="status">{plan.working}</p>;
  const { shots } = shootingList(request, planned);
  const show = showIn(session.units);
  if (shots.length === 0) return <p>{cards.none}</p>;
  return (
    <>
      <ol className="page-shots">
        {shots.map(({ wanted: id, setting }) => (
          <li key={id}>
            <b>{request.wanted.find((each) => each.id === id)?.name}</b>: {show(setting.standpoint)}
            , {formatFocal(setting.mark)}, {formatFNumber(setting.fNumber)}
          </li>
        ))}
      </ol>
      <div className="page-cards">
        {shots.map((shot, i) => (
          <Card key={shot.wanted} shot={shot} place={i} request={request} />
        ))}
      </div>
    </>
  );
}
