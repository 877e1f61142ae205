import { ListBox, ListBoxItem } from 'react-aria-components';
import type { Choice } from './ChoiceValue';
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
        <ListBox
          className="choices"
          aria-label={props.label}
          selectionMode="multiple"
          selectedKeys={props.chosen}
          autoFocus
          onSelectionChange={(keys) => {
            const ids = props.choices.map(({ id }) => id);
            props.onChange(keys === 'all' ? ids : ids.filter((id) => keys.has(id)));
          }}
        >
          {props.choices.map((choice) => (
            <ListBoxItem key={choice.id} id={choice.id} textValue={choice.name} className="choice">
              {choice.name}
            </ListBoxItem>
          ))}
        </ListBox>
      )}
    </Slip>
  );
}
