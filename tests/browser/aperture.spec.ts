/** Depth of field in stills: the blur disc in the pixels is the one that optics gives. */
import { pupilDiameter } from '../../src/optics/aperture';
import { cameraAt, pictureShare } from '../../src/optics/camera';
import { blurDisc } from '../../src/optics/focus';
import { must as met } from '../../src/optics/result';
import type { Camera, Vec3 } from '../../src/optics/types';
import { type Metre, metres, mmToM, radians } from '../../src/optics/units';
import { must } from './expected';
import { expect, test } from './fixture';
import { contrast, type Image } from './image';
import { apart, still, type Thing } from './stills';

const LENS = { focal: mmToM(85), fNumber: 1.8, focus: metres(2) } as const;
const SENSOR = { width: mmToM(24), height: mmToM(36) };
const SIZE = [800, 1200] as const;
const PIXELS_PER_METRE = SIZE[1] / SENSOR.height;

/** Looking down at the sitter, with the frame shifted besides. */
const CAMERA: Camera = met(
  cameraAt({
    standpoint: metres(2.02),
    height: metres(0.2),
    tilt: radians(-0.06),
    focal: LENS.focal,
    sensor: SENSOR,
    eyesAt: 0.45,
    eyesAcross: 0.55,
    focusDistance: LENS.focus,
  }),
);
const APERTURE = {
  diameter: met(pupilDiameter(LENS.focal, LENS.fNumber)),
  focusDepth: LENS.focus,
};

/** Before the plane in focus, in it and behind it, metres; drawn two beside each other. */
const DEPTHS = [1.2, 1.4, 1.6, 1.8, 2, 2.3, 2.7, 3.2].map(metres);
const COLUMNS = 2;

interface Plate {
  readonly depth: Metre;
  readonly middle: Vec3;
  /** Radius, and the blur disc's diameter that optics gives, pixels. */
  readonly radius: number;
  readonly disc: number;
}

function inWorld({ position, tilt }: Camera, x: number, y: number, depth: number): Vec3 {
  const [cos, sin] = [Math.cos(tilt), Math.sin(tilt)];
  return [
    position[0] + x,
    position[1] + y * cos + depth * sin,
    position[2] + y * sin - depth * cos,
  ];
}

/** Small bright plates square to the axis, each in a cell of the picture of its own. */
const PLATES: readonly Plate[] = DEPTHS.map((depth, i) => {
  const { left, right, bottom, top } = CAMERA.frustum;
  const across = ((i % COLUMNS) + 0.5) / COLUMNS;
  const down = (Math.floor(i / COLUMNS) + 0.5) / (DEPTHS.length / COLUMNS);
  const x = (left + (right - left) * across) * depth;
  const y = (top + (bottom - top) * down) * depth;
  const disc = met(blurDisc(LENS, depth)) * PIXELS_PER_METRE;
  return { depth, middle: inWorld(CAMERA, x, y, depth), disc, radius: Math.max(8, 0.4 * disc) };
});

const CORNERS = 32;
const THING: Thing = {
  positions: PLATES.flatMap(({ middle, depth, radius }) => {
    const size = (radius * depth) / (PIXELS_PER_METRE * CAMERA.imageDistance);
    const [x, y, z] = middle;
    const [cos, sin] = [Math.cos(CAMERA.tilt), Math.sin(CAMERA.tilt)];
    return Array.from({ length: CORNERS }, (_, k) => {
      const angle = (2 * Math.PI * k) / CORNERS;
      const up = size * Math.sin(angle);
      return [x + size * Math.cos(angle), y + up * cos, z + up * sin];
    }).flat();
  }),
  indices: PLATES.flatMap((_, i) =>
    Array.from({ length: CORNERS - 2 }, (_, k) => [0, k + 1, k + 2].map((j) => CORNERS * i + j)),
  ).flat(),
};

/**
 * Light of a grey byte: sRGB decoded (IEC 61966-2-1), then the inverse of the tone curve for greys
 * (Khronos PBR Neutral: a toe of 6.25 x^2 below 0.08, an offset of 0.04, compression from 0.76 on).
 */
function lightOf(byte: number): number {
  const code = byte / 255;
  const toned = code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
  if (toned < 0.04) return Math.sqrt(toned / 6.25);
  if (toned < 0.76) return toned + 0.04;
  return 0.24 ** 2 / (1 - toned) + 0.76 - 0.24 + 0.04;
}

/** Middle of a plate's light, and its variance along each axis, pixels. */
function moments(image: Image, { middle, radius, disc }: Plate) {
  const { across, down } = met(pictureShare(CAMERA, middle));
  const [atX, atY] = [across * image.width, down * image.height];
  const reach = radius + disc / 2 + 5;
  const [sum, first, second] = [[0], [0, 0], [0, 0]];
  for (let y = Math.round(atY - reach); y < atY + reach; y++)
    for (let x = Math.round(atX - reach); x < atX + reach; x++) {
      const light = lightOf(must(image.data[4 * (y * image.width + x)]));
      const from = [x + 0.5 - atX, y + 0.5 - atY];
      sum[0] = must(sum[0]) + light;
      for (const axis of [0, 1] as const) {
        first[axis] = must(first[axis]) + light * must(from[axis]);
        second[axis] = must(second[axis]) + light * must(from[axis]) ** 2;
      }
    }
  const mean = first.map((value) => value / must(sum[0]));
  return {
    mean,
    variance: second.map((value, axis) => value / must(sum[0]) - must(mean[axis]) ** 2),
  };
}

test('the blur disc in the pixels is the thin lens’s within 2 %, before and behind the focus', async ({
  quick: app,
}) => {
  const look = 'mask';
  const sharp = await still(app, CAMERA, SIZE, { look, samples: 64 }, THING);
  const blurred = await still(app, CAMERA, SIZE, { look, aperture: APERTURE }, THING);
  for (const plate of PLATES) {
    const [before, after] = [moments(sharp, plate), moments(blurred, plate)];
    for (const axis of [0, 1] as const) {
      const what = `${plate.depth} m, ${'xy'[axis]}`;
      // The plate stands where optics draws it, and blur moves it nowhere.
      expect(Math.abs(must(before.mean[axis])), what).toBeLessThan(0.1);
      expect(Math.abs(must(after.mean[axis])), what).toBeLessThan(0.1 + 0.01 * plate.disc);
      // What the lens spreads a point over adds to the variance of the plate itself. A uniform disc of
      // diameter D has the variance D^2 / 16 along an axis: pi r^4 / 4 over its area pi r^2.
      const added = must(after.variance[axis]) - must(before.variance[axis]);
      const measured = 4 * Math.sqrt(Math.max(0, added));
      if (plate.disc === 0) expect(Math.abs(added), what).toBeLessThan(0.05);
      else expect(Math.abs(measured / plate.disc - 1), what).toBeLessThan(0.02);
    }
  }
});

test('a still through an aperture is the same to the byte each time, and the same in tiles', async ({
  quick: app,
}) => {
  const { camera, focusDistance } = await app.picture('A');
  const aperture = { diameter: metres(0.02), focusDepth: focusDistance };
  const size = [160, 240] as const;
  const asked = { look: 'photo', samples: 16, aperture } as const;
  const whole = await still(app, camera, size, asked);
  expect(contrast(whole)).toBeGreaterThan(8);
  const again = await still(app, camera, size, asked);
  expect(Buffer.compare(whole.data, again.data)).toBe(0);
  const tiled = await still(app, camera, size, { ...asked, tileSide: 64, bandHeight: 50 });
  const off = apart(whole, tiled);
  expect(off.filter((value) => value > 2).length / off.length).toBeLessThanOrEqual(0.001);
  const sharp = await still(app, camera, size, { look: 'photo', samples: 16 });
  expect(apart(whole, sharp).filter((value) => value > 20).length).toBeGreaterThan(100);
});
