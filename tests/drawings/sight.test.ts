import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  distanceArc,
  frameAtEyePlane,
  onEyePlane,
  pupilAt,
  sightLines,
} from '../../src/drawings/rail/sight';
import { cameraAt, project } from '../../src/optics/camera';
import { metres, radians } from '../../src/optics/units';

const SENSOR = { width: metres(0.024), height: metres(0.036) };
const ROOM = { x: -1.2, y: -0.4, width: 5, height: 0.8 };
const standpoint = fc.double({ min: 0.25, max: 3.5, noNaN: true });

describe('sight lines', () => {
  it('run from the pupil exactly through the edges of the frame (similar triangles)', () => {
    fc.assert(
      fc.property(standpoint, fc.double({ min: 0.05, max: 0.35, noNaN: true }), (d, top) => {
        const lines = sightLines({ standpoint: d, cameraHeight: 0 }, { top, bottom: -top }, ROOM);
        expect(lines).toHaveLength(2);
        for (const [i, [from, to]] of lines.entries()) {
          expect(from).toEqual({ x: d, y: 0 });
          // On a straight line through (d, 0) and (0, ±top) height is ±top (d - x) / d.
          const edge = i === 0 ? top : -top;
          expect(to.y).toBeCloseTo((edge * (d - to.x)) / d, 9);
          // It ends at the room's edge: the backdrop or the upper or lower limit.
          const ends = [to.x - ROOM.x, Math.abs(to.y) - 0.4].map(Math.abs);
          expect(Math.min(...ends)).toBeLessThan(1e-9);
        }
      }),
    );
  });

  it('span H (d + b) / d of a backdrop b behind the eyes', () => {
    const tall = { x: -1.2, y: -5, width: 5, height: 10 };
    const [upper, lower] = sightLines(
      { standpoint: 2.4, cameraHeight: 0 },
      { top: 0.16, bottom: -0.26 },
      tall,
    );
    expect((upper?.[1].y ?? 0) - (lower?.[1].y ?? 0)).toBeCloseTo((0.42 * (2.4 + 1.2)) / 2.4, 9);
  });

  it('of a raised camera still pass through the edges on its own eye plane', () => {
    const from = { standpoint: 1, cameraHeight: 0.3 };
    const frame = { top: 0.16, bottom: -0.26 };
    const tall = { x: -1.2, y: -5, width: 5, height: 10 };
    for (const [i, [a, b]] of sightLines(from, frame, tall).entries()) {
      const edge = onEyePlane(from, i === 0 ? frame.top : frame.bottom);
      const cross = (b.x - a.x) * (edge.y - a.y) - (b.y - a.y) * (edge.x - a.x);
      expect(cross / Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(0, 9);
    }
  });
});

describe('the frame at the eye plane', () => {
  it('has its edges where the optics draw them at the edges of the sensor', () => {
    fc.assert(
      fc.property(
        standpoint,
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        (d, height, tilt) => {
          const made = cameraAt({
            standpoint: metres(d),
            height: metres(height),
            tilt: radians(tilt),
            focal: metres(0.05),
            sensor: SENSOR,
            eyesAt: 0.38,
          });
          if (!made.ok) throw new Error(made.reason);
          const camera = made.value;
          const frame = frameAtEyePlane(camera);
          for (const [along, edge] of [
            [frame.top, camera.frustum.top],
            [frame.bottom, camera.frustum.bottom],
          ] as const) {
            const { x: z, y } = onEyePlane({ standpoint: d, cameraHeight: height }, along);
            const drawn = project(camera, [0, y, z]);
            if (!drawn.ok) throw new Error(drawn.reason);
            expect(drawn.value.v / camera.imageDistance).toBeCloseTo(edge, 9);
          }
        },
      ),
    );
  });

  it("is H = h s / s' high for a level camera", () => {
    const made = cameraAt({
      standpoint: metres(2.4),
      focal: metres(0.05),
      sensor: SENSOR,
      eyesAt: 0.38,
    });
    if (!made.ok) throw new Error(made.reason);
    const { top, bottom } = frameAtEyePlane(made.value);
    // Thin lens: s' = f s / (s - f).
    const image = (0.05 * 2.4) / (2.4 - 0.05);
    expect(top - bottom).toBeCloseTo((0.036 * 2.4) / image, 9);
    expect(top / (top - bottom)).toBeCloseTo(0.38, 9);
  });
});

it('the arc of a raised camera keeps its distance from the eyes and ends on the axis', () => {
  const from = { standpoint: 0.6, cameraHeight: 0.2 };
  const arc = distanceArc(from);
  expect(arc[0]?.x).toBeCloseTo(pupilAt(from).x, 9);
  for (const { x, y } of arc) expect(Math.hypot(x, y)).toBeCloseTo(0.6, 9);
  expect(arc.at(-1)?.y).toBeCloseTo(0, 9);
});
