import { useState } from 'react';
import { FieldError, Form, Input, Label, TextField } from 'react-aria-components';
import { words } from '../words';
import { ChoiceList } from './onDemand';
import { Slip } from './Slip';
import { Do } from './words';

/** A colour in a sentence: chosen among swatches or typed. */
export function ColourValue(props: {
  label: string;
  shown: string;
  colour: string;
  swatches: readonly { readonly name: string; readonly colour: string }[];
  /** What the field for a colour of one's own is called. */
  typed: string;
  parse: (text: string) => string | null;
  wrong: (text: string) => string;
  onChoose: (colour: string) => void;
}) {
  const { label, shown, colour, swatches, onChoose } = props;
  return (
    <Slip label={label} shown={shown}>
      {(close) => (
        <>
          <ChoiceList
            label={label}
            mode="single"
            chosen={[colour]}
            choices={swatches.map((swatch) => ({
              id: swatch.colour,
              name: swatch.name,
              colour: swatch.colour,
            }))}
            onChange={([id]) => {
              if (id !== undefined) onChoose(id);
              close();
            }}
          />
          <TypedColour {...props} close={close} />
        </>
      )}
    </Slip>
  );
}

function TypedColour(props: {
  colour: string;
  typed: string;
  parse: (text: string) => string | null;
  wrong: (text: string) => string;
  onChoose: (colour: string) => void;
  close: () => void;
}) {
  const [text, setText] = useState(props.colour);
  const [wrong, setWrong] = useState(false);
  const commit = () => {
    const parsed = props.parse(text);
    if (parsed === null) return setWrong(true);
    props.onChoose(parsed);
    props.close();
  };
  return (
    <Form
      onSubmit={(event) => {
        event.preventDefault();
        commit();
      }}
    >
      <TextField
        className="field"
        value={text}
        onChange={(next) => {
          setText(next);
          setWrong(false);
        }}
        isInvalid={wrong}
        validationBehavior="aria"
      >
        <Label>{props.typed}</Label>
        <Input autoComplete="off" spellCheck={false} />
        {wrong && <FieldError className="slip-wrong">{props.wrong(text)}</FieldError>}
      </TextField>
      <div className="row">
        <Do main type="submit">
          {words.controls.set}
        </Do>
      </div>
    </Form>
  );
}
