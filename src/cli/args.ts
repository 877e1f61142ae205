/** The options of the readings command and how their texts are taken. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { BadValue } from './bad-value';

interface Option {
  readonly argument?: string;
  readonly multiple?: true;
  readonly help: string;
}

/** Every option, in the order `--help` shows it. */
export const OPTIONS = {
  sitter: { argument: 'ID', help: 'who is photographed (default adult-woman; see --list)' },
  set: {
    argument: 'NAME=MM',
    multiple: true,
    help: 'change one dimension of the sitter; may be repeated',
  },
  turn: { argument: 'DEGREES', help: "turn the head to the sitter's left (+) or right (-)" },
  nod: { argument: 'DEGREES', help: 'raise (+) or lower (-) the chin' },
  format: { argument: 'ID', help: 'sensor format (default full-frame)' },
  orientation: { argument: 'WAY', help: 'portrait (default) or landscape' },
  standpoint: {
    argument: 'LENGTH',
    multiple: true,
    help: 'from the eyes to the lens; once for each picture',
  },
  'frame-height': { argument: 'LENGTH', help: 'height of the frame in the plane of the eyes' },
  'focal-length': { argument: 'MM', help: 'thin-lens focal length, instead of --frame-height' },
  'cut-from': {
    argument: 'MM',
    help: 'cut the frame out of the wider picture of this focal length',
  },
  'eyes-at': {
    argument: 'SHARE',
    help: "place the eyes by shift: share of the frame's height from the top",
  },
  'camera-height': { argument: 'LENGTH', help: 'lens above (+) or below (-) the eyes (default 0)' },
  tilt: { argument: 'DEGREES', help: 'optical axis above (+) or below (-) level (default 0)' },
  'f-number': { argument: 'N', help: 'aperture (default 8)' },
  'circle-of-confusion': {
    argument: 'MM',
    help: "blur that still counts as sharp (default the format's)",
  },
  lens: { argument: 'ID', help: 'the lens that takes it; without one, a thin lens' },
  backdrop: { argument: 'LENGTH', help: 'from the eyes to the backdrop (default 1.5 m)' },
  'print-height': { argument: 'LENGTH', help: 'height of the print to be viewed (default 0.30 m)' },
  megapixels: { argument: 'N', help: 'pixels of the body, in millions (default 24)' },
  ratio: {
    argument: 'A/B',
    multiple: true,
    help: 'size of landmark A over landmark B; may be repeated',
  },
  json: { help: 'print a JSON array, one object a standpoint' },
  csv: { help: 'print a table of comma-separated values, one line a standpoint' },
  list: { help: 'list sitters, formats, lenses, landmarks and dimensions' },
  help: { help: 'print this' },
} as const satisfies Record<string, Option>;

export type OptionName = keyof typeof OPTIONS;

/** The texts given, by option; a flag that is set holds an empty text. */
export type Given = Readonly<Partial<Record<OptionName, readonly string[]>>>;

const entries = Object.entries(OPTIONS) as [OptionName, Option][];

/** "--tilt -5" means what "--tilt=-5" means: no option begins with a digit. */
function joinSigned(argv: readonly string[]): string[] {
  const joined: string[] = [];
  for (const text of argv) {
    const before = joined.at(-1);
    const takes = before?.startsWith('--') && !before.includes('=') && !isFlag(before.slice(2));
    if (takes && /^[-\u2212][.,\d]/.test(text)) joined[joined.length - 1] = `${before}=${text}`;
    else joined.push(text);
  }
  return joined;
}

const isFlag = (name: string): boolean =>
  name in OPTIONS && !('argument' in OPTIONS[name as OptionName]);

/** Splits the command line. @throws BadValue for an unknown option, a missing or a second value. */
export function givenOptions(argv: readonly string[]): Given {
  const options: NonNullable<ParseArgsConfig['options']> = Object.fromEntries(
    entries.map(([name, { argument }]) => [
      name,
      { type: argument ? ('string' as const) : ('boolean' as const), multiple: true },
    ]),
  );
  const { tokens } = parseArgs({
    args: joinSigned(argv),
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given: Partial<Record<OptionName, string[]>> = {};
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

/** The text of `--help`. */
export function helpText(): string {
  const lines = entries.map(
    ([name, { argument }]) => `  --${name}${argument ? ` ${argument}` : ''}`,
  );
  const width = Math.max(...lines.map((line) => line.length)) + 2;
  return [
    'What pictures of one sitter measure, from one or more standpoints, without a browser.',
    '',
    'npm run --silent readings -- --standpoint 0.40 --standpoint 2.40 --frame-height 0.42 --json',
    '',
    ...entries.map(([, { help }], i) => `${(lines[i] ?? '').padEnd(width)}${help}`),
    '',
    'A LENGTH is metres unless it has a unit: 2.4, 2,4 m, 240 cm, "7 ft 10 in".',
    'Without --json or --csv a table for reading is printed.',
    'Distances run from the entrance pupil; angles of view follow from the image distance.',
  ].join('\n');
}
