import type { Choice } from './ChoiceList';
import { ChoiceList } from './onDemand';
import { Slip } from './Slip';

/** One of a few choices in a sentence. */
export function ChoiceValue<Id extends string>(props: {
  label: string;
  shown: string;
  chosen: Id;
  choices: readonly Choice<Id>[];
  onChoose: (id: Id) => void;
}) {
  return (
    <Slip label={props.label} shown={props.shown}>
      {(close) => (
        <ChoiceList
          label={props.label}
          mode="single"
          chosen={[props.chosen]}
          choices={props.choices}
          onChange={([id]) => {
            if (id !== undefined) props.onChoose(id as Id);
            close();
          }}
        />
      )}
    </Slip>
  );
}
