import { useMemo, useRef, useState } from 'react';
import { type ChartScale, DistanceChart } from '../../../drawings/chart';
import { CHARTED_ROWS, rangeChart } from '../../../handout/range-chart';
import { svgFile } from '../../../handout/svg-file';
import { type Speaking, speaking } from '../../../readings/read';
import type { ReadingId } from '../../../readings/rows';
import { ChoiceValue } from '../../controls/ChoiceValue';
import { Do } from '../../controls/words';
import { offerFile } from '../../state/offerFile';
import { useSheet } from '../../state/useSheet';
import { table as said } from '../../words/table.en';
import { fileName } from '../fileName';
import type { Measured } from './useTabled';

const SCALES: readonly ChartScale[] = ['even', 'inverse'];

/** A reading over distance, with the choice of it. */
export function ChartOf({ measured, options }: { measured: Measured; options: Speaking }) {
  const [id, setId] = useState<ReadingId>('nose_to_ear_ratio');
  const [scale, setScale] = useState<ChartScale>('even');
  const [told, setTold] = useState('');
  const holder = useRef<HTMLDivElement>(null);
  const { ref, width, rem } = useSheet();
  const { session, sitters } = measured;
  const { tabled, pictures } = session;
  const { say, words } = speaking(options);
  const nameOf = (each: ReadingId) => words.rows[each].name(say);
  const content = useMemo(() => {
    const row = CHARTED_ROWS.find((each) => each.id === id);
    return row ? rangeChart({ row, sitters, tabled, pictures, scale }, options) : null;
  }, [id, sitters, tabled, pictures, scale, options]);
  const save = () => {
    if (!holder.current) return;
    const name = fileName(`${session.title} ${nameOf(id)}`, 'svg');
    offerFile(new Blob([svgFile(holder.current)], { type: 'image/svg+xml' }), name);
    setTold(said.saved(name));
  };
  return (
    <section aria-label={said.chart} className="chart-part">
      <p className="setup">
        {said.chartOf({
          reading: (
            <ChoiceValue
              label={said.charted}
              shown={nameOf(id)}
              chosen={id}
              choices={CHARTED_ROWS.map((row) => ({ id: row.id, name: nameOf(row.id) }))}
              onChoose={setId}
            />
          ),
          scale: (
            <ChoiceValue
              label={said.scale}
              shown={said.scales[scale]}
              chosen={scale}
              choices={SCALES.map((each) => ({
                id: each,
                name: said.scales[each],
                note: said.scaleNotes[each],
              }))}
              onChoose={setScale}
            />
          ),
        })}
      </p>
      <div ref={ref}>
        {content && width > 0 && (
          <DistanceChart ref={holder} content={content} width={width} rem={rem} />
        )}
      </div>
      <div className="row">
        <Do onPress={save}>{said.saveSvg}</Do>
        <span role="status">{told}</span>
      </div>
    </section>
  );
}
