import { ListBox, ListBoxItem } from 'react-aria-components';
import { Slip } from './Slip';

export interface Choice<Id extends string> {
  readonly id: Id;
  readonly name: string;
  readonly note?: string | undefined;
}

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
        <ListBox
          className="choices"
          aria-label={props.label}
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[props.chosen]}
          autoFocus
          onAction={close}
          onSelectionChange={(keys) => {
            const [id] = keys as Set<Id>;
            if (id !== undefined) props.onChoose(id);
            close();
          }}
        >
          {props.choices.map((choice) => (
            <ListBoxItem key={choice.id} id={choice.id} textValue={choice.name} className="choice">
              {choice.name}
              {choice.note && <small>{choice.note}</small>}
            </ListBoxItem>
          ))}
        </ListBox>
      )}
    </Slip>
  );
}
