/** `npm run readings`: what pictures measure, without a browser. `--help` explains. */
import { loadModels } from '../models/node';
import { givenOptions, helpText } from './args';
import { BadValue } from './bad-value';
import { command } from './command';
import { listText } from './list';
import { csvOf, jsonOf, tableOf } from './output';
import { personOf } from './person';
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
  const { sitter, changes, turn, nod } = request;
  const person = await personOf({ sitter, changes, pose: { headTurn: turn, headNod: nod } });
  const pictures = picturesOf(request, cameras, person.sitter);
  if (given.json) return JSON.stringify(jsonOf(pictures), null, 2);
  return given.csv ? csvOf(pictures) : tableOf(pictures);
}

await command('readings', run);
