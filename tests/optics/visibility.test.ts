import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { metres } from '../../src/optics/units';
import { ellipsoidOutline, sphereVisibility } from '../../src/optics/visibility';
import { always, length, refusal, value } from './value';

describe('what is seen of a round head', () => {
  it('is half of it from afar, nothing from its surface', () => {
    expect(value(sphereVisibility(metres(0.09), metres(1e6))).surface).toBeCloseTo(0.5, 6);
    expect(value(sphereVisibility(metres(0.09), metres(0.0900001))).surface).toBeCloseTo(0, 5);
    expect(refusal(sphereVisibility(metres(0.09), metres(0.09))).reason).toBe('behind-camera');
  });

  it('is the share of evenly spread points whose normal faces the camera', () => {
    // Archimedes: equal slices of the diameter carry equal area.
    const points = 20_000;
    for (const distance of [0.15, 0.4, 2.4]) {
      const radius = 0.09;
      let seen = 0;
      for (let i = 0; i < points; i++) {
        const height = radius * (1 - (2 * (i + 0.5)) / points);
        // Camera on the polar axis: (camera - point) . normal tells the visible side.
        const towards = distance * (height / radius) - radius;
        if (towards > 0) seen++;
      }
      expect(seen / points).toBeCloseTo(
        value(sphereVisibility(metres(radius), metres(distance))).surface,
        4,
      );
    }
  });

  it('ends where no ray to the ellipse leans further out', () => {
    always(
      fc.property(length(0.05, 0.2), length(0.05, 0.2), length(0.25, 5), (a, c, distance) => {
        const outline = value(ellipsoidOutline(a, c, distance));
        let widest = { slope: 0, breadth: 0 };
        for (let t = 0; t < Math.PI / 2; t += 1e-3) {
          const slope = (a * Math.cos(t)) / (distance - c * Math.sin(t));
          if (slope > widest.slope) widest = { slope, breadth: Math.cos(t) };
        }
        expect(outline.tangent / widest.slope).toBeCloseTo(1, 5);
        expect(outline.breadth).toBeCloseTo(widest.breadth, 2);
      }),
      50,
    );
  });

  it('of an ellipsoid with equal axes is that of the sphere', () => {
    const sphere = value(sphereVisibility(metres(0.09), metres(0.5)));
    const same = value(ellipsoidOutline(metres(0.09), metres(0.09), metres(0.5)));
    expect(same.breadth).toBeCloseTo(sphere.breadth, 12);
    expect(Math.atan(same.tangent)).toBeCloseTo(Math.PI / 2 - sphere.halfAngle, 12);
  });
});
