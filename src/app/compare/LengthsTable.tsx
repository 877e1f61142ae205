import './readings.css';
import { formatLength } from '../../readings/format';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { LINES } from './lines';
import type { DrawnLength } from './over/lengths';
import type { Shown } from './shown';
import { useStacked } from './useStacked';

/** The lengths between landmarks: as each picture draws them, and themselves. */
export default function LengthsTable(props: {
  pictures: readonly Shown[];
  lengths: readonly (readonly DrawnLength[])[];
}) {
  const { units } = useWorkbench().session;
  const show = (metres: number | undefined) =>
    metres === undefined ? '' : formatLength(metres, units, 'depth');
  const said = words.looks;
  return (
    <div className="sheet-paper readings-paper">
      <table
        className={useStacked(props.pictures.length) ? 'readings stacked' : 'readings'}
        style={{ '--columns': props.pictures.length } as React.CSSProperties}
      >
        <caption className="unseen">{said.lengthsCaption}</caption>
        <thead>
          <tr>
            <th scope="col">{said.lengthsCaption}</th>
            {props.pictures.map(({ letter }) => (
              <th key={letter} scope="col">
                <span className={`key ${LINES[letter].css}`}>{letter}</span>
              </th>
            ))}
            <th scope="col" className="change">
              {said.lengthItself}
            </th>
          </tr>
        </thead>
        <tbody>
          {(props.lengths[0] ?? []).map(({ id, number, real }) => (
            <tr key={id} className="numbers" data-length={id}>
              <th scope="row">
                {number} {said.lengthNames[id]}
              </th>
              {props.lengths.map((own, i) => (
                <td key={props.pictures[i]?.letter}>
                  {show(own.find((each) => each.id === id)?.drawn)}
                </td>
              ))}
              <td className="change">{show(real)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="slip-note">{said.lengthsSay}</p>
    </div>
  );
}
