import type { Change, Remedy, Verdict } from '../../plan/types';
import {
  setAsked,
  setBackdrop,
  setCameraWall,
  setSitterPlace,
  setWanted,
} from '../../session/actions/plan-page';
import { runOf } from '../../session/kit';
import type { Session } from '../../session/types';
import type { Workbench } from '../state/workbench';

/** Lenses are bought and pianos carried by people; what is a number of the session can be set. */
export const applies = ({ change }: Change): boolean =>
  change !== 'focal' && change !== 'other-camera' && change !== 'move-obstacle';

/** Makes the change that a failing pair needs, as one step that undo takes back. */
export function applyRemedy(
  act: Workbench['act'],
  session: Session,
  { wanted }: Verdict,
  { change }: Remedy,
): void {
  const { fNumber } = session.plan.asked;
  switch (change.change) {
    case 'room-length':
      act(setCameraWall, { to: runOf(session.room).cameraWall + change.by });
      break;
    case 'sitter-to-backdrop':
      act(setSitterPlace, { before: change.to });
      break;
    case 'backdrop-width':
      act(setBackdrop, { width: change.to });
      break;
    case 'backdrop-height':
      act(setBackdrop, { top: change.to });
      break;
    case 'camera-height':
      act(setWanted, { wanted, cameraHeight: change.to });
      break;
    case 'eyes-at':
      act(setWanted, { wanted, eyesAt: change.to });
      break;
    case 'frame-height':
      act(setWanted, { wanted, frameHeight: change.to });
      break;
    case 'nose-gain':
      act(setAsked, { noseGain: change.to });
      break;
    case 'f-number':
      act(setAsked, {
        fNumber: change.atLeast ? [fNumber[0], change.to] : [change.to, fNumber[1]],
      });
      break;
    case 'drop-demand':
      act(setAsked, { [change.demand]: null });
      break;
    default:
  }
}
