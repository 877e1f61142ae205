import './numbers.css';
import { useMemo } from 'react';
import { evenlyChosen, rangeTable, USUAL_TABLED, withPictures } from '../../../handout/range-table';
import { formatLength } from '../../../readings/format';
import { letterAt } from '../../compare/series';
import { useWorkbench } from '../../state/workbench';
import { RangeTableView } from '../../takeaway/table/RangeTableView';
import { table as said } from '../../words/table.en';
import type { PageSitting } from '../useSitting';
import { tabledOf } from './tabled';

/** With two people there is room for half of them. */
const FEWER = 3;

/** Rows that leave room for the charts below, by how the sheet lies. */
const MOST_ROWS = { portrait: 22, landscape: 7 } as const;

/** The main readings from each of the session's standpoints. */
export function NumbersPart({ sitting }: { sitting: PageSitting }) {
  const { models } = useWorkbench();
  const { session, pronoun } = sitting;
  const { tabled, units, handout } = session;
  const all = withPictures(tabled, session.pictures);
  const count = Math.min(all.length, MOST_ROWS[handout.orientation]);
  const table = useMemo(() => {
    const standpoints = evenlyChosen(withPictures(tabled, session.pictures), count);
    const sitters = tabledOf(sitting, models);
    const readings = new Set(sitters.length > 1 ? USUAL_TABLED.slice(0, FEWER) : USUAL_TABLED);
    return rangeTable(
      {
        standpoints,
        sitters,
        readings,
        letterAt: (standpoint) => letterAt(session, standpoint),
        show: (standpoint) => formatLength(standpoint, units, 'distance'),
      },
      { units, pronoun },
    );
  }, [sitting, models, session, tabled, count, units, pronoun]);
  return (
    <>
      <RangeTableView table={table} className="page-numbers" />
      {count < all.length && <p className="page-note">{said.leftOut(count, all.length)}</p>}
    </>
  );
}
