import { useState } from 'react';
import { NAME_LENGTH } from '../../session/limits';
import { words } from '../words';
import { Slip } from './Slip';
import { TypedText } from './TypedText';
import { Do } from './words';

function TextEntry(props: {
  label: string;
  text: string;
  longest?: number;
  onCommit: (text: string) => void;
  close: () => void;
}) {
  const [text, setText] = useState(props.text);
  const [why, setWhy] = useState<string | null>(null);
  return (
    <TypedText
      label={props.label}
      unseen
      text={text}
      onText={(next) => {
        setText(next);
        setWhy(null);
      }}
      why={why}
      onSend={() => {
        const name = text.trim().slice(0, props.longest ?? NAME_LENGTH);
        if (name === '') return setWhy(words.controls.empty);
        props.onCommit(name);
        props.close();
      }}
      autoFocus
      selected
    >
      <div className="row">
        <Do main type="submit">
          {words.controls.set}
        </Do>
      </div>
    </TypedText>
  );
}

/** A name in a sentence, changed by typing it. */
export function TextValue(props: {
  label: string;
  text: string;
  /** Characters, at most; as a name's unless told. */
  longest?: number;
  onCommit: (text: string) => void;
}) {
  return (
    <Slip label={props.label} shown={props.text}>
      {(close) => <TextEntry {...props} close={close} />}
    </Slip>
  );
}
