import { ListBox, ListBoxItem } from 'react-aria-components';

export interface Choice<Id extends string> {
  readonly id: Id;
  readonly name: string;
  readonly note?: string | undefined;
  /** Shown as a swatch beside the name. */
  readonly colour?: string | undefined;
}

/**
 * Choices one below the other, one or any number of them chosen. Enter and Space both choose; an
 * `onAction` on the list would take Enter away from choosing.
 */
/** The chosen one, chosen again, is told too: whoever presses it means to be done. */
const TELL_AGAIN = { allowDuplicateSelectionEvents: true };

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
      // Escape closes the slip; it takes no choice back.
      escapeKeyBehavior="none"
      {...(props.mode === 'single' ? TELL_AGAIN : {})}
      onSelectionChange={(keys) =>
        props.onChange(keys === 'all' ? ids : ids.filter((id) => keys.has(id)))
      }
    >
      {props.choices.map((choice) => (
        <ListBoxItem key={choice.id} id={choice.id} textValue={choice.name} className="choice">
          <span>
            {choice.colour && <i className="swatch" style={{ background: choice.colour }} />}
            {choice.name}
          </span>
          {choice.note && <small>{choice.note}</small>}
        </ListBoxItem>
      ))}
    </ListBox>
  );
}
