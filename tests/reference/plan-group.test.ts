/**
 * Groups, framings, backdrops and personal distance against what others print, against OpenCV's projection, and
 * against a plain search. What has no source is said so.
 */
import { describe, expect, test } from 'vitest';
import { dimensionsOf, frameHeightOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import { fNumberForDepth, focusForTwoPlanes } from '../../src/optics/focus';
import type { SensorFormat, Vec3 } from '../../src/optics/types';
import { metres } from '../../src/optics/units';
import { type GroupMember, personAt, placeGroup, type RowCurve } from '../../src/plan/group';
import { groupFigures } from '../../src/plan/group-figures';
import { PERSONAL_DISTANCES, personalDistance } from '../../src/readings/proxemics';
import { landmarksFor } from '../../src/sitter/landmarks';
import { value } from '../optics/value';
import { loadOpenCv } from './opencv';

const models = loadModels();
const INCH = 0.0254;

describe('personal distance', () => {
  // Hall ET. 1966. The Hidden Dimension, ch. X; read in excerpt (pp. 114-125) and in the entry "interpersonal
  // zones" of A Dictionary of Media and Communication (Oxford): intimate to 18 inches, personal 1.5 to 4 feet,
  // social 4 to 12 feet, public from 12 feet on.
  test.each([
    ['intimate', 0, 18],
    ['personal', 18, 48],
    ['social', 48, 144],
    ['public', 144, Number.POSITIVE_INFINITY],
  ] as const)('%s: from %d to %d inches', (band, from, to) => {
    const found = PERSONAL_DISTANCES.find((each) => each.band === band);
    expect(found?.upTo).toBeCloseTo(to * INCH, 12);
    expect(personalDistance(from * INCH + 0.001)).toBe(band);
    expect(personalDistance(to * INCH - 0.001)).toBe(band);
  });
});

describe('framings', () => {
  // Life-size portraits have for their frame what the canvas measures. Simon J. 2013. British portrait painters
  // and their canvas sizes, 1625-1850. National Portrait Gallery, London, sections 1.1 and 4: most life-size
  // portraits were of a standard size; what is now called half-length, "to the waste" (1720), 30 x 25 in, and
  // three-quarter length 50 x 40 in. Other framings: common practice, no source.
  test.each([
    ['half-length', 30],
    ['three-quarter', 50],
  ] as const)('%s holds a canvas %d inches high between its least and its most', (id, inches) => {
    const framing = models.framings.get(id);
    for (const who of ['adult-woman', 'adult-man']) {
      const sitter = models.sitters.get(who);
      if (!framing || !sitter) throw new Error(`no ${id} or ${who}`);
      const { least, most } = frameHeightOf(framing, dimensionsOf(sitter));
      expect(inches * INCH).toBeGreaterThan(least);
      expect(inches * INCH).toBeLessThan(most);
    }
  });

  // Where television and schools teach the cut: "head to waist" for a mid shot (glossary of Media Arts, School
  // Curriculum and Standards Authority, Western Australia), head to toe for a whole figure (studio camera
  // framings, Bath Spa University). Read on their pages.
  test.each([
    ['half-length', 'waist'],
    ['full-length', 'floor'],
  ] as const)('%s runs down to the %s', (id, level) => {
    expect(models.framings.get(id)?.usual.to).toBe(level);
  });
});

describe('backdrops', () => {
  // Paper comes 26, 53 and 107 inches wide (photographytips.net, "Paper Backgrounds", read); sold by the metre
  // from 1.35 to 3.55 m (a photographic magazine's survey of backgrounds, read). 2.18 m: from memory.
  test.each([
    [0.66, 26],
    [1.35, 53],
    [2.72, 107],
  ])('a roll of %d m is the one of %d inches, rounded', (width, inches) => {
    expect([...models.backdrops.values()].map((each) => each.width)).toContain(width);
    expect(Math.abs(width - inches * INCH)).toBeLessThan(0.005);
  });

  test('rolls sold by the metre run from 1.35 to 3.55 m', () => {
    const widths = [...models.backdrops.values()].map((each) => each.width);
    expect(widths).toContain(1.35);
    expect(Math.max(...widths)).toBe(3.55);
  });
});

describe('the focus that two rows share', () => {
  /** Disc of a point at `x` with the sensor where `focus` is sharp: the cone from the aperture, by similar triangles. */
  const disc = (focal: number, x: number, focus: number): number => {
    const image = (at: number) => 1 / (1 / focal - 1 / at);
    return (focal * Math.abs(image(x) - image(focus))) / image(x);
  };

  /** Where a function of one valley is lowest, by thirds. */
  function lowest(f: (x: number) => number, from: number, to: number): number {
    let [a, b] = [from, to];
    while (b - a > 1e-10) {
      const [one, two] = [a + (b - a) / 3, b - (b - a) / 3];
      if (f(one) < f(two)) b = two;
      else a = one;
    }
    return (a + b) / 2;
  }

  test.each([
    [0.044, 4, 4.8],
    [0.05, 2.5, 3.9],
    [0.085, 5, 6.4],
    [0.024, 1.2, 3.3],
  ])('%d m, rows at %d and %d m: where the larger of both discs is least', (focal, near, far) => {
    const worst = (focus: number) => Math.max(disc(focal, near, focus), disc(focal, far, focus));
    const found = lowest(worst, near, far);
    expect(value(focusForTwoPlanes(metres(near), metres(far)))).toBeCloseTo(found, 6);
    // At f/1 that disc is so large; at f/N it is 1/N of it.
    const circle = metres(0.00003);
    expect(value(fNumberForDepth(metres(focal), metres(near), metres(far), circle))).toBeCloseTo(
      worst(found) / circle,
      3,
    );
    // A third of the way from the front row does worse.
    expect(worst(near + (far - near) / 3)).toBeGreaterThan(worst(found) * 1.01);
  });
});

describe('heads at the ends of a row', () => {
  const format = models.formats.get('full-frame') as SensorFormat;
  const sitter = models.sitters.get('adult-woman');
  if (!sitter) throw new Error('no sitter');
  const landmarks = landmarksFor(dimensionsOf(sitter));
  const S = 4;

  const members = Array.from(
    { length: 7 },
    (_, i): GroupMember => ({
      id: `${i}`,
      name: 'Somebody',
      standingEyes: 1.6,
      seatedEyes: 0.75,
      shoulders: 0.45,
      headBreadth: 0.15,
      crown: 0.12,
    }),
  );
  const standing = (curve: RowCurve) =>
    value(
      placeGroup({
        rows: [{ place: 'standing', members, spacing: 0.6 }],
        rowSpacing: 0.7,
        step: 0.2,
        curve,
        depth: S,
      }),
    ).members.map((place) => personAt(place, landmarks));

  const RADIUS = 0.005;
  const ROUND = 2000;

  /** Where rays from the lens touch a ball, told from the lens: OpenCV's axes, x right, y down, z forward. */
  function outline([x, , z]: Vec3): number[] {
    const forward = S - z;
    const way = Math.hypot(x, forward);
    const share = (RADIUS / way) ** 2;
    const ring = RADIUS * Math.sqrt(1 - share);
    return Array.from({ length: ROUND }, (_, i) => {
      const turn = (2 * Math.PI * i) / ROUND;
      const [aside, down] = [ring * Math.cos(turn), ring * Math.sin(turn)];
      return [
        x * (1 - share) + (aside * forward) / way,
        down,
        forward * (1 - share) - (aside * x) / way,
      ];
    }).flat();
  }

  test('are stretched as OpenCV draws a small ball there, straight and curved', async () => {
    const { cv } = await loadOpenCv();
    const matrix = cv.matFromArray(3, 3, cv.CV_64F, [1, 0, 0, 0, 1, 0, 0, 0, 1]);
    const still = cv.matFromArray(3, 1, cv.CV_64F, [0, 0, 0]);
    const none = new cv.Mat();
    /** Breadth and height of the drawn ball. */
    const drawn = (eyes: Vec3): readonly [number, number] => {
      const points = cv.matFromArray(ROUND, 1, cv.CV_64FC3, outline(eyes));
      const flat = new cv.Mat();
      cv.projectPoints(points, still, still, matrix, none, flat, new cv.Mat(), 0);
      const all = [...(flat.data64F as Float64Array)];
      const extent = (axis: 0 | 1) => {
        const own = all.filter((_, i) => i % 2 === axis);
        return Math.max(...own) - Math.min(...own);
      };
      return [extent(0), extent(1)];
    };
    const people = { straight: standing('straight'), curved: standing('curved') };
    const does = groupFigures({ people, chosen: 'straight', s: S, lens: 0, most: null }, format);
    for (const curve of ['straight', 'curved'] as const) {
      const all = people[curve];
      const middle = drawn([0, 0, 0]);
      const end = all.reduce((a, b) => (b.eyes[0] > a.eyes[0] ? b : a));
      const [across, up] = drawn(end.eyes);
      expect(end.eyes[0]).toBeGreaterThan(1.7);
      expect(across / middle[0] / (does?.ends[curve]?.across ?? 0)).toBeCloseTo(1, 5);
      expect(up / middle[1] / (does?.ends[curve]?.up ?? 0)).toBeCloseTo(1, 5);
    }
  });
});
