import { useMemo } from 'react';
import { FromAbove, FromSide, PRINT_REM, pageScale } from '../../../drawings/plan';
import { leadOf } from '../../../session/cast';
import { planRequest } from '../../../session/plan-request';
import { drawingContent } from '../../plan/drawingContent';
import { useProfile } from '../../state/useProfile';
import { useWorkbench } from '../../state/workbench';
import { light } from '../../words/light.en';
import { page as said } from '../../words/page.en';
import type { PageSitting } from '../useSitting';

/** The room from above and from the side, at the largest usual scale at which both fit the space (millimetres). */
export function RoomPart(props: {
  sitting: PageSitting;
  space: { readonly width: number; readonly height: number };
}) {
  const { models } = useWorkbench();
  const { session, pictures, cast } = props.sitting;
  const profile = useProfile(leadOf(cast, pictures[0].picture));
  const content = useMemo(
    () =>
      drawingContent(
        session,
        pictures,
        planRequest(session, models),
        models,
        profile,
        (lamp) => light.lamps[lamp].name,
      ),
    [session, pictures, models, profile],
  );
  const printed = pageScale(content, props.space);
  if (printed === null) return null;
  const { scale, beside } = printed;
  const sheet = { content, width: 0, rem: PRINT_REM, printScale: scale };
  return (
    <div className={beside ? 'page-room beside' : 'page-room'}>
      <FromAbove {...sheet} />
      <FromSide {...sheet} />
      <p className="page-note">{said.drawingsAt(scale)}</p>
    </div>
  );
}
