import { formatLength } from '../../readings/format';
import { PLAIN_UNIT, parseLength } from '../../readings/parse';
import { moveStandpoint } from '../../session/actions';
import { LIMITS } from '../../session/limits';
import type { Letter } from '../../session/types';
import Entry from '../controls/Entry';
import { Sheet } from '../controls/Sheet';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';

/** A standpoint typed at its handle; the first character may be typed already. */
export default function TypeStandpoint(props: {
  letter: Letter;
  first: string;
  onClose: () => void;
}) {
  const { session, act } = useWorkbench();
  const { letter, first, onClose } = props;
  const show = (metres: number) => formatLength(metres, session.units, 'distance');
  const now = session.pictures.find((picture) => picture.letter === letter)?.standpoint ?? 0;
  const label = words.compare.standpointOf(letter);
  return (
    <Sheet title={label} open onClose={onClose}>
      <Entry
        label={label}
        initial={first === '' ? show(now) : first}
        selected={first === ''}
        parse={(text) => parseLength(text, { unit: PLAIN_UNIT[session.units] })}
        range={LIMITS.standpoint}
        show={show}
        note={words.compare.standpointNote}
        onCommit={(to) => act(moveStandpoint, { letter, to })}
        close={onClose}
      />
    </Sheet>
  );
}
