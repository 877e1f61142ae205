import './stills.css';
import { useState } from 'react';
import { formatLength } from '../../readings/format';
import { PLAIN_UNIT, parseLength } from '../../readings/parse';
import { setSeries } from '../../session/actions/comparisons';
import { LEAST_SERIES, LIMITS, MOST } from '../../session/limits';
import type { Pace } from '../../session/play';
import type { Session } from '../../session/types';
import type { Parsed } from '../controls/Entry';
import { Figures } from '../controls/Figures';
import { Slip } from '../controls/Slip';
import { StandpointList } from '../controls/StandpointList';
import { Toggle } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { stills } from '../words/stills.en';
import { readStandpoints, spaced } from './standpoints';

const said = stills.series;
const PACES: readonly Pace[] = ['metres', 'look'];

const parseCount = (text: string): Parsed =>
  /^\s*\d+\s*$/.test(text)
    ? { ok: true, value: Number(text) }
    : { ok: false, why: said.notWhole(text) };

/** From here to there in so many steps. */
function Spaced(props: { series: readonly number[]; onSet: (to: number[]) => void }) {
  const { units } = useWorkbench().session;
  const [pace, setPace] = useState<Pace>('look');
  const show = (metres: number) => formatLength(metres, units, 'distance');
  const parse = (text: string) => parseLength(text, { unit: PLAIN_UNIT[units] });
  const length = { parse, range: LIMITS.standpoint, show };
  return (
    <Figures
      figures={[
        { ...length, name: 'from', label: said.from, initial: show(props.series[0] as number) },
        { ...length, name: 'to', label: said.to, initial: show(props.series.at(-1) as number) },
        {
          name: 'count',
          label: said.count,
          initial: String(props.series.length),
          parse: parseCount,
          range: { least: LEAST_SERIES, most: MOST.series },
          show: String,
        },
      ]}
      send={said.space}
      onSend={({ from = 0, to = 0, count = 0 }) => {
        if (from === to) return said.apart;
        props.onSet(spaced(from, to, count, pace));
        return null;
      }}
    >
      {() => (
        <fieldset className="row strip-pace">
          <legend className="slip-note">{said.pace}</legend>
          {PACES.map((each) => (
            <Toggle key={each} on={pace === each} onChange={() => setPace(each)}>
              {said.paces[each]}
            </Toggle>
          ))}
          <p className="slip-note">{said.paceNote}</p>
        </fieldset>
      )}
    </Figures>
  );
}

/** Where the pictures of the strip are taken from, changed where it stands. */
export function Strip({ session }: { session: Session }) {
  const { act } = useWorkbench();
  const { series, units } = session;
  const show = (metres: number | undefined) => formatLength(metres ?? 0, units, 'distance');
  return (
    <p>
      {said.strip({
        standpoints: (
          <Slip
            label={said.label}
            shown={said.shown(series.length, show(series[0]), show(series.at(-1)))}
          >
            {(close) => {
              const set = (to: readonly number[]) => {
                act(setSeries, { to });
                close();
              };
              return (
                <>
                  <Spaced series={series} onSet={set} />
                  <StandpointList
                    label={said.list}
                    standpoints={series}
                    read={(text) => readStandpoints(text, units)}
                    onSet={set}
                    set={said.set}
                  >
                    <p className="slip-note">{said.listNote}</p>
                  </StandpointList>
                </>
              );
            }}
          </Slip>
        ),
      })}
    </p>
  );
}
