import { useState } from 'react';
import { type RangeTable, rangeCsv, rangeText } from '../../../handout/range-table';
import { Do } from '../../controls/words';
import { offerFile } from '../../state/offerFile';
import { useWorkbench } from '../../state/workbench';
import { table as said } from '../../words/table.en';
import { fileName } from '../fileName';

/** Spreadsheets read a file as UTF-8 when it begins so. */
const BYTE_ORDER_MARK = '\ufeff';

/** Takes the table away: to the clipboard or as a file. */
export function TableActs({ table }: { table: RangeTable }) {
  const { title } = useWorkbench().session;
  const [told, setTold] = useState('');
  const copy = () =>
    navigator.clipboard.writeText(rangeText(table, said)).then(
      () => setTold(said.copied),
      () => setTold(said.notCopied),
    );
  const save = () => {
    const name = fileName(`${title} ${said.standpoints}`, 'csv');
    const text = BYTE_ORDER_MARK + rangeCsv(table, said);
    offerFile(new Blob([text], { type: 'text/csv;charset=utf-8' }), name);
    setTold(said.saved(name));
  };
  return (
    <div className="row">
      <Do onPress={copy}>{said.copy}</Do>
      <Do onPress={save}>{said.saveCsv}</Do>
      <span role="status">{told}</span>
    </div>
  );
}
