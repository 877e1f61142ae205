import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  farthestCorner,
  farthestEdge,
  offAxisStretch,
  sphereImage,
} from '../../src/optics/off-axis';
import { metres, radians } from '../../src/optics/units';
import { always, length, refusal, value } from './value';

describe('off axis', () => {
  it('finds the farthest edge and corner of a shifted frame', () => {
    // Sides 0.5 from the axis at mid-height -0.2; the lower end reaches 0.9.
    const frustum = { left: -0.5, right: 0.5, bottom: -0.9, top: 0.5 };
    expect(Math.tan(value(farthestEdge(frustum)).angle)).toBeCloseTo(0.9, 12);
    expect(Math.tan(value(farthestCorner(frustum)).angle)).toBeCloseTo(Math.hypot(0.5, 0.9), 12);
    const wide = { ...frustum, left: -1, right: 1 };
    expect(Math.tan(value(farthestEdge(wide)).angle)).toBeCloseTo(Math.hypot(1, 0.2), 12);
  });

  it('stretches a small ball as the exact image of a ball does', () => {
    const angles = fc.double({ min: -1.2, max: 1.2, noNaN: true }).map(radians);
    always(
      fc.property(angles, length(0.5, 5), (angle, distance) => {
        const small = metres(distance * 1e-4);
        const onAxis = value(sphereImage(small, distance, radians(0)));
        const offAxis = value(sphereImage(small, distance, angle));
        const { equalDistance } = value(offAxisStretch(angle));
        expect(offAxis.radial / onAxis.radial / equalDistance.radial).toBeCloseTo(1, 5);
        expect(offAxis.tangential / onAxis.tangential / equalDistance.tangential).toBeCloseTo(1, 5);
      }),
    );
  });

  it('draws a ball at equal depth by equal depth', () => {
    const angle = radians(0.8);
    const depth = 2;
    const small = metres(1e-4);
    const onAxis = value(sphereImage(small, metres(depth), radians(0)));
    const offAxis = value(sphereImage(small, metres(depth / Math.cos(angle)), angle));
    const { equalDepth } = value(offAxisStretch(angle));
    expect(offAxis.radial / onAxis.radial).toBeCloseTo(equalDepth.radial, 6);
    expect(offAxis.tangential / onAxis.tangential).toBeCloseTo(equalDepth.tangential, 6);
  });

  it('refuses what a flat picture cannot hold', () => {
    expect(refusal(offAxisStretch(radians(Math.PI / 2))).reason).toBe('behind-camera');
    // The ball reaches past 90 degrees from the axis.
    expect(refusal(sphereImage(metres(0.5), metres(1), radians(1.1))).reason).toBe('behind-camera');
    expect(refusal(sphereImage(metres(1), metres(1), radians(0))).reason).toBe('behind-camera');
  });
});
