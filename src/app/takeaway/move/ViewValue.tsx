import { ChoiceValue } from '../../controls/ChoiceValue';
import { move as said } from '../../words/move.en';
import { MOVE_VIEWS, type MoveView } from './along';

/** Whether the first picture stays beside the moving one. */
export function ViewValue(props: { chosen: MoveView; onChoose: (view: MoveView) => void }) {
  return (
    <ChoiceValue
      label={said.view}
      shown={said.views[props.chosen][0]}
      chosen={props.chosen}
      choices={MOVE_VIEWS.map((id) => ({ id, name: said.views[id][0], note: said.views[id][1] }))}
      onChoose={props.onChoose}
    />
  );
}
