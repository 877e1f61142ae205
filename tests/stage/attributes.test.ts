import { SphereGeometry } from 'three';
import { describe, expect, it } from 'vitest';
import type { SitterMesh } from '../../src/sitter/types';
import { bends } from '../../src/stage/bend';
import { eyeAttributes } from '../../src/stage/eyeAttributes';
import { SHARPEST_BEND } from '../../src/stage/shaders/skin';

/** A ball, metres. */
function ball(radius: number): SitterMesh {
  const geometry = new SphereGeometry(radius, 24, 16);
  const positions = geometry.getAttribute('position').array as Float32Array;
  const count = positions.length / 3;
  return {
    name: 'ball',
    substance: 'skin',
    positions,
    normals: geometry.getAttribute('normal').array as Float32Array,
    colours: new Uint8Array(3 * count),
    openness: new Uint8Array(count).fill(255),
    indices: Uint32Array.from(geometry.getIndex()?.array ?? []),
    regions: new Uint8Array(count),
  };
}

describe('how sharply skin bends', () => {
  it.each([8, 20, 80])('is one over the radius on a ball of %s mm', (radius) => {
    const mesh = ball(radius / 1000);
    const bend = bends(mesh);
    const wanted = 255 / radius / SHARPEST_BEND;
    for (const v of mesh.indices)
      expect(Math.abs((bend[v] as number) - wanted)).toBeLessThanOrEqual(1);
  });

  it('is none in a hollow', () => {
    const { normals, ...rest } = ball(0.02);
    expect(Math.max(...bends({ ...rest, normals: normals.map((n) => -n) }))).toBe(0);
  });
});

describe('where a vertex lies on its eye', () => {
  it('is told along the eye’s own axes from its pupil, with the colour the pupil’s vertex has', () => {
    // Two eyes of two vertices each: the pupil's middle, and a point 5 mm to the right and 2 mm behind it.
    const mesh: SitterMesh = {
      ...ball(0.01),
      substance: 'eye',
      positions: Float32Array.from([0.03, 0, 0, 0.035, 0, -0.002, -0.03, 0, 0, -0.025, 0, -0.002]),
      normals: Float32Array.from([0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1]),
      colours: Uint8Array.from([51, 102, 153, 0, 0, 0, 51, 102, 153, 0, 0, 0]),
    };
    const { eyePlace, eyeUp, eyeAxis, irisColour } = eyeAttributes(mesh);
    const near = (list: Float32Array, v: number, wanted: readonly number[]) =>
      wanted.forEach((value, j) => {
        expect(list[3 * v + j]).toBeCloseTo(value, 4);
      });
    for (const v of [1, 3]) {
      near(eyePlace, v, [5, 0, -2]);
      near(eyeUp, v, [0, 1, 0]);
      near(eyeAxis, v, [0, 0, 1]);
      near(irisColour, v, [0.2, 0.4, 0.6]);
    }
  });
});
