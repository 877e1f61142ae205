import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

// The controls give the focus back after the last transition, and lose count of cancelled ones.
test('no style sheet sets a transition', () => {
  const sheets = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.css'))
    .map((path) => `src/${path}`);
  expect(sheets.length).toBeGreaterThan(0);
  expect(sheets.filter((path) => /\btransition/.test(readFileSync(path, 'utf8')))).toEqual([]);
});
