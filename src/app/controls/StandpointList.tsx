import { type ReactNode, useState } from 'react';
import { formatLength } from '../../readings/format';
import { useWorkbench } from '../state/workbench';
import { TypedText } from './TypedText';
import { Do } from './words';

/** Standpoints typed one after another, metres; a list that cannot be read stays, with the reason. */
export function StandpointList(props: {
  label: string;
  standpoints: readonly number[];
  read: (
    text: string,
  ) =>
    | { readonly ok: true; readonly value: readonly number[] }
    | { readonly ok: false; readonly why: string };
  onSet: (to: readonly number[]) => void;
  /** What the button says. */
  set: string;
  /** Stands between the list and the button. */
  children?: ReactNode;
}) {
  const { units } = useWorkbench().session;
  const [text, setText] = useState(() =>
    props.standpoints.map((each) => formatLength(each, units, 'distance')).join(', '),
  );
  const [why, setWhy] = useState<string | null>(null);
  return (
    <TypedText
      label={props.label}
      text={text}
      onText={(next) => {
        setText(next);
        setWhy(null);
      }}
      why={why}
      onSend={() => {
        const read = props.read(text);
        if (read.ok) props.onSet(read.value);
        else setWhy(read.why);
      }}
    >
      {props.children}
      <div className="row">
        <Do type="submit">{props.set}</Do>
      </div>
    </TypedText>
  );
}
