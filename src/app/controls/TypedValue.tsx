import type { EntryProps } from './Entry';
import { Entry } from './onDemand';
import { Slip } from './Slip';

/** A number in a sentence, changed by typing it. */
export function TypedValue({
  shown,
  held,
  disabled,
  ...entry
}: EntryProps & { shown: string; held?: boolean; disabled?: boolean }) {
  return (
    <Slip label={entry.label} shown={shown} held={held ?? false} disabled={disabled ?? false}>
      {(close) => <Entry {...entry} close={close} />}
    </Slip>
  );
}
