import { useState } from 'react';
import { FieldError, Form, Input, Label, TextField } from 'react-aria-components';
import { formatLength, type Units } from '../../../readings/format';
import { METRES_PER, PLAIN_UNIT } from '../../../readings/parse';
import { setTabled } from '../../../session/actions/handout-page';
import {
  parseStandpointList,
  parseStandpointRange,
  type Standpoints,
} from '../../../session/standpoint-list';
import { Slip } from '../../controls/Slip';
import { StandpointList } from '../../controls/StandpointList';
import { Do } from '../../controls/words';
import { useWorkbench } from '../../state/workbench';
import { words } from '../../words';
import { table as said } from '../../words/table.en';

/** A usual step, metres. */
const STEP = { metric: 0.1, imperial: METRES_PER.ft / 2 } as const;
const FIELDS = ['start', 'end', 'step'] as const;

/** What was read, or why it cannot be taken. */
const told = (parsed: Standpoints, units: Units) =>
  parsed.ok ? parsed : { ok: false as const, why: said.refused(parsed.refused, units) };

function RangeForm({ onSet }: { onSet: (to: readonly number[]) => void }) {
  const { units, tabled } = useWorkbench().session;
  const [why, setWhy] = useState<string | null>(null);
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
        const read = told(parseStandpointRange(texts, PLAIN_UNIT[units]), units);
        if (read.ok) onSet(read.value);
        else setWhy(read.why);
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
              setWhy(null);
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

/** The standpoints of the table, in even steps or one by one. */
export function StandpointsValue() {
  const { session, act } = useWorkbench();
  const { units, tabled } = session;
  const show = (metres: number | undefined) => formatLength(metres ?? 0, units, 'distance');
  const shown =
    tabled.length === 0
      ? said.noStandpoints
      : said.standpointsShown(tabled.length, show(tabled[0]), show(tabled.at(-1)));
  return (
    <Slip label={said.standpoints} shown={shown}>
      {(close) => {
        const set = (to: readonly number[]) => {
          act(setTabled, { to });
          close();
        };
        return (
          <>
            <RangeForm onSet={set} />
            <StandpointList
              label={said.list}
              standpoints={tabled}
              read={(text) => told(parseStandpointList(text, PLAIN_UNIT[units]), units)}
              onSet={set}
              set={words.controls.set}
            />
          </>
        );
      }}
    </Slip>
  );
}
