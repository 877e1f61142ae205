/** The command as a user runs it, against the same solved in place. */
import { execFile } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadModels } from '../../src/models/node';
import { remediesFor, solvePlan } from '../../src/plan';
import { shootingList } from '../../src/plan/shooting-list';
import { demoSession } from '../../src/session/demo';
import { encodeFile } from '../../src/session/file';
import { planRequest } from '../../src/session/plan-request';
import type { Session } from '../../src/session/types';

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

const run = (...args: string[]): Promise<Run> =>
  new Promise((resolve) => {
    const command = ['--import', 'tsx', 'src/cli/plan.ts', ...args];
    execFile(process.execPath, command, { maxBuffer: 1e8 }, (error, out, err) => {
      resolve({ code: typeof error?.code === 'number' ? error.code : 0, out, err });
    });
  });

const folder = mkdtempSync(join(tmpdir(), 'standpoint-plan-'));

function saved(name: string, content: Session | string): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : encodeFile(content));
  return path;
}

interface Printed {
  readonly room: { readonly wall_behind_camera_m: number };
  readonly verdicts: readonly {
    readonly wanted: string;
    readonly camera: string;
    readonly spans: readonly { readonly from_m: number; readonly to_m: number | null }[];
    readonly recommended: {
      readonly standpoint_m: number;
      readonly focal_length_mark_mm: number;
    } | null;
    readonly conflict: readonly { readonly name: string }[];
    readonly remedies: readonly { readonly change: string }[];
  }[];
  readonly one_standpoint: readonly { readonly standpoint_m: number }[];
  readonly shooting_list: readonly {
    readonly wanted: string;
    readonly camera: string;
    readonly setting: { readonly sensor_mark_distance_m: number };
    readonly moves: readonly string[];
  }[];
  readonly not_taken: readonly string[];
}

const demo = demoSession();

describe('npm run plan', () => {
  it('prints what the page works out', async () => {
    const { code, out, err } = await run(saved('demo.json', demo), '--json');
    expect(err).toBe('');
    expect(code).toBe(0);
    const printed = JSON.parse(out) as Printed;
    const models = loadModels();
    const request = planRequest(demo, models);
    const solved = solvePlan(request);
    expect(printed.room.wall_behind_camera_m).toBeCloseTo(3.8, 12);
    expect(printed.verdicts).toHaveLength(5 * 4);
    printed.verdicts.forEach((verdict, i) => {
      const own = solved.verdicts[i];
      if (!own) throw new Error('a verdict too many');
      expect([verdict.wanted, verdict.camera]).toEqual([own.wanted, own.camera]);
      expect(verdict.spans.map(({ from_m }) => from_m)).toEqual(own.spans.map(({ from }) => from));
      expect(verdict.recommended?.standpoint_m).toBe(own.recommended?.standpoint);
      expect(verdict.conflict.map(({ name }) => name)).toEqual(
        own.conflict.map(({ name }) => name),
      );
      const ways = own.spans.length > 0 ? [] : remediesFor(request, own);
      expect(verdict.remedies.map(({ change }) => change)).toEqual(
        ways.map(({ change }) => change.change),
      );
    });
    expect(printed.one_standpoint.map(({ standpoint_m }) => standpoint_m)).toEqual(
      solved.oneStandpoint.map(({ standpoint }) => standpoint),
    );
    const { shots, left } = shootingList(request, solved);
    expect(
      printed.shooting_list.map(({ wanted, camera, setting, moves }) => [
        wanted,
        camera,
        setting.sensor_mark_distance_m,
        moves,
      ]),
    ).toEqual(shots.map((shot) => [shot.wanted, shot.camera, shot.setting.tape, shot.moves]));
    expect(printed.not_taken).toEqual(left);
    expect(shots.length + left.length).toBe(5);
  });

  it('prints a table for reading in the units of the session', async () => {
    const { code, out } = await run(saved('demo.json', demo));
    expect(code).toBe(0);
    for (const name of ['Headshot', 'Full length']) expect(out).toContain(`${name}\n`);
    expect(out).toMatch(/ on Body {2}/);
    expect(out).toMatch(/\d\.\d\d m/);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
    const feet = await run(saved('feet.json', { ...demo, units: 'imperial' }));
    expect(feet.out).toMatch(/\d ft/);
  });

  it('says how it is used', async () => {
    const { code, out } = await run('--help');
    expect(code).toBe(0);
    expect(out).toContain('--json');
  });

  it.each([
    [['--json'], 'plan: name a session file. See --help.'],
    [['a.json', 'b.json'], 'plan: "b.json": only one session at a time.'],
    [['--frob', 'a.json'], 'plan: --frob is not an option. See --help.'],
    [['nowhere.json'], 'plan: nowhere.json: no file that can be read.'],
  ])('refuses %j with 2 and one line', async (args, line) => {
    expect(await run(...args)).toEqual({ code: 2, out: '', err: `${line}\n` });
  });

  it('refuses a damaged file with 2 and one line', async () => {
    const path = saved('broken.json', encodeFile(demo).replace('"units": "metric"', '"units": 3'));
    const { code, out, err } = await run(path);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^plan: .+broken\.json: This file is damaged at units: .+\.\n$/);
    expect(err.trimEnd()).not.toContain('\n');
  });

  it('refuses a kit without lenses', async () => {
    const bare = { ...demo, kits: [{ ...demo.kits[0], lenses: [] }] as const };
    expect(await run(saved('bare.json', bare))).toMatchObject({
      code: 2,
      err: 'plan: The kit in use holds no lens.\n',
    });
  });
});
