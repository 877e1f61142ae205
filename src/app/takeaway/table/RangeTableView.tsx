import type { RangeTable } from '../../../handout/range-table';
import { LINES } from '../../compare/lines';
import { table as said } from '../../words/table.en';

/** Columns side by side that are one sitter's. */
function groupsOf({ columns }: RangeTable) {
  const groups: { sitter: string; count: number }[] = [];
  for (const { sitter } of columns) {
    const last = groups.at(-1);
    if (last?.sitter === sitter) last.count += 1;
    else groups.push({ sitter, count: 1 });
  }
  return groups;
}

/** A row a standpoint, the pictures' own marked; the sitters' names stand over their columns. */
export function RangeTableView(props: { table: RangeTable; className: string }) {
  const { columns, rows } = props.table;
  return (
    <table className={props.className}>
      <caption className="unseen">{said.caption}</caption>
      <thead>
        <tr>
          <td />
          {groupsOf(props.table).map(({ sitter, count }) => (
            <th key={sitter} scope="colgroup" colSpan={count}>
              {sitter}
            </th>
          ))}
        </tr>
        <tr className="names">
          <th scope="col">{said.standpoint}</th>
          {columns.map(({ sitter, row, name }) => (
            <th key={`${sitter} ${row.id}`} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ standpoint, shown, letter, cells }) => (
          <tr key={standpoint} className={letter === null ? '' : `marked ${LINES[letter].css}`}>
            <th scope="row">
              {letter !== null && <b>{letter} </b>}
              {shown}
            </th>
            {cells.map(({ id, shown: value }, i) => (
              <td key={`${columns[i]?.sitter} ${id}`}>{value}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
