import { moveStandpoint } from '../../session/actions';
import { LIMITS } from '../../session/limits';
import { LengthValue } from '../controls/LengthValue';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import type { Shown } from './shown';

/** Nearer than arm's length the lens and the hands come close to a face, metres. */
export const CLOSE = 0.6;
const FOOT = 0.3048;
const OFFERS = {
  metric: [0.4, 0.6, 1, 1.6, 2.4, 4],
  imperial: [1.5, 2, 3, 5, 8, 12].map((feet) => feet * FOOT),
} as const;

/** A picture's standpoint, changed by typing it or by a usual distance. */
export function StandpointValue({ shown: { letter, resolved } }: { shown: Shown }) {
  const { session, act } = useWorkbench();
  const fixed = session.kept === 'standpoint';
  const said = words.compare;
  return (
    <LengthValue
      label={said.standpointOf(letter)}
      metres={resolved.standpoint}
      held={fixed}
      disabled={fixed}
      range={LIMITS.standpoint}
      note={resolved.standpoint < CLOSE ? said.tooNear : said.standpointNote}
      offers={OFFERS[session.units]}
      onCommit={(to) => act(moveStandpoint, { letter, to })}
    />
  );
}
