import { useState } from 'react';
import { sessionWith } from '../../session/comparison';
import { ComparisonValue } from '../kept/ComparisonValue';
import { useWorkbench } from '../state/workbench';
import type { TakeAwayProps } from '../takeaway/TakeAway';
import { stills as said } from '../words/stills.en';
import StillSheet from './StillSheet';

/** Stills of what hangs on the wall or of a kept comparison, rendered in the darkroom. */
export default function HandoutStills({ darkroom, onClose, strip }: TakeAwayProps) {
  const { session } = useWorkbench();
  const [kept, setKept] = useState<string | null>(strip?.comparison ?? null);
  return (
    <StillSheet
      session={sessionWith(session, kept)}
      sit={(taken, work, signal) => darkroom.use(taken, work, signal)}
      onClose={onClose}
      {...(strip && { what: 'strip' as const })}
    >
      {session.comparisons.length > 0 && (
        <p>
          {said.of({
            comparison: (
              <ComparisonValue
                label={said.about}
                onTheWall={said.onTheWall}
                chosen={kept}
                onChoose={setKept}
              />
            ),
          })}
        </p>
      )}
    </StillSheet>
  );
}
