/** `npm run plan`: which standpoints work in a session's room, without a browser. `--help` explains. */
import { readFileSync } from 'node:fs';
import { loadModels } from '../models/node';
import { remediesFor, solvePlan } from '../plan';
import { hangBackdrop } from '../plan/run';
import { decodeFile } from '../session/file';
import { planRequest } from '../session/plan-request';
import type { Session } from '../session/types';
import { BadValue } from './bad-value';
import { command } from './command';
import { type Option, optionLines, splitOptions } from './options';
import { type Planned, planJson } from './plan-output';
import { planTable } from './plan-table';

const OPTIONS = {
  json: { help: 'print one JSON object' },
  help: { help: 'print this' },
} as const satisfies Record<string, Option>;

const HELP = [
  'Which standpoints work for the wanted pictures of a session: in its room, with its kit in use.',
  '',
  'npm run --silent plan -- head-shots.standpoint.json --json',
  '',
  ...optionLines(OPTIONS),
  '',
  'The file is a session saved by the workbench.',
  'Without --json a table for reading is printed, in the units of the session: for each picture and',
  'lens the standpoint recommended, the focal length to set, the aperture, the distance on the tape, how',
  'much the nose gains on the ears, and from where to where everything asked is met, with what ends it.',
].join('\n');

function sessionFrom(path: string, models: Parameters<typeof planRequest>[1]): Session {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch {
    throw new BadValue(`${path}: no file that can be read.`);
  }
  const decoded = decodeFile(text, models);
  if (decoded.ok) return decoded.session;
  throw new BadValue(`${path}: ${decoded.sentence.replace(/ Nothing was changed\.$/, '')}`);
}

/** What there is to plan with. @throws BadValue */
function planOf(session: Session, models: Parameters<typeof planRequest>[1]): Planned {
  const request = planRequest(session, models);
  if (request.cameras.length === 0) throw new BadValue('The kit in use holds no lens.');
  if (request.wanted.length === 0) throw new BadValue('The session wants no picture.');
  const result = solvePlan(request);
  return {
    ...result,
    request,
    remedies: result.verdicts.map((verdict) =>
      verdict.spans.length > 0 ? [] : remediesFor(request, verdict),
    ),
    backdropForward: hangBackdrop(session.room).forward,
  };
}

/** The text to print. @throws BadValue for what cannot be done. */
async function run(argv: readonly string[]): Promise<string> {
  const paths = argv.filter((text) => !text.startsWith('-'));
  const given = splitOptions(
    argv.filter((text) => text.startsWith('-')),
    OPTIONS,
  );
  if (given.help) return HELP;
  const [path] = paths;
  if (path === undefined) throw new BadValue('name a session file. See --help.');
  if (paths.length > 1) throw new BadValue(`"${paths[1]}": only one session at a time.`);
  const models = loadModels();
  const session = sessionFrom(path, models);
  const planned = planOf(session, models);
  return given.json
    ? JSON.stringify({ title: session.title, ...planJson(planned) }, null, 2)
    : planTable(planned, session.units);
}

await command('plan', run);
