/** `npm run sitter`: a sitter's dimensions as asked and as measured on the mesh, without a browser. */
import { loadModels } from '../models/node';
import { buildSitter } from '../sitter/build';
import { ImpossibleDimensions } from '../sitter/impossible';
import { SITTING_UPRIGHT } from '../sitter/measure';
import { changesOf } from './changes';
import { command } from './command';
import { type Option, optionLines, splitOptions } from './options';
import { personOf } from './person';
import { dimensionsOf, missed, sitterJson, sitterList, sitterTable } from './sitter-output';
import { choice } from './values';

const OPTIONS = {
  sitter: { argument: 'ID', help: 'who is measured (default adult-woman; see --list)' },
  set: {
    argument: 'NAME_mm=MM',
    multiple: true,
    help: 'change one dimension; those that go with it follow; may be repeated',
  },
  json: { help: 'print one JSON object' },
  list: { help: 'list sitters and dimensions, with source and percentiles' },
  help: { help: 'print this' },
} as const satisfies Record<string, Option>;

const HELP = [
  'Shapes a sitter, measures the resulting mesh and counts its faults, without a browser.',
  '',
  'npm run --silent sitter -- --sitter adult-woman --set nose_breadth_mm=41 --json',
  '',
  ...optionLines(OPTIONS),
  '',
  'Without --json a table for reading is printed.',
  'Sitting height is measured on the same person seated, all else standing.',
  'Landmarks are millimetres from the midpoint between the pupils: left, up, forward.',
  'An open edge belongs to one triangle alone: a closed mesh has none.',
  'Eyeballs have no backs: their rims, deep behind the lids, are counted apart as intended_open_edges.',
  'Strands of hair and brows are ribbons, open by nature: their edges are counted by mesh alone.',
  'Dimensions and landmarks are those of the face at rest, whoever smiles.',
].join('\n');

/** The text to print. @throws BadValue or ImpossibleDimensions for what cannot be done. */
async function run(argv: readonly string[]): Promise<string> {
  const given = splitOptions(argv, OPTIONS);
  if (given.help) return HELP;
  const models = loadModels();
  if (given.list) return sitterList(models);
  const model = choice('sitter', given.sitter?.[0] ?? 'adult-woman', models.sitters);
  const changes = changesOf(model, given.set);
  // Dimensions are those of the face at rest.
  const resting = { ...model, looks: { ...model.looks, smile: 0 } };
  const { sculpture, sitter } = await personOf({ sitter: resting, changes });
  const seated = buildSitter(sculpture, resting, changes, SITTING_UPRIGHT);
  const told = dimensionsOf(sitter, seated);
  const miss = missed(told);
  if (miss)
    throw new ImpossibleDimensions(
      miss.name,
      `${miss.name} ${miss.asked.toFixed(1)} mm cannot be met together with the others: the figure measures ${miss.measured.toFixed(1)} mm`,
    );
  return given.json
    ? JSON.stringify(sitterJson(sculpture, sitter, told), null, 2)
    : sitterTable(models, sculpture, sitter, told);
}

await command('sitter', run);
