import { describe, expect, it } from 'vitest';
import { degToRad } from '../../src/optics/units';
import {
  backdropLamp,
  hairLamp,
  intensityAt,
  keyLamp,
  lightDirection,
  throwOf,
} from '../../src/stage/lamps';
import { USUAL_LIGHT } from '../../src/stage/studio';

const light = (azimuth: number, elevation: number) => ({
  azimuth: degToRad(azimuth),
  elevation: degToRad(elevation),
  distance: 2.2,
  size: 0.66,
  strength: 1,
});
const keyed = (azimuth: number, elevation: number) => ({ key: light(azimuth, elevation) });

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
    const key = keyLamp(keyed(40, 30));
    expect(key.diameter / throwOf(key)).toBeCloseTo(0.3, 12);
  });

  it('light the eyes with the strength stated, by the inverse-square law', () => {
    const key = keyLamp(keyed(-20, 10));
    const distance = throwOf(key);
    expect(intensityAt(key.strength, distance) / distance ** 2 / Math.PI).toBeCloseTo(
      key.strength,
      12,
    );
  });

  it.each([0.6, 1, 2, 4])(
    'keep the backdrop light off the sitter, backdrop at %s m',
    (backdrop) => {
      const lamp = backdropLamp(USUAL_LIGHT, {
        backdrop,
        cameraWall: 3,
        behindCamera: 0.4,
        hall: {
          left: 3.6,
          right: 3.6,
          height: 3.5,
          depth: 10,
          behind: 0,
          sheet: null,
          corner: null,
        },
      });
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

  it.each([0.6, 1, 2, 4])('keep the hair light before the wall, backdrop at %s m', (backdrop) => {
    const lamp = hairLamp(USUAL_LIGHT, {
      backdrop,
      cameraWall: 3,
      behindCamera: 0.4,
      hall: { left: 3.6, right: 3.6, height: 3.5, depth: 10, behind: 0, sheet: null, corner: null },
    });
    expect(lamp.position[2]).toBeGreaterThanOrEqual(-backdrop + 0.2);
    expect(lamp.position[2]).toBeLessThan(0);
  });

  it('give nothing when they are off, and twice as much at twice the strength', () => {
    const off = { ...USUAL_LIGHT, key: { ...USUAL_LIGHT.key, strength: 0 } };
    const twice = { ...USUAL_LIGHT, key: { ...USUAL_LIGHT.key, strength: 2 } };
    expect(keyLamp(off).strength).toBe(0);
    expect(keyLamp(twice).strength).toBeCloseTo(2 * keyLamp(USUAL_LIGHT).strength, 12);
  });
});
