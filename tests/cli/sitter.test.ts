/** The command as a user runs it. */
import { execFile } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { DIMENSIONS, LANDMARKS } from '../../src/sitter/types';

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const run = (...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const command = ['--import', 'tsx', 'src/cli/sitter.ts', ...args];
    execFile(process.execPath, command, { maxBuffer: 1e8 }, (error, out, err) => {
      resolve({ code: typeof error?.code === 'number' ? error.code : 0, out, err });
    });
  });

interface Printed {
  readonly dimensions: Readonly<Record<string, { asked_mm: number; measured_mm: number }>>;
  readonly landmarks: Readonly<Record<string, [number, number, number]>>;
  readonly triangles: number;
  readonly open_edges: number;
  readonly intended_open_edges: number;
  readonly flipped_triangles: number;
}

describe('npm run sitter', () => {
  it('prints what was asked, what the mesh measures, landmarks and the mesh', async () => {
    const { code, out, err } = await run(
      ...['--sitter', 'adult-woman', '--json'],
      ...['--set', 'nose_breadth_mm=41', '--set', 'bizygomatic_breadth_mm=139'],
    );
    expect([code, err]).toEqual([0, '']);
    const printed = JSON.parse(out) as Printed;
    expect(Object.keys(printed.dimensions)).toEqual([...DIMENSIONS]);
    expect(Object.keys(printed.landmarks)).toEqual([...LANDMARKS]);
    expect(printed.dimensions.nose_breadth?.asked_mm).toBe(41);
    expect(printed.dimensions.bizygomatic_breadth?.asked_mm).toBe(139);
    // The median of women, ANSUR II 2012.
    expect(printed.dimensions.sitting_height?.asked_mm).toBe(857);
    for (const [name, { asked_mm, measured_mm }] of Object.entries(printed.dimensions))
      expect(Math.abs(measured_mm - asked_mm), name).toBeLessThanOrEqual(0.5);
    const [left, right] = [printed.landmarks.pupil_left, printed.landmarks.pupil_right];
    expect((left as number[])[0]).toBe(31.5);
    expect((right as number[])[0]).toBe(-31.5);
    expect(printed.triangles).toBeGreaterThan(50_000);
    expect(printed.flipped_triangles).toBe(0);
    expect(printed.open_edges).toBe(0);
    // The rims of two eyeballs.
    expect(printed.intended_open_edges).toBe(112);
  }, 60_000);

  it('prints a table, a list and a help to read', async () => {
    const [table, list, help] = await Promise.all([run(), run('--list'), run('--help')]);
    expect(table.out).toMatch(/Nose breadth +35\.0 +35\.0/);
    expect(list.out).toMatch(/adult-woman/);
    expect(list.out).toMatch(/nose_breadth_mm +27 +29 +35 +44 +47 +NIOSH 2003/);
    expect(help.out).toContain('--set NAME_mm=MM');
  }, 60_000);

  it.each([
    [['--sitter', 'bob'], /^sitter: --sitter: "bob" is not known\. Known: .*adult-woman.*\n$/],
    [['--set', 'nose=3'], /^sitter: --set: "nose" is not a dimension\. See --list\.\n$/],
    [
      ['--set', 'nose_breadth_mm=400'],
      /^sitter: --set: nose_breadth 400 mm is more than 1\.45 times the sitter's own 35 mm; 50\.5 mm or less would do\.\n$/,
    ],
    [
      ['--set', 'cervicale_height_mm=1500', '--set', 'stature_mm=1600'],
      /^sitter: cervicale_height 1500 mm leaves .* mm between tragion_left and cervicale; at least 45 mm are needed: 1435\.5 mm or less would do\n$/,
    ],
    [['--frob'], /^sitter: --frob is not an option\. See --help\.\n$/],
  ])('%j ends with 2 and one line', async (args, line) => {
    const { code, out, err } = await run(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(line);
  });
});
