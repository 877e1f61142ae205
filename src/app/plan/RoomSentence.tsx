import { setRoom } from '../../session/actions/plan-page';
import { setAxis } from '../../session/actions/room';
import { LIMITS } from '../../session/limits';
import type { Room } from '../../session/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { TextValue } from '../controls/TextValue';
import { useWorkbench } from '../state/workbench';
import { plan as said } from '../words/plan.en';

const AXES = ['along', 'across', 'diagonal'] as const;

/** The room, the backdrop and the sitter's place in it; each value is changed where it stands. */
export function RoomSentence() {
  const { session, models, act } = useWorkbench();
  const { room } = session;
  const { labels } = said;
  const set = (part: Partial<Room>) => act(setRoom, part);
  const hang = (part: Partial<Room['backdrop']>) =>
    set({ backdrop: { ...room.backdrop, ...part } });
  return (
    <p className="setup">
      {said.room({
        name: (
          <TextValue label={labels.roomName} text={room.name} onCommit={(name) => set({ name })} />
        ),
        length: (
          <LengthValue
            label={labels.length}
            metres={room.length}
            range={LIMITS.roomSide}
            onCommit={(length) => set({ length })}
          />
        ),
        width: (
          <LengthValue
            label={labels.width}
            metres={room.width}
            range={LIMITS.roomSide}
            onCommit={(width) => set({ width })}
          />
        ),
        ceiling: (
          <LengthValue
            label={labels.ceiling}
            metres={room.ceiling}
            range={LIMITS.ceiling}
            offers={[2.4, 2.6, 3]}
            onCommit={(ceiling) => set({ ceiling })}
          />
        ),
        axis: (
          <ChoiceValue
            label={labels.axis}
            shown={said.axes[room.axis]}
            chosen={room.axis}
            choices={AXES.map((id) => ({
              id,
              name: said.capital(said.axes[id]),
              note: said.axisNotes[id],
            }))}
            onChoose={(to) => act(setAxis, { to })}
          />
        ),
        backdrop: (
          <LengthValue
            label={labels.backdropWidth}
            metres={room.backdrop.width}
            range={LIMITS.backdropWidth}
            offers={[...models.backdrops.values()].map(({ width }) => width)}
            note={labels.rolls}
            onCommit={(width) => hang({ width })}
          />
        ),
        offWall: (
          <LengthValue
            label={labels.offWall}
            metres={room.backdrop.offWall}
            range={LIMITS.backdropOffWall}
            onCommit={(offWall) => hang({ offWall })}
          />
        ),
        top: (
          <LengthValue
            label={labels.top}
            metres={room.backdrop.top}
            range={LIMITS.backdropTop}
            onCommit={(top) => hang({ top })}
          />
        ),
        sitter: (
          <LengthValue
            label={labels.sitterBefore}
            metres={room.sitterBefore}
            range={LIMITS.backdrop}
            offers={[0.6, 1.2, 2]}
            onCommit={(sitterBefore) => set({ sitterBefore })}
          />
        ),
        kept: (
          <LengthValue
            label={labels.kept}
            metres={room.behindCamera}
            range={LIMITS.behindCamera}
            onCommit={(behindCamera) => set({ behindCamera })}
          />
        ),
      })}
    </p>
  );
}
