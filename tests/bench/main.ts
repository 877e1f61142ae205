/**
 * `npm run bench [part ...]`: what things cost, as ratios of two sides timed in turns in one run; no
 * length of time is asserted. Parts: frame, still, large, clip, readings, plan, sitter, size; all of them unless named.
 * `docs/bench.md` keeps a run.
 */
import { withBenchPage } from './browser';
import { largeLines } from './large';
import { type Line, TABLE_HEAD, tableRow } from './line';
import { planLines } from './plan';
import { readingLines } from './readings';
import { sitterLines } from './sitter';
import { firstLoad, type PackageSize } from './size';

const SMALLEST_LISTED = 1000;

function packageTable(packages: readonly PackageSize[]): string {
  const listed = packages.filter(({ bytes }) => bytes >= SMALLEST_LISTED);
  const rest = packages
    .filter(({ bytes }) => bytes < SMALLEST_LISTED)
    .reduce((sum, { bytes }) => sum + bytes, 0);
  return [
    '| package | kB, gzip, its share |',
    '| --- | ---: |',
    ...[...listed, { name: 'all others', bytes: rest }].map(
      ({ name, bytes }) => `| ${name} | ${(bytes / 1000).toFixed(1)} |`,
    ),
  ].join('\n');
}

async function sizeLines(): Promise<Line[]> {
  const { line, packages } = await firstLoad();
  after.push(packageTable(packages));
  return [line];
}

/** Tables that stand below the ratios. */
const after: string[] = [];

const PARTS: Readonly<Record<string, () => Promise<readonly Line[]>>> = {
  frame: () => withBenchPage((page) => page.evaluate(() => window.bench.frame())),
  still: () => withBenchPage((page) => page.evaluate(() => window.bench.still())),
  large: largeLines,
  clip: () => withBenchPage((page) => page.evaluate(() => window.bench.clip())),
  readings: readingLines,
  plan: planLines,
  sitter: sitterLines,
  size: sizeLines,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !PARTS[name]);
if (unknown.length > 0) {
  console.error(`bench: no part "${unknown[0]}"; there are ${Object.keys(PARTS).join(', ')}.`);
  process.exit(2);
}
console.log(TABLE_HEAD);
for (const [name, part] of Object.entries(PARTS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  for (const line of await part()) console.log(tableRow(line));
}
for (const table of after) console.log(`\n${table}`);
