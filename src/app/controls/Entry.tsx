import { useState } from 'react';
import type { Range } from '../../session/limits';
import { words } from '../words';
import { TypedText } from './TypedText';
import { Do } from './words';

export type Parsed = { ok: true; value: number } | { ok: false; why: string };
export interface Offer {
  readonly value: number;
  readonly shown: string;
}

export interface EntryProps {
  /** What is typed, for the field's label. */
  label: string;
  /** The text the field opens with, selected unless it is the beginning of what is typed. */
  initial: string;
  selected?: boolean;
  parse: (text: string) => Parsed;
  /** What the value may be, and how an end of that range is shown. */
  range?: Range | undefined;
  show?: ((value: number) => string) | undefined;
  onCommit: (value: number) => void;
  /** A line under the field: what it does, or the caution that belongs to it. */
  note?: string | undefined;
  /** Usual values, each one press away. */
  offers?: readonly Offer[] | undefined;
}

function outsideOf(
  range: Range | undefined,
  value: number,
  show: (value: number) => string,
): string | null {
  if (!range) return null;
  if (value < range.least) return words.controls.tooSmall(show(range.least));
  return value > range.most ? words.controls.tooLarge(show(range.most)) : null;
}

/** A field for one typed number. A wrong text stays where it is, with the reason below it. */
export default function Entry({ close, ...props }: EntryProps & { close: () => void }) {
  const [text, setText] = useState(props.initial);
  const [why, setWhy] = useState<string | null>(null);
  const commit = () => {
    const parsed = props.parse(text);
    if (!parsed.ok) return setWhy(parsed.why);
    const outside = outsideOf(props.range, parsed.value, props.show ?? String);
    if (outside !== null) return setWhy(outside);
    props.onCommit(parsed.value);
    close();
  };
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
      onSend={commit}
      autoFocus
      selected={props.selected !== false}
    >
      {props.note && <p className="slip-note">{props.note}</p>}
      <div className="row">
        {props.offers?.map((offer) => (
          <Do
            key={offer.shown}
            onPress={() => {
              props.onCommit(offer.value);
              close();
            }}
          >
            {offer.shown}
          </Do>
        ))}
        <Do main type="submit">
          {words.controls.set}
        </Do>
      </div>
    </TypedText>
  );
}
