import { describe, expect, it } from 'vitest';
import { degToRad } from '../../src/optics/units';
import { backdropLamp, intensityAt, keyLamp, lightDirection, throwOf } from '../../src/stage/lamps';

const light = (azimuth: number, elevation: number) => ({
  azimuth: degToRad(azimuth),
  elevation: degToRad(elevation),
  softness: 0.3,
});

describe('lamps', () => {
  it('put the key in front, at the picture’s left, above', () => {
    const near = (actual: readonly number[], wanted: readonly number[]) =>
      actual.forEach((value, i) => {
        expect(value).toBeCloseTo(wanted[i] as number, 12);
      });
    near(lightDirection(light(0, 0)), [0, 0, 1]);
    near(lightDirection(light(90, 0)), [-1, 0, 0]);
    near(lightDirection(light(-90, 0)), [1, 0, 0]);
    near(lightDirection(light(30, 90)), [0, 1, 0]);
    near(lightDirection(light(45, 30)), [-Math.sqrt(3 / 8), 0.5, Math.sqrt(3 / 8)]);
  });

  it('give the key the size its softness asks for at its distance', () => {
    const key = keyLamp(light(40, 30));
    expect(key.diameter / throwOf(key)).toBeCloseTo(0.3, 12);
  });

  it('light the eyes with the strength stated, by the inverse-square law', () => {
    const key = keyLamp(light(-20, 10));
    const distance = throwOf(key);
    expect(intensityAt(key.strength, distance) / distance ** 2 / Math.PI).toBeCloseTo(
      key.strength,
      12,
    );
  });

  it.each([0.6, 1, 2, 4])(
    'keep the backdrop light off the sitter, backdrop at %s m',
    (backdrop) => {
      const lamp = backdropLamp({ backdrop, cameraWall: 3, behindCamera: 0.4 });
      // The sitter's back is at z = -0.25; the beam points away from it.
      const axis = lamp.target.map((value, i) => value - (lamp.position[i] as number));
      const angleTo = (point: readonly number[]) => {
        const way = point.map((value, i) => value - (lamp.position[i] as number));
        const dot = way.reduce((sum, value, i) => sum + value * (axis[i] as number), 0);
        return Math.acos(dot / (Math.hypot(...way) * Math.hypot(...axis)));
      };
      for (const point of [
        [0, 0.12, -0.15],
        [0, -0.2, -0.1],
        [0.2, -0.3, -0.1],
        [-0.2, -0.3, -0.1],
      ]) {
        expect(angleTo(point)).toBeGreaterThan(lamp.beam);
      }
    },
  );
});
