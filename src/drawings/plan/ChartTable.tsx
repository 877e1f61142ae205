import type { ChartContent, ChartSpan } from './chart';
import type { PlanWords } from './words';

/** The same as words, for those who cannot see the bands. */
export function ChartTable({ content, words }: { content: ChartContent; words: PlanWords }) {
  const { units, framings, zones, pictures } = content;
  const say = (metres: number) => words.distance(metres, units);
  const spans = (list: readonly ChartSpan[]) =>
    list.length === 0
      ? words.chart.nowhere
      : list.map(({ from, to }) => words.chart.span(say(from), say(to))).join(', ');
  return (
    <div className="plan-unseen">
      <table>
        <caption>{words.chart.title}</caption>
        <thead>
          <tr>
            <th scope="col">{words.chart.framing}</th>
            <th scope="col">{words.chart.lens}</th>
            <th scope="col">{words.chart.reaches}</th>
            <th scope="col">{words.chart.works}</th>
            {zones.map(({ id, name }) => (
              <th key={id} scope="col">
                {name}
              </th>
            ))}
            {pictures.map(({ letter, standpoint }) => (
              <th key={letter} scope="col">
                {words.chart.standpoint(letter)}, {say(standpoint)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {framings.flatMap(({ id, name, lenses }) =>
            lenses.map((lens) => (
              <tr key={`${id} ${lens.id}`}>
                <th scope="row">{name}</th>
                <td>{lens.name}</td>
                <td>{spans(lens.reach)}</td>
                <td>{spans(lens.works)}</td>
                {zones.map((zone) => (
                  <td key={zone.id}>{spans(zone.spans.filter(({ framing }) => framing === id))}</td>
                ))}
                {pictures.map(({ letter, standpoint }) => (
                  <td key={letter}>
                    {words.chart.here(holds(lens.reach, standpoint), holds(lens.works, standpoint))}
                  </td>
                ))}
              </tr>
            )),
          )}
        </tbody>
      </table>
    </div>
  );
}

/** Half a millimetre: ends count as inside. */
const END = 5e-4;
const holds = (spans: readonly ChartSpan[], at: number): boolean =>
  spans.some(({ from, to }) => at >= from - END && at <= to + END);
