import { useState } from 'react';
import { words } from '../words';
import { ChoiceList } from './onDemand';
import { Slip } from './Slip';
import { TypedText } from './TypedText';
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
    <TypedText
      label={props.typed}
      text={text}
      onText={(next) => {
        setText(next);
        setWrong(false);
      }}
      why={wrong ? props.wrong(text) : null}
      onSend={commit}
    >
      <div className="row">
        <Do main type="submit">
          {words.controls.set}
        </Do>
      </div>
    </TypedText>
  );
}
