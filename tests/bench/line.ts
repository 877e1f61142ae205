/** One line of the report, as a row of a Markdown table. */
import type { Ratio } from './pairs';

export interface Line {
  readonly name: string;
  readonly ratio: Pick<Ratio, 'median'> & Partial<Ratio>;
  /** At most this; absent where there is none. */
  readonly aim?: number;
  /** What is over what. */
  readonly sides: string;
}

/** Three significant digits. */
const figure = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

export const TABLE_HEAD = `| what | ratio | middle half of the pairs | aim | ours / plain |
| --- | ---: | --- | ---: | --- |`;

export function tableRow({ name, ratio, aim, sides }: Line): string {
  const { median, from, to, pairs } = ratio;
  const noise =
    from === undefined || to === undefined
      ? ''
      : `${figure(from)} to ${figure(to)} (${pairs} pairs)`;
  return `| ${[name, figure(median), noise, aim?.toFixed(2) ?? '', sides].join(' | ')} |`;
}
