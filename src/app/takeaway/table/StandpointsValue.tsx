import { useState } from 'react';
import { FieldError, Form, Input, Label, TextField } from 'react-aria-components';
import { formatLength } from '../../../readings/format';
import { METRES_PER } from '../../../readings/parse';
import { setTabled } from '../../../session/actions/handout-page';
import {
  parseStandpointList,
  parseStandpointRange,
  type Standpoints,
} from '../../../session/standpoint-list';
import { Slip } from '../../controls/Slip';
import { TypedText } from '../../controls/TypedText';
import { Do } from '../../controls/words';
import { useWorkbench } from '../../state/workbench';
import { words } from '../../words';
import { table as said } from '../../words/table.en';

/** A usual step, metres. */
const STEP = { metric: 0.1, imperial: METRES_PER.ft / 2 } as const;
const FIELDS = ['start', 'end', 'step'] as const;

/** Sets the standpoints where they could be read; else tells why not. */
function useStandpoints(close: () => void) {
  const { session, act } = useWorkbench();
  const [why, setWhy] = useState<string | null>(null);
  const take = (parsed: Standpoints) => {
    if (!parsed.ok) return setWhy(said.refused(parsed.refused, session.units));
    act(setTabled, { to: parsed.value });
    close();
  };
  return { why, take, mend: () => setWhy(null) };
}

const unitOf = (units: 'metric' | 'imperial') => (units === 'metric' ? 'm' : 'ft');

function RangeForm({ close }: { close: () => void }) {
  const { units, tabled } = useWorkbench().session;
  const { why, take, mend } = useStandpoints(close);
  const show = (metres: number) => formatLength(metres, units, 'distance');
  const [texts, setTexts] = useState({
    start: show(tabled[0] ?? 0.3),
    end: show(tabled.at(-1) ?? 4),
    step: show(STEP[units]),
  });
  return (
    <Form
      onSubmit={(event) => {
        event.preventDefault();
        take(parseStandpointRange(texts, unitOf(units)));
      }}
    >
      <h3>{said.range}</h3>
      <div className="range-fields">
        {FIELDS.map((field, i) => (
          <TextField
            key={field}
            className="field"
            value={texts[field]}
            onChange={(text) => {
              setTexts({ ...texts, [field]: text });
              mend();
            }}
            isInvalid={why !== null}
            validationBehavior="aria"
            autoFocus={i === 0}
          >
            <Label>{said[field]}</Label>
            <Input autoComplete="off" spellCheck={false} />
            {why !== null && i === 0 && <FieldError className="slip-wrong">{why}</FieldError>}
          </TextField>
        ))}
      </div>
      <div className="row">
        <Do main type="submit">
          {words.controls.set}
        </Do>
      </div>
    </Form>
  );
}

function ListForm({ close }: { close: () => void }) {
  const { units, tabled } = useWorkbench().session;
  const { why, take, mend } = useStandpoints(close);
  const [text, setText] = useState(
    tabled.map((metres) => formatLength(metres, units, 'distance')).join(', '),
  );
  return (
    <TypedText
      label={said.list}
      text={text}
      onText={(next) => {
        setText(next);
        mend();
      }}
      why={why}
      onSend={() => take(parseStandpointList(text, unitOf(units)))}
    >
      <div className="row">
        <Do type="submit">{words.controls.set}</Do>
      </div>
    </TypedText>
  );
}

/** The standpoints of the table, in even steps or one by one. */
export function StandpointsValue() {
  const { units, tabled } = useWorkbench().session;
  const show = (metres: number | undefined) => formatLength(metres ?? 0, units, 'distance');
  const shown =
    tabled.length === 0
      ? said.noStandpoints
      : said.standpointsShown(tabled.length, show(tabled[0]), show(tabled.at(-1)));
  return (
    <Slip label={said.standpoints} shown={shown}>
      {(close) => (
        <>
          <RangeForm close={close} />
          <ListForm close={close} />
        </>
      )}
    </Slip>
  );
}
