import { ChoiceValue } from '../../controls/ChoiceValue';
import { useWorkbench } from '../../state/workbench';
import { move as said } from '../../words/move.en';

/** Which comparison a file is made of: the one on the wall, or one kept beside it. */
export function ComparisonValue(props: {
  chosen: string | null;
  onChoose: (id: string | null) => void;
}) {
  const { comparisons } = useWorkbench().session;
  const name = comparisons.find(({ id }) => id === props.chosen)?.name ?? said.onTheWall;
  return (
    <ChoiceValue
      label={said.about}
      shown={name}
      chosen={props.chosen ?? ''}
      choices={[
        { id: '', name: said.onTheWall },
        ...comparisons.map((each) => ({ id: each.id, name: each.name })),
      ]}
      onChoose={(id) => props.onChoose(id === '' ? null : id)}
    />
  );
}
