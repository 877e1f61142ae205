import { useState } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';

/** A field for a whole number; its text stays as it was typed, and what is none is not a number. */
export function WholeNumber(props: {
  label: string;
  value: number;
  onChange: (value: number) => void;
  /** Why it cannot be taken. */
  wrong: string | null;
}) {
  const [text, setText] = useState(String(props.value));
  return (
    <TextField
      className="field"
      value={text}
      inputMode="numeric"
      onChange={(next) => {
        setText(next);
        props.onChange(/^\s*\d+\s*$/.test(next) ? Number(next) : Number.NaN);
      }}
      isInvalid={props.wrong !== null}
      validationBehavior="aria"
    >
      <Label>{props.label}</Label>
      <Input autoComplete="off" />
      {props.wrong !== null && <FieldError className="slip-wrong">{props.wrong}</FieldError>}
    </TextField>
  );
}
