import { ListBox, ListBoxItem } from 'react-aria-components';

export interface Choice<Id extends string> {
  readonly id: Id;
  readonly name: string;
  readonly note?: string | undefined;
}

/**
 * Choices one below the other, one or any number of them chosen. Enter and Space both choose; an
 * `onAction` on the list would take Enter away from choosing.
 */
export default function ChoiceList<Id extends string>(props: {
  label: string;
  mode: 'single' | 'multiple';
  chosen: readonly Id[];
  choices: readonly Choice<Id>[];
  onChange: (chosen: readonly Id[]) => void;
}) {
  const ids = props.choices.map(({ id }) => id);
  return (
    <ListBox
      className="choices"
      aria-label={props.label}
      selectionMode={props.mode}
      disallowEmptySelection={props.mode === 'single'}
      selectedKeys={props.chosen}
      autoFocus
      onSelectionChange={(keys) =>
        props.onChange(keys === 'all' ? ids : ids.filter((id) => keys.has(id)))
      }
    >
      {props.choices.map((choice) => (
        <ListBoxItem key={choice.id} id={choice.id} textValue={choice.name} className="choice">
          {choice.name}
          {choice.note && <small>{choice.note}</small>}
        </ListBoxItem>
      ))}
    </ListBox>
  );
}
