import './readings.css';
import { useState } from 'react';
import { type TableRow, tableCsv, tableText } from '../../handout/table';
import { compare, readPair } from '../../readings/compare';
import { readings, rowSentence, type Speaking } from '../../readings/read';
import { SHORT_TABLE } from '../../readings/rows';
import type { Reading } from '../../readings/types';
import { Do } from '../controls/words';
import { words } from '../words';
import { LINES } from './lines';
import type { Subject } from './shown';
import { unbroken } from './unbroken';
import { useStacked } from './useStacked';

const SHORT: ReadonlySet<string> = new Set(SHORT_TABLE);

/** What is set against what: the first column and the next picture's, of the same person where there is one. */
function setAgainst(columns: readonly Subject[]): readonly (Subject | undefined)[] {
  const [first, ...others] = columns;
  const elsewhere = others.filter(({ picture }) => picture !== first?.picture);
  const second =
    elsewhere.find(({ person }) => person === first?.person) ?? elsewhere[0] ?? others[0];
  return [first, second];
}

/** Every row of the table: numbers, change and sentence. */
function rowsOf(pictures: readonly Subject[], speaking: Speaking): TableRow[] {
  const columns = pictures.map(({ measures }) => readings(measures, speaking));
  const [first, second] = setAgainst(pictures);
  const changes = first && second ? compare(first.measures, second.measures, speaking) : [];
  const single = (columns[0] ?? []).map((reading, i) => ({
    id: reading.id as string,
    name: reading.name,
    cells: columns.map((column) => column[i] as Reading),
    change: changes[i]?.change ?? '',
    says: rowSentence(reading.id, pictures, speaking),
    formula: reading.formula,
  }));
  if (!first || !second) return single;
  const pairs = readPair(first, second, speaking).map((reading) => ({
    id: reading.id as string,
    name: reading.name,
    cells: pictures.map((_, i) => (i === 0 ? reading : null)),
    change: '',
    says: reading.meaning,
    formula: reading.formula,
  }));
  return [...single, ...pairs];
}

/** The readings, a column a picture and one for the change, each row with its sentence. */
export default function ReadingsTable(props: { columns: readonly Subject[]; speaking: Speaking }) {
  const [all, setAll] = useState(false);
  const [formulas, setFormulas] = useState(false);
  const [copied, setCopied] = useState<boolean | null>(null);
  const { columns } = props;
  const rows = rowsOf(columns, props.speaking);
  const letters = columns.map(({ letter }) => letter);
  const [first, second] = setAgainst(columns).map((column) => column?.letter);
  const said = words.readings;
  const copy = (text: string) =>
    navigator.clipboard.writeText(text).then(
      () => setCopied(true),
      () => setCopied(false),
    );
  return (
    <div className="sheet-paper readings-paper">
      <table
        className={useStacked(letters.length) ? 'readings stacked' : 'readings'}
        style={{ '--columns': letters.length } as React.CSSProperties}
      >
        <caption className="unseen">{said.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{second ? said.what : said.whatOne}</th>
            {columns.map(({ letter, picture, name }) => (
              <th key={letter} scope="col">
                <span className={`key ${LINES[picture].css}`}>{picture}</span>
                {name !== null && <span className="of">{name}</span>}
              </th>
            ))}
            {first && second && (
              <th scope="col" className="change">
                {said.change(first, second)}
              </th>
            )}
          </tr>
        </thead>
        {rows
          .filter(({ id }) => all || SHORT.has(id))
          .map((row) => (
            <tbody key={row.id} data-reading={row.id}>
              <tr className="numbers">
                <th scope="row">{row.name}</th>
                {row.cells.map((cell, i) => (
                  <td key={letters[i]}>{cell?.shown}</td>
                ))}
                {second && <td className="change">{row.change}</td>}
              </tr>
              <tr className="says">
                <td colSpan={letters.length + 2}>
                  {unbroken(row.says)}
                  {formulas && <span className="formula">{row.formula}</span>}
                </td>
              </tr>
            </tbody>
          ))}
      </table>
      <div className="row table-acts">
        <Do onPress={() => setAll(!all)}>{all ? said.fewer : said.all(rows.length)}</Do>
        <Do onPress={() => setFormulas(!formulas)}>{formulas ? said.noFormulas : said.formulas}</Do>
        <Do onPress={() => copy(tableText(letters, rows))}>{said.copyText}</Do>
        <Do onPress={() => copy(tableCsv(letters, rows))}>{said.copyCsv}</Do>
        <span role="status">
          {copied === true && said.copied}
          {copied === false && said.notCopied}
        </span>
      </div>
      <p className="slip-note">{said.caution}</p>
    </div>
  );
}
