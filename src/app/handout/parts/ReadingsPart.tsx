import { readings, rowSentence } from '../../../readings/read';
import type { ReadingId } from '../../../readings/rows';
import { LINES } from '../../compare/lines';
import { columnsOf } from '../../compare/shown';
import { page as said } from '../../words/page.en';
import type { PageSitting } from '../useSitting';

/** What a page tells, in its order: all where the readings are what it is about, else the first of them. */
const TOLD: readonly ReadingId[] = [
  'nose_to_ear_ratio',
  'depth_of_field_m.total',
  'print_viewing_distance_m',
  'size_ratio.nose_tip',
  'size_ratio.ears',
  'background_size_ratio',
];
const FIRST = 3;

/** The main readings, a column a picture, with their plain sentences. */
export function ReadingsPart({ sitting, all }: { sitting: PageSitting; all: boolean }) {
  const { session, pictures, pronoun } = sitting;
  const columns = columnsOf(pictures);
  const speaking = { units: session.units, pronoun };
  const told = columns.map(
    ({ measures }) => new Map(readings(measures, speaking).map((reading) => [reading.id, reading])),
  );
  return (
    <table className="page-readings">
      <thead>
        <tr>
          <th scope="col">{said.measured}</th>
          {columns.map(({ letter, picture, name }) => (
            <th key={letter} scope="col" className="number">
              <span className={`key ${LINES[picture].css}`}>{picture}</span>
              {name !== null && <span className="of">{name}</span>}
            </th>
          ))}
          <th scope="col">{said.inWords}</th>
        </tr>
      </thead>
      <tbody>
        {TOLD.slice(0, all ? TOLD.length : FIRST).map((id) => (
          <tr key={id}>
            <th scope="row">{told[0]?.get(id)?.name}</th>
            {columns.map(({ letter }, i) => (
              <td key={letter} className="number">
                {told[i]?.get(id)?.shown}
              </td>
            ))}
            <td className="says">{rowSentence(id, columns, speaking)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
