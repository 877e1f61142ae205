/** `npm run readings`: what pictures measure, without a browser. `--help` explains. */
import { loadModels } from '../models/node';
import { ImpossibleDimensions } from '../sitter/impossible';
import { givenOptions, helpText } from './args';
import { BadValue } from './bad-value';
import { listText } from './list';
import { csvOf, jsonOf, tableOf } from './output';
import { sitterOf } from './person';
import { camerasOf, picturesOf } from './pictures';
import { requestOf } from './request';

/** The text to print. @throws BadValue or ImpossibleDimensions for what cannot be done. */
async function run(argv: readonly string[]): Promise<string> {
  const given = givenOptions(argv);
  if (given.help) return helpText();
  const models = loadModels();
  if (given.list) return listText(models);
  if (given.json && given.csv) throw new BadValue('--json and --csv exclude each other.');
  const request = requestOf(given, models);
  const cameras = camerasOf(request);
  const pictures = picturesOf(request, cameras, await sitterOf(request));
  if (given.json) return JSON.stringify(jsonOf(pictures), null, 2);
  return given.csv ? csvOf(pictures) : tableOf(pictures);
}

try {
  process.stdout.write(`${await run(process.argv.slice(2))}\n`);
} catch (error) {
  if (!(error instanceof BadValue || error instanceof ImpossibleDimensions)) throw error;
  process.stderr.write(`readings: ${error.message.replaceAll('\n', ' ')}\n`);
  process.exitCode = 2;
}
