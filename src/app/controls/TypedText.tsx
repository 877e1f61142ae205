import type { ReactNode } from 'react';
import { FieldError, Form, Input, Label, TextField } from 'react-aria-components';

/** A field whose text is checked when it is sent. A wrong text stays, with the reason below it. */
export function TypedText(props: {
  label: string;
  /** The label is for a screen reader alone. */
  unseen?: boolean;
  text: string;
  onText: (text: string) => void;
  /** Why the text cannot be taken, once it was sent. */
  why: string | null;
  onSend: () => void;
  autoFocus?: boolean;
  /** The text is selected when the field takes the focus. */
  selected?: boolean;
  children: ReactNode;
}) {
  const { why } = props;
  return (
    <Form
      onSubmit={(event) => {
        event.preventDefault();
        props.onSend();
      }}
    >
      <TextField
        className="field"
        value={props.text}
        onChange={props.onText}
        isInvalid={why !== null}
        validationBehavior="aria"
        autoFocus={props.autoFocus ?? false}
      >
        <Label {...(props.unseen && { className: 'unseen' })}>{props.label}</Label>
        <Input
          onFocus={(event) => props.selected && event.currentTarget.select()}
          autoComplete="off"
          spellCheck={false}
        />
        {why !== null && <FieldError className="slip-wrong">{why}</FieldError>}
      </TextField>
      {props.children}
    </Form>
  );
}
