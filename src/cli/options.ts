/** Options of a command: how the command line is split and how `--help` shows them. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { BadValue } from './bad-value';

export interface Option {
  readonly argument?: string;
  readonly multiple?: true;
  readonly help: string;
}
type Options<Name extends string> = Readonly<Record<Name, Option>>;

/** The texts given, by option; a flag that is set holds an empty text. */
export type GivenOf<Name extends string> = Readonly<Partial<Record<Name, readonly string[]>>>;

/** "--tilt -5" means what "--tilt=-5" means: no option begins with a digit. */
function joinSigned(argv: readonly string[], isFlag: (name: string) => boolean): string[] {
  const joined: string[] = [];
  for (const text of argv) {
    const before = joined.at(-1);
    const takes = before?.startsWith('--') && !before.includes('=') && !isFlag(before.slice(2));
    if (takes && /^[-\u2212][.,\d]/.test(text)) joined[joined.length - 1] = `${before}=${text}`;
    else joined.push(text);
  }
  return joined;
}

/** Splits the command line. @throws BadValue for an unknown option, a missing or a second value. */
export function splitOptions<Name extends string>(
  argv: readonly string[],
  all: Options<Name>,
): GivenOf<Name> {
  const entries = Object.entries(all) as [Name, Option][];
  const options: NonNullable<ParseArgsConfig['options']> = Object.fromEntries(
    entries.map(([name, { argument }]) => [
      name,
      { type: argument ? ('string' as const) : ('boolean' as const), multiple: true },
    ]),
  );
  const isFlag = (text: string): boolean =>
    entries.some(([name, { argument }]) => name === text && !argument);
  const { tokens } = parseArgs({
    args: joinSigned(argv, isFlag),
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given: Partial<Record<Name, string[]>> = {};
  for (const token of tokens) {
    if (token.kind === 'positional') throw new BadValue(`"${token.value}" belongs to no option.`);
    if (token.kind !== 'option') continue;
    const known = entries.find(([name]) => name === token.name);
    if (!known) throw new BadValue(`${token.rawName} is not an option. See --help.`);
    const [name, { argument, multiple }] = known;
    if (argument && (token.value === undefined || token.value === '')) {
      throw new BadValue(`--${name} needs a value: --${name} ${argument}.`);
    }
    if (!argument && token.value !== undefined) throw new BadValue(`--${name} takes no value.`);
    const before = given[name];
    if (before && argument && !multiple) throw new BadValue(`--${name} is given twice.`);
    given[name] = [...(before ?? []), token.value ?? ''];
  }
  return given;
}

/** A line an option for `--help`. */
export function optionLines(all: Readonly<Record<string, Option>>): string[] {
  const lines = Object.entries(all).map(([name, { argument, help }]) => ({
    left: `  --${name}${argument ? ` ${argument}` : ''}`,
    help,
  }));
  const width = Math.max(...lines.map(({ left }) => left.length)) + 2;
  return lines.map(({ left, help }) => left.padEnd(width) + help);
}
