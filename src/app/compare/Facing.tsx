import { setPose } from '../../session/actions';
import { LIMITS } from '../../session/limits';
import type { Person } from '../../session/types';
import type { Pose } from '../../sitter/types';
import { AngleValue, showAngle } from '../controls/AngleValue';
import { Slip } from '../controls/Slip';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';

const said = words.compare;
const size = (angle: number) => showAngle(Math.abs(angle));

/** "facing the camera", or how the sitter is turned. */
function facing(pose: Pose): string {
  const turn = pose.bodyTurn + pose.headTurn;
  const parts = [
    ...(turn === 0 ? [] : [(turn > 0 ? said.turnLeft : said.turnRight)(size(turn))]),
    ...(pose.headNod === 0
      ? []
      : [(pose.headNod > 0 ? said.nodUp : said.nodDown)(size(pose.headNod))]),
    ...(pose.headTilt === 0 ? [] : [said.tilted(size(pose.headTilt))]),
  ];
  return parts.length === 0 ? said.facing : parts.join(said.and);
}

/** How somebody is turned to the camera: whole figure, head turned, raised, lowered, tilted. */
export function Facing({ person: { id, pose }, label }: { person: Person; label: string }) {
  const { act } = useWorkbench();
  const fields = [
    ['bodyTurn', said.bodyField, LIMITS.bodyTurn],
    ['headTurn', said.turnField, LIMITS.headTurn],
    ['headNod', said.nodField, LIMITS.headNod],
    ['headTilt', said.tiltField, LIMITS.headTilt],
  ] as const;
  return (
    <Slip label={label} shown={facing(pose)}>
      {() =>
        fields.map(([name, field, range]) => (
          <p key={name}>
            {field}:{' '}
            <AngleValue
              label={field}
              radians={pose[name]}
              shown={showAngle(pose[name])}
              range={range}
              onCommit={(to) => act(setPose, { person: id, [name]: to })}
            />
          </p>
        ))
      }
    </Slip>
  );
}
