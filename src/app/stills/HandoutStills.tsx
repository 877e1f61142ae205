import { useState } from 'react';
import { sessionWith } from '../../session/comparison';
import { ChoiceValue } from '../controls/ChoiceValue';
import { useWorkbench } from '../state/workbench';
import type { TakeAwayProps } from '../takeaway/TakeAway';
import { stills as said } from '../words/stills.en';
import StillSheet from './StillSheet';

/** Stills of what hangs on the wall or of a kept comparison, rendered in the darkroom. */
export default function HandoutStills({ darkroom, onClose }: TakeAwayProps) {
  const { session } = useWorkbench();
  const [kept, setKept] = useState<string | null>(null);
  const { comparisons } = session;
  const chosen = comparisons.find(({ id }) => id === kept);
  return (
    <StillSheet
      session={sessionWith(session, kept)}
      sit={(taken, work, signal) => darkroom.use(taken, work, signal)}
      onClose={onClose}
    >
      {comparisons.length > 0 && (
        <p>
          {said.of({
            comparison: (
              <ChoiceValue
                label={said.about}
                shown={chosen?.name ?? said.onTheWall}
                chosen={kept ?? ''}
                choices={[
                  { id: '', name: said.onTheWall },
                  ...comparisons.map(({ id, name }) => ({ id, name })),
                ]}
                onChoose={(id) => setKept(id === '' ? null : id)}
              />
            ),
          })}
        </p>
      )}
    </StillSheet>
  );
}
