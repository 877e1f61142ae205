/** The options of the readings command and how their texts are taken. */
import { type GivenOf, type Option, optionLines, splitOptions } from './options';

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
  gaze: {
    argument: 'WAY',
    help: 'ahead (default), or lens: the eyes turn to the lens and draw together when it is near',
  },
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
export type Given = GivenOf<OptionName>;

/** Splits the command line. @throws BadValue for an unknown option, a missing or a second value. */
export const givenOptions = (argv: readonly string[]): Given => splitOptions(argv, OPTIONS);

/** The text of `--help`. */
export function helpText(): string {
  return [
    'What pictures of one sitter measure, from one or more standpoints, without a browser.',
    '',
    'npm run --silent readings -- --standpoint 0.40 --standpoint 2.40 --frame-height 0.42 --json',
    '',
    ...optionLines(OPTIONS),
    '',
    'A LENGTH is metres unless it has a unit: 2.4, 2,4 m, 240 cm, "7 ft 10 in".',
    'Without --json or --csv a table for reading is printed.',
    'Distances run from the entrance pupil; angles of view follow from the image distance.',
  ].join('\n');
}
