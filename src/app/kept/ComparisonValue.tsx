import { ChoiceValue } from '../controls/ChoiceValue';
import { useWorkbench } from '../state/workbench';

/** Which comparison something is made of: the one on the wall (null), or one kept beside it. */
export function ComparisonValue(props: {
  label: string;
  /** What the one on the wall is called. */
  onTheWall: string;
  chosen: string | null;
  onChoose: (id: string | null) => void;
}) {
  const { comparisons } = useWorkbench().session;
  const { onTheWall, chosen } = props;
  return (
    <ChoiceValue
      label={props.label}
      shown={comparisons.find(({ id }) => id === chosen)?.name ?? onTheWall}
      chosen={chosen ?? ''}
      choices={[{ id: '', name: onTheWall }, ...comparisons.map(({ id, name }) => ({ id, name }))]}
      onChoose={(id) => props.onChoose(id === '' ? null : id)}
    />
  );
}
