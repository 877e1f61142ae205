import { ImpossibleDimensions } from '../sitter/impossible';
import { BadValue } from './bad-value';

/** Prints what `run` gives; what cannot be done ends the command with 2 and one line. */
export async function command(
  name: string,
  run: (argv: readonly string[]) => Promise<string>,
): Promise<void> {
  try {
    process.stdout.write(`${await run(process.argv.slice(2))}\n`);
  } catch (error) {
    if (!(error instanceof BadValue || error instanceof ImpossibleDimensions)) throw error;
    process.stderr.write(`${name}: ${error.message.replaceAll('\n', ' ')}\n`);
    process.exitCode = 2;
  }
}
