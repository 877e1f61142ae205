/** The command as a user runs it; expectations are worked out from first principles. */
import { execFile } from 'node:child_process';
import { describe, expect, it } from 'vitest';

interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

function run(...args: string[]): Promise<Run> {
  return new Promise((resolve) => {
    const command = ['--import', 'tsx', 'src/cli/readings.ts', ...args];
    execFile(process.execPath, command, { maxBuffer: 1e8 }, (error, out, err) => {
      resolve({ code: typeof error?.code === 'number' ? error.code : 0, out, err });
    });
  });
}

interface Landmark {
  readonly position_mm: [number, number, number];
  readonly image: [number, number] | null;
}
interface Printed {
  readonly [name: string]: unknown;
  readonly standpoint_m: number;
  readonly nose_to_ear_ratio: number;
  readonly landmarks: Readonly<Record<string, Landmark>>;
  readonly depth_of_field_m: { readonly near: number; readonly far: number | null };
  readonly visible_share: { readonly ear_left: number; readonly face_breadth: number };
}

async function json(...args: string[]): Promise<Printed[]> {
  const { code, out, err } = await run(...args, '--json');
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out) as Printed[];
}

/** Numbers agree to nine figures, at any depth of the object. */
function agrees(found: unknown, expected: unknown): void {
  if (typeof expected === 'number') {
    expect(Math.abs(Number(found) - expected)).toBeLessThanOrEqual(
      1e-9 * Math.max(1, Math.abs(expected)),
    );
  } else {
    for (const [name, part] of Object.entries(expected as object)) {
      agrees((found as Record<string, unknown>)[name], part);
    }
  }
}

const DEGREE = 180 / Math.PI;

describe('a headshot from 0.40 m and 2.40 m', () => {
  const command = [
    ...['--sitter', 'adult-woman', '--format', 'full-frame', '--orientation', 'portrait'],
    ...[
      '--frame-height',
      '0.42',
      '--standpoint',
      '0.40',
      '--standpoint',
      '2.40',
      '--f-number',
      '4',
    ],
  ];

  it('prints one object a standpoint, all from the thin lens and the depths of the head', async () => {
    const printed = await json(...command);
    expect(printed.map(({ standpoint_m }) => standpoint_m)).toEqual([0.4, 2.4]);
    for (const object of printed) {
      const s = object.standpoint_m * 1000;
      const focal = (s * 36) / (420 + 36);
      const image = (focal * s) / (s - focal);
      const spread = (4 * 0.03 * (s - focal)) / focal ** 2;
      const [nose, ear] = ['pronasale', 'tragion_left'].map(
        (name) => object.landmarks[name]?.position_mm[2] ?? 0,
      );
      const ratio = (s - (ear ?? 0)) / (s - (nose ?? 0));
      const angle = (side: number) => 2 * Math.atan(side / 2 / image) * DEGREE;
      agrees(object, {
        sensor_mark_distance_m: (s + image) / 1000,
        focal_length_mm: focal,
        image_distance_mm: image,
        magnification: 36 / 420,
        angle_of_view_deg: {
          horizontal: angle(24),
          vertical: angle(36),
          diagonal: angle(Math.hypot(24, 36)),
        },
        frame_m: { width: 0.28, height: 0.42 },
        nose_to_ear_ratio: ratio,
        nose_to_ear_gain_percent: (ratio - 1) * 100,
        depth_of_field_m: { near: s / (1 + spread) / 1000, far: s / (1 - spread) / 1000 },
      });
      for (const {
        position_mm: [x, y, z],
        image: drawn,
      } of Object.values(object.landmarks)) {
        agrees(drawn, [(image * x) / (s - z), (image * y) / (s - z)]);
      }
    }
    // f = 0.40 × 0.036 / (0.42 + 0.036) = 31.58 mm.
    expect(printed[0]?.focal_length_mm).toBeCloseTo(31.58, 2);
    // Near the face less of it is seen.
    const [near, far] = printed;
    expect(near?.visible_share.face_breadth).toBeLessThan(far?.visible_share.face_breadth ?? 0);
    expect(near?.visible_share.face_breadth).toBeGreaterThan(0.8);
    expect(far?.visible_share.face_breadth).toBeLessThanOrEqual(1);
    expect(JSON.stringify(printed)).not.toMatch(/NaN|undefined/);
  });
});

describe('where the camera and the frame are placed', () => {
  it('shift, height and tilt move the picture as a camera does', async () => {
    const common = ['--standpoint', '1', '--focal-length', '50'];
    const [plain] = await json(...common);
    const [shifted] = await json(...common, '--eyes-at', '0.25');
    const [tilted] = await json(...common, '--camera-height', '-30 cm', '--tilt', '-5');
    const menton = plain?.landmarks.menton;
    const [u = 0, v = 0] = menton?.image ?? [];
    // A quarter from the top instead of the middle: up by a quarter of 36 mm.
    agrees(shifted?.landmarks.menton?.image, [u, v + 9]);
    expect(shifted?.nose_to_ear_ratio).toBe(plain?.nose_to_ear_ratio);
    // The same point through a camera 0.3 m lower and farther, turned down by 5 degrees.
    const [x, y, z] = menton?.position_mm ?? [0, 0, 0];
    const [turn, back] = [-5 / DEGREE, Math.sqrt(1000 ** 2 - 300 ** 2)];
    const [up, ahead] = [y + 300, back - z];
    const depth = ahead * Math.cos(turn) + up * Math.sin(turn);
    const rise = up * Math.cos(turn) - ahead * Math.sin(turn);
    const eyes = back * Math.cos(turn) + 300 * Math.sin(turn);
    const image = (50 * eyes) / (eyes - 50);
    agrees(tilted?.landmarks.menton?.image, [(image * x) / depth, (image * rise) / depth]);
    agrees(tilted, { frame_m: { height: (0.036 * eyes) / image } });
  });

  it('turns the head about the neck, the eyes staying where they are', async () => {
    const [turned] = await json('--standpoint', '1', '--frame-height', '0.42', '--turn', '90');
    const { pupil_left: left, pupil_right: right } = turned?.landmarks ?? {};
    for (const k of [0, 1, 2] as const) {
      expect((left?.position_mm[k] ?? 1) + (right?.position_mm[k] ?? 1)).toBeCloseTo(0, 6);
    }
    // Turned to the sitter's left by a right angle, the left pupil is the farther one.
    expect(left?.position_mm[2]).toBeCloseTo(-(left ? Math.hypot(...left.position_mm) : 0), 6);
  });
});

describe('the other forms', () => {
  it('--csv prints a line of names and a line a standpoint', async () => {
    const { code, out } = await run(
      '--standpoint',
      '40 cm',
      '--standpoint',
      '7 ft 10 in',
      '--frame-height',
      '0.42',
      '--csv',
    );
    expect(code).toBe(0);
    const [names = '', ...lines] = out.trimEnd().split('\n');
    expect(lines).toHaveLength(2);
    const cells = lines.map((line) => line.split(','));
    expect(cells.every((line) => line.length === names.split(',').length)).toBe(true);
    const column = names.split(',').indexOf('standpoint_m');
    expect(cells.map((line) => Number(line[column]))).toEqual([0.4, expect.closeTo(2.3876, 12)]);
    expect(names).toContain('landmarks.menton.image.0');
  });

  it('--help explains and --list names what there is', async () => {
    const [help, list] = await Promise.all([run('--help'), run('--list')]);
    expect(help.out).toContain('--frame-height');
    expect(list.out).toMatch(/adult-woman[\s\S]*full-frame[\s\S]*nose_breadth[\s\S]*pronasale/);
  });
});

it('turns the eyes to the lens when asked: about a point 10.5 mm behind each pupil', async () => {
  const asked = ['--standpoint', '0.40', '--frame-height', '0.42'];
  const [[ahead], [lens]] = await Promise.all([json(...asked), json(...asked, '--gaze', 'lens')]);
  const pupil = (printed: Printed | undefined) => printed?.landmarks.pupil_left?.position_mm ?? [];
  const [x = 0, , z = 0] = pupil(ahead);
  const inwards = Math.atan2(x, 400 - (z - 10.5));
  expect(pupil(lens)[0]).toBeCloseTo(x - 10.5 * Math.sin(inwards), 2);
  expect(pupil(lens)[2]).toBeCloseTo(z - 10.5 * (1 - Math.cos(inwards)), 2);
  expect(lens?.pupil_distance_mm).toBeCloseTo(2 * (pupil(lens)[0] ?? 0), 2);
});
