import type { Choice } from './ChoiceList';
import { ChoiceList } from './onDemand';
import { Slip } from './Slip';

/** Any number of choices in a sentence. The slip stays open while they are ticked. */
export function ManyChoices(props: {
  label: string;
  shown: string;
  chosen: readonly string[];
  choices: readonly Choice<string>[];
  onChange: (chosen: readonly string[]) => void;
}) {
  return (
    <Slip label={props.label} shown={props.shown}>
      {() => (
        <ChoiceList
          label={props.label}
          mode="multiple"
          chosen={props.chosen}
          choices={props.choices}
          onChange={props.onChange}
        />
      )}
    </Slip>
  );
}
