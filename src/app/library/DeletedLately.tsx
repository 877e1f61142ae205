import { useState } from 'react';
import type { Listed } from '../../session/library';
import { Do } from '../controls/words';
import { sessions as said } from '../words/sessions.en';
import { DeletedLine } from './SessionLine';

/** Sessions deleted earlier: brought back, or cleared away for good once that is confirmed. */
export function DeletedLately(props: {
  deleted: readonly Listed[];
  onBringBack: (id: string) => void;
  onClear: () => void;
}) {
  const [shown, setShown] = useState(false);
  const [sure, setSure] = useState(false);
  const { deleted } = props;
  if (deleted.length === 0) return null;
  return (
    <section aria-label={said.lately(deleted.length)}>
      <Do aria-expanded={shown} onPress={() => setShown(!shown)}>
        {said.lately(deleted.length)}
      </Do>
      {shown && (
        <>
          <ul className="session-list">
            {deleted.map((listed) => (
              <DeletedLine
                key={listed.id}
                listed={listed}
                onBringBack={() => props.onBringBack(listed.id)}
              />
            ))}
          </ul>
          <div className="row">
            {sure ? (
              <>
                <span role="status">{said.clearSure}</span>
                <Do autoFocus onPress={props.onClear}>
                  {said.clearDo}
                </Do>
                <Do onPress={() => setSure(false)}>{said.clearNot}</Do>
              </>
            ) : (
              <Do onPress={() => setSure(true)}>{said.clear}</Do>
            )}
          </div>
        </>
      )}
    </section>
  );
}
