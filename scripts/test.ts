/** The whole test run: types, lint, unit and reference tests, browser tests, then one closing line. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const scratch = mkdtempSync(join(tmpdir(), 'standpoint-tests-'));
const unitReport = join(scratch, 'unit.json');
const browserReport = join(scratch, 'browser.json');
let passed = 0;
let failed = 0;

function run(title: string, command: string, env: Record<string, string> = {}): boolean {
  console.log(`\n== ${title}: ${command}`);
  const { status } = spawnSync(command, {
    shell: true,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  return status === 0;
}

/** Types and lint count as one check each. */
function check(title: string, command: string) {
  if (run(title, command)) passed += 1;
  else failed += 1;
}

/** A runner's own count; a runner that fails without naming a failed test counts as one failure. */
function suite(
  title: string,
  command: string,
  report: string,
  count: (json: never) => [passed: number, failed: number],
  env: Record<string, string> = {},
) {
  const ok = run(title, command, env);
  const [good, bad] = existsSync(report)
    ? count(JSON.parse(readFileSync(report, 'utf8')) as never)
    : [0, 0];
  passed += good;
  failed += ok ? bad : Math.max(1, bad);
}

check('Types', 'npx tsc --noEmit');
check('Format and lint', 'npx biome check --error-on-warnings');
suite(
  'Unit and reference tests',
  `npx vitest run --reporter=default --reporter=json --outputFile.json=${unitReport}`,
  unitReport,
  (json: { numPassedTests: number; numFailedTests: number }) => [
    json.numPassedTests,
    json.numFailedTests,
  ],
);
suite(
  'Browser tests',
  'npx playwright test --reporter=list,json',
  browserReport,
  (json: { stats: { expected: number; flaky: number; unexpected: number } }) => [
    json.stats.expected,
    // A test that passes only at a second try is a failure to be mended.
    json.stats.unexpected + json.stats.flaky,
  ],
  { PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport },
);
rmSync(scratch, { recursive: true });
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
