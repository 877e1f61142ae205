import { execFile } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { givenOptions, helpText, OPTIONS } from '../../src/cli/args';
import { BadValue } from '../../src/cli/bad-value';
import { requestOf } from '../../src/cli/request';
import { models } from '../readings/picture';

const FRAME = ['--standpoint', '1', '--frame-height', '0.42'];
const request = (...argv: string[]) => requestOf(givenOptions(argv), models);

/** The line a user reads for these options. */
function refusal(...argv: string[]): string {
  try {
    request(...argv);
  } catch (error) {
    if (error instanceof BadValue) return error.message;
    throw error;
  }
  return 'taken';
}

describe('a bad value', () => {
  it.each([
    [
      ['--standpoint', '2,4o', '--frame-height', '1'],
      '--standpoint: "2,4o" is not a distance. Try 2.4 m, 240 cm or 7 ft 10 in.',
    ],
    [['--standpoint', '-1', '--frame-height', '1'], '--standpoint: "-1" is not above 0.'],
    [['--frame-height', '1'], '--standpoint is needed, once for each picture.'],
    [['--standpoint', '1'], '--frame-height or --focal-length is needed.'],
    [[...FRAME, '--focal-length', '50'], '--frame-height and --focal-length exclude each other.'],
    [
      [...FRAME, '--sitter', 'bob'],
      `--sitter: "bob" is not known. Known: ${[...models.sitters.keys()].join(', ')}.`,
    ],
    [
      [...FRAME, '--orientation', 'sideways'],
      '--orientation: "sideways" is not known. Known: portrait, landscape.',
    ],
    [[...FRAME, '--f-number', '0'], '--f-number: "0" is not an f-number. Try f/5.6.'],
    [[...FRAME, '--eyes-at', '3'], '--eyes-at: "3" is not between 0 and 1.'],
    [[...FRAME, '--tilt', 'down'], '--tilt: "down" is not an angle. Try 15°.'],
    [
      [...FRAME, '--set', 'nose_breadth'],
      '--set: "nose_breadth" is not NAME=MM. Try nose_breadth=36.',
    ],
    [[...FRAME, '--set', 'nose=36'], '--set: "nose" is not a dimension. See --list.'],
    [[...FRAME, '--ratio', 'pronasale/nose'], '--ratio: "nose" is not a landmark. See --list.'],
    [[...FRAME, '--tilt', '1', '--tilt', '2'], '--tilt is given twice.'],
    [[...FRAME, '--frob'], '--frob is not an option. See --help.'],
    [[...FRAME, '--tilt'], '--tilt needs a value: --tilt DEGREES.'],
    [[...FRAME, '--json=yes'], '--json takes no value.'],
    [['2.4'], '"2.4" belongs to no option.'],
  ])('%j', (argv, line) => {
    expect(refusal(...argv)).toBe(line);
  });

  it('ends the command with 2, one line, and nothing printed', async () => {
    const result = await new Promise<{ code: unknown; out: string; err: string }>((resolve) => {
      const command = [
        '--import',
        'tsx',
        'src/cli/readings.ts',
        '--standpoint',
        '0.02',
        '--focal-length',
        '50',
      ];
      execFile(process.execPath, command, (error, out, err) =>
        resolve({ code: error?.code, out, err }),
      );
    });
    expect(result).toEqual({
      code: 2,
      out: '',
      err: 'readings: --standpoint 0.02 m: A lens of 50.0 mm focuses nothing as near as 0.02 m.\n',
    });
  });
});

describe('values as typed', () => {
  it('take units, either separator, and a sign', () => {
    const asked = request(
      ...['--standpoint', '7 ft 10 in', '--frame-height', '42 cm', '--camera-height', '−10 cm'],
      ...[
        '--tilt',
        '-5',
        '--turn',
        '-30',
        '--set',
        'nose_breadth=36,5',
        '--circle-of-confusion',
        '0.02',
      ],
    );
    expect(asked.standpoints[0]).toBeCloseTo(94 * 0.0254, 12);
    expect(asked.view).toEqual({ frameHeight: 0.42, cutFrom: null });
    expect(asked.cameraHeight).toBe(-0.1);
    expect(asked.tilt).toBeCloseTo((-5 * Math.PI) / 180, 12);
    expect(asked.turn).toBeCloseTo(-Math.PI / 6, 12);
    expect(asked.changes.nose_breadth).toBeCloseTo(36.5, 9);
    expect(asked.format.circleOfConfusion).toBe(0.00002);
  });

  it('every option is in the help', () => {
    for (const name of Object.keys(OPTIONS)) expect(helpText()).toContain(`--${name}`);
  });
});
