import './table.css';
import { useMemo, useState } from 'react';
import { rangeTable, TABLED_ROWS, USUAL_TABLED, withPictures } from '../../../handout/range-table';
import { formatLength } from '../../../readings/format';
import { type Speaking, speaking } from '../../../readings/read';
import type { ReadingId } from '../../../readings/rows';
import { letterAt } from '../../compare/series';
import { ManyChoices } from '../../controls/ManyChoices';
import { Sheet } from '../../controls/Sheet';
import { Toggle } from '../../controls/words';
import { useWorkbench } from '../../state/workbench';
import { table as said } from '../../words/table.en';
import type { TakeAwayProps } from '../TakeAway';
import { ChartOf } from './ChartOf';
import { RangeTableView } from './RangeTableView';
import { StandpointsValue } from './StandpointsValue';
import { tabledChoices } from './sitters';
import { TableActs } from './TableActs';
import { type Measured, useTabled } from './useTabled';

function Table(props: {
  measured: Measured;
  chosen: ReadonlySet<ReadingId>;
  /** The pictures' standpoints have rows too. */
  pictured: boolean;
  options: Speaking;
}) {
  const { measured, chosen, pictured, options } = props;
  const { session, sitters } = measured;
  const table = useMemo(
    () =>
      rangeTable(
        {
          standpoints: pictured ? withPictures(session.tabled, session.pictures) : session.tabled,
          sitters,
          readings: chosen,
          letterAt: (standpoint) => letterAt(session, standpoint),
          show: (standpoint) => formatLength(standpoint, session.units, 'distance'),
        },
        options,
      ),
    [session, sitters, chosen, pictured, options],
  );
  if (table.rows.length === 0 || table.columns.length === 0) return <p>{said.nothing}</p>;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by the keyboard */}
      <section className="range-scroll" aria-label={said.caption} tabIndex={0}>
        <RangeTableView table={table} className="range-table" />
      </section>
      <TableActs table={table} />
    </>
  );
}

/** Readings over a range of standpoints, as a table and as a chart, to take away. */
export default function TableSheet({ darkroom, onClose }: TakeAwayProps) {
  const { session, models } = useWorkbench();
  const { units } = session;
  const choices = useMemo(() => tabledChoices(session, models), [session, models]);
  const [sitterIds, setSitterIds] = useState<readonly string[]>(() =>
    session.people.map(({ id }) => `person ${id}`),
  );
  const chosen = useMemo(
    () => choices.filter(({ id }) => sitterIds.includes(id)),
    [choices, sitterIds],
  );
  const [readingIds, setReadingIds] = useState<readonly string[]>(USUAL_TABLED);
  const readings = useMemo(() => new Set(readingIds as readonly ReadingId[]), [readingIds]);
  const [pictured, setPictured] = useState(true);
  const { measured, isWaiting, why } = useTabled(darkroom, session, chosen);
  const options = useMemo((): Speaking => ({ units }), [units]);
  const { say, words } = speaking(options);
  return (
    <Sheet title={said.title} open onClose={onClose}>
      <div className="table-sheet" aria-busy={isWaiting}>
        <p className="setup">
          {said.sentence({
            standpoints: <StandpointsValue />,
            sitters: (
              <ManyChoices
                label={said.sitters}
                shown={said.sittersShown(chosen.map(({ name }) => name))}
                chosen={sitterIds}
                choices={choices}
                onChange={setSitterIds}
              />
            ),
            readings: (
              <ManyChoices
                label={said.readings}
                shown={said.readingsShown(readings.size)}
                chosen={readingIds}
                choices={TABLED_ROWS.map(({ id }) => ({ id, name: words.rows[id].name(say) }))}
                onChange={setReadingIds}
              />
            ),
          })}
        </p>
        <div className="row">
          <Toggle on={pictured} onChange={setPictured}>
            {said.withPictures}
          </Toggle>
        </div>
        <p className="slip-note">
          {said.note(session.pictures[0]?.letter ?? '')}{' '}
          <span role="status">
            {why !== null ? said.failed(why) : isWaiting ? said.waiting : ''}
          </span>
        </p>
        {measured && measured.sitters.length > 0 && (
          <>
            <Table measured={measured} chosen={readings} pictured={pictured} options={options} />
            <ChartOf measured={measured} options={options} />
          </>
        )}
        {measured && measured.sitters.length === 0 && <p>{said.nothing}</p>}
      </div>
    </Sheet>
  );
}
