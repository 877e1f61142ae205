/** What a moved or typed part of the drawings changes in the session. */
import type { Moved, PlanThing } from '../../drawings/plan';
import { toSitter } from '../../plan/room';
import {
  moveBackdrop,
  moveLamp,
  moveStandpoint,
  setBackdrop,
  setCameraHeight,
  setObstacle,
  setSitterPlace,
} from '../../session/actions/plan-page';
import type { LampName } from '../../session/light';
import type { Session } from '../../session/types';
import type { Workbench } from '../state/workbench';

type Act = Workbench['act'];

/** `eyeHeight`: the first person's eyes above the floor, metres. */
export function move(
  act: Act,
  session: Session,
  what: PlanThing,
  [first, second]: Moved,
  eyeHeight: number,
): void {
  switch (what.kind) {
    case 'camera':
      act(moveStandpoint, { letter: what.letter, to: first });
      break;
    case 'lens':
      act(setCameraHeight, { letter: what.letter, to: first - eyeHeight });
      break;
    case 'sitter':
      act(setSitterPlace, {
        before: first,
        ...(second === undefined ? {} : { aside: second }),
      });
      break;
    case 'backdrop':
      act(moveBackdrop, { offWall: first });
      break;
    case 'backdrop-top':
      act(setBackdrop, { top: first });
      break;
    case 'obstacle':
      act(setObstacle, {
        obstacle: what.id,
        x: first,
        ...(second === undefined ? {} : { y: second }),
      });
      break;
    case 'light': {
      const [x, z] = toSitter(session.room)([first, second ?? 0]);
      act(moveLamp, { lamp: what.id as LampName, x, z });
    }
  }
}
