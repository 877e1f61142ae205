import { type ReactNode, useState } from 'react';
import { FieldError, Form, Input, Label, Text, TextField } from 'react-aria-components';
import type { Range } from '../../session/limits';
import { words } from '../words';
import type { Parsed } from './Entry';
import { Do } from './words';

/** One typed number of several that belong together. */
export interface Figure<Name extends string> {
  readonly name: Name;
  readonly label: string;
  readonly initial: string;
  readonly parse: (text: string) => Parsed;
  readonly range: Range;
  readonly show: (value: number) => string;
  readonly note?: string;
  /** May be left empty. */
  readonly optional?: boolean;
}

export type FigureValues<Name extends string> = Readonly<Partial<Record<Name, number>>>;

function readFigure<Name extends string>(
  figure: Figure<Name>,
  text: string,
): { value?: number; why?: string } {
  if (text.trim() === '') return figure.optional ? {} : { why: words.controls.needed };
  const parsed = figure.parse(text);
  if (!parsed.ok) return { why: parsed.why };
  const { least, most } = figure.range;
  if (parsed.value < least) return { why: words.controls.tooSmall(figure.show(least)) };
  if (parsed.value > most) return { why: words.controls.tooLarge(figure.show(most)) };
  return { value: parsed.value };
}

/**
 * A sheet of figures, checked when it is sent; each wrong one keeps its text, with the reason below it.
 * `children` shows what follows from those typed so far.
 */
export function Figures<Name extends string>(props: {
  figures: readonly Figure<Name>[];
  send: string;
  /** Returns why the figures cannot be taken together, or null. */
  onSend: (values: FigureValues<Name>) => string | null;
  before?: ReactNode;
  children?: (values: FigureValues<Name>) => ReactNode;
}) {
  const [texts, setTexts] = useState(
    () =>
      Object.fromEntries(props.figures.map(({ name, initial }) => [name, initial])) as Record<
        Name,
        string
      >,
  );
  const [sent, setSent] = useState(false);
  const [why, setWhy] = useState<string | null>(null);
  const read = props.figures.map((figure) => ({
    figure,
    ...readFigure(figure, texts[figure.name] ?? ''),
  }));
  const values = Object.fromEntries(
    read.flatMap(({ figure, value }) => (value === undefined ? [] : [[figure.name, value]])),
  ) as FigureValues<Name>;
  return (
    <Form
      className="figures"
      onSubmit={(event) => {
        event.preventDefault();
        setSent(true);
        if (read.every((each) => each.why === undefined)) setWhy(props.onSend(values));
      }}
    >
      {props.before}
      {read.map(({ figure, why: wrong }) => (
        <TextField
          key={figure.name}
          className="field"
          value={texts[figure.name] ?? ''}
          onChange={(text) => {
            setTexts((all) => ({ ...all, [figure.name]: text }));
            setWhy(null);
          }}
          isInvalid={sent && wrong !== undefined}
          validationBehavior="aria"
        >
          <Label>{figure.label}</Label>
          <Input autoComplete="off" spellCheck={false} />
          {figure.note && (
            <Text slot="description" className="slip-note">
              {figure.note}
            </Text>
          )}
          {sent && wrong !== undefined && <FieldError className="slip-wrong">{wrong}</FieldError>}
        </TextField>
      ))}
      {props.children?.(values)}
      {why !== null && (
        <p className="slip-wrong" role="alert">
          {why}
        </p>
      )}
      <div className="row">
        <Do main type="submit">
          {props.send}
        </Do>
      </div>
    </Form>
  );
}
