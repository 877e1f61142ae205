import type { ReactNode } from 'react';
import { type Asked, SHARP, type Sharp } from '../../plan/types';
import { formatFNumber, formatPercent } from '../../readings/format';
import { parseFNumber, parseShare } from '../../readings/parse';
import { setAsked } from '../../session/actions/plan-page';
import { LIMITS, type Range } from '../../session/limits';
import { USUAL_ASKED } from '../../session/plan-asked';
import { ChoiceValue } from '../controls/ChoiceValue';
import { LengthValue } from '../controls/LengthValue';
import { ManyChoices } from '../controls/ManyChoices';
import { TypedValue } from '../controls/TypedValue';
import { useWorkbench } from '../state/workbench';
import { plan as said } from '../words/plan.en';

/** What may be asked or not; the apertures are always there. */
const OPTIONAL = [
  'noseGain',
  'stretch',
  'rowDifference',
  'personal',
  'clearance',
  'sharp',
  'softness',
  'backdropMargin',
] as const satisfies readonly (keyof Asked)[];
type Optional = (typeof OPTIONAL)[number];

/** What is asked when it is asked again. By eye, no source, where the usual request leaves it out. */
const WHEN_ASKED: Pick<Asked, Optional> = { ...USUAL_ASKED, personal: 0.8, softness: 0.01 };

function ShareAsked(props: {
  of: 'noseGain' | 'stretch' | 'rowDifference' | 'softness';
  range: Range;
}) {
  const { session, act } = useWorkbench();
  return (
    <TypedValue
      label={said.labels[props.of]}
      shown={formatPercent(session.plan.asked[props.of] ?? 0)}
      initial={formatPercent(session.plan.asked[props.of] ?? 0)}
      parse={parseShare}
      range={props.range}
      show={(share) => formatPercent(share)}
      note={said.askedNotes[props.of]}
      onCommit={(to) => act(setAsked, { [props.of]: to })}
    />
  );
}

function LengthAsked(props: { of: 'personal' | 'clearance' | 'backdropMargin'; range: Range }) {
  const { session, act } = useWorkbench();
  return (
    <LengthValue
      label={said.labels[props.of]}
      metres={session.plan.asked[props.of] ?? 0}
      purpose={props.of === 'backdropMargin' ? 'depth' : 'distance'}
      range={props.range}
      note={said.askedNotes[props.of]}
      onCommit={(to) => act(setAsked, { [props.of]: to })}
    />
  );
}

function SharpAsked(props: { sharp: Sharp }) {
  const { act } = useWorkbench();
  return (
    <ChoiceValue
      label={said.labels.sharp}
      shown={said.sharps[props.sharp]}
      chosen={props.sharp}
      choices={SHARP.map((id) => ({ id, name: said.capital(said.sharpNames[id]) }))}
      onChoose={(sharp) => act(setAsked, { sharp })}
    />
  );
}

function ApertureAsked(props: { end: 0 | 1 }) {
  const { session, act } = useWorkbench();
  const { fNumber } = session.plan.asked;
  return (
    <TypedValue
      label={props.end === 0 ? said.labels.widest : said.labels.smallest}
      shown={formatFNumber(fNumber[props.end])}
      initial={formatFNumber(fNumber[props.end])}
      parse={parseFNumber}
      range={LIMITS.fNumber}
      show={(value) => formatFNumber(value)}
      onCommit={(to) =>
        act(setAsked, { fNumber: props.end === 0 ? [to, fNumber[1]] : [fNumber[0], to] })
      }
    />
  );
}

function part(name: Optional, asked: Asked): ReactNode {
  const says = said.askedParts;
  switch (name) {
    case 'noseGain':
      return says.noseGain(<ShareAsked of={name} range={LIMITS.askedNoseGain} />);
    case 'stretch':
      return says.stretch(<ShareAsked of={name} range={LIMITS.askedStretch} />);
    case 'rowDifference':
      return says.rowDifference(<ShareAsked of={name} range={LIMITS.askedRowDifference} />);
    case 'softness':
      return says.softness(<ShareAsked of={name} range={LIMITS.askedSoftness} />);
    case 'personal':
      return says.personal(<LengthAsked of={name} range={LIMITS.askedPersonal} />);
    case 'clearance':
      return says.clearance(<LengthAsked of={name} range={LIMITS.askedClearance} />);
    case 'backdropMargin':
      return says.backdropMargin(<LengthAsked of={name} range={LIMITS.askedBackdropMargin} />);
    case 'sharp':
      return says.sharp(<SharpAsked sharp={asked.sharp ?? 'eyes'} />);
  }
}

/** What every picture must keep to; each demand is changed where it stands, or not made. */
export function AskedSentence() {
  const { session, act } = useWorkbench();
  const { asked } = session.plan;
  const made = OPTIONAL.filter((name) => asked[name] !== null);
  return (
    <p className="setup">
      {said.asked(
        [
          ...made.map((name) => part(name, asked)),
          said.askedParts.fNumber(<ApertureAsked end={0} />, <ApertureAsked end={1} />),
        ],
        <ManyChoices
          label={said.labels.demands}
          shown={said.askMore}
          chosen={made}
          choices={OPTIONAL.map((id) => ({ id, name: said.capital(said.demands[id]) }))}
          onChange={(chosen) =>
            act(
              setAsked,
              Object.fromEntries(
                OPTIONAL.map((name) => [
                  name,
                  chosen.includes(name) ? (asked[name] ?? WHEN_ASKED[name]) : null,
                ]),
              ),
            )
          }
        />,
      )}
    </p>
  );
}
