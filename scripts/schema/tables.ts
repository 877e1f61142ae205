/** The figures in docs/session-file.md, written in from the tables of the program that hold them. */
import { LARGEST_FILE } from '../../src/session/file';
import * as limits from '../../src/session/limits';
import { MIGRATIONS } from '../../src/session/migrate';

const DEGREE = Math.PI / 180;
const plain = (value: number): string => String(Number(value.toPrecision(4)));

const FIGURES: Readonly<Record<string, (name: string) => string>> = {
  /** "0.15 to 30" */
  range: (name) => {
    const { least, most } = limits.LIMITS[name as keyof typeof limits.LIMITS];
    return `${plain(least)} to ${plain(most)}`;
  },
  /** The same with its degrees. */
  angle: (name) => {
    const { least, most } = limits.LIMITS[name as keyof typeof limits.LIMITS];
    const degrees = [least, most].map((radian) => plain(radian / DEGREE));
    return `${plain(least)} to ${plain(most)} (${degrees.join('° to ')}°)`;
  },
  most: (name) => plain(limits.MOST[name as keyof typeof limits.MOST]),
  constant: (name) => String({ ...limits, LARGEST_FILE }[name as 'LARGEST_FILE']),
};

const versions = (): string =>
  MIGRATIONS.map(({ from, what }) => `- **${from} to ${from + 1}**: ${what}.`).join('\n');

/**
 * The document with its figures renewed: "<!-- range standpoint -->anything<!-- -->" and the list between
 * "<!-- versions -->" and "<!-- /versions -->".
 */
export const withFigures = (document: string): string =>
  document
    .replace(/(<!-- (\w+) (\w+) -->)[^<]*(<!-- -->)/g, (_, open, kind, name, close) => {
      const figure = FIGURES[kind];
      if (!figure) throw new Error(`no kind of figure "${kind}"`);
      return open + figure(name) + close;
    })
    .replace(
      /(<!-- versions -->\n)[\s\S]*?(<!-- \/versions -->)/,
      (_, open, close) => `${open}\n${versions()}\n\n${close}`,
    );
