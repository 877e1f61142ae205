import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backdropExtent, backdropWidth, backgroundSize } from '../../src/optics/background';
import { cameraAt, frameAtDepth, pictureShare } from '../../src/optics/camera';
import { metres, mmToM, radians } from '../../src/optics/units';
import { always, FULL_FRAME_PORTRAIT, length, refusal, value } from './value';

describe('background', () => {
  it('shrinks with its distance behind the sitter', () => {
    expect(value(backgroundSize(metres(2), metres(2)))).toBe(0.5);
    expect(value(backgroundSize(metres(2), metres(0)))).toBe(1);
    expect(refusal(backgroundSize(metres(2), metres(-2))).reason).toBe('behind-camera');
  });

  it('asks for a margin at each side', () => {
    expect(value(backdropWidth(metres(0.5), metres(2), metres(2), 0.1))).toBeCloseTo(1.2, 12);
  });

  it('is as wide as the frame of a level camera at the depth of the backdrop', () => {
    always(
      fc.property(length(0.4, 8), length(0.1, 6), (d, behind) => {
        const camera = value(
          cameraAt({ standpoint: d, focal: mmToM(50), sensor: FULL_FRAME_PORTRAIT, eyesAt: 0.3 }),
        );
        const extent = value(backdropExtent(camera, behind));
        const frame = value(frameAtDepth(camera, d));
        const width = value(backdropWidth(frame.width, d, behind));
        expect((extent.right - extent.left) / width).toBeCloseTo(1, 9);
      }),
    );
  });

  it('reaches to what the corners of the frame see, shifted, raised or tilted', () => {
    const shares = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    const tilts = fc.double({ min: -0.4, max: 0.4, noNaN: true }).map(radians);
    always(
      fc.property(length(0.5, 6), length(0.2, 4), shares, shares, tilts, (d, b, at, over, tilt) => {
        const camera = value(
          cameraAt({
            standpoint: d,
            height: metres((at - 0.5) * d),
            tilt,
            focal: mmToM(35),
            sensor: FULL_FRAME_PORTRAIT,
            eyesAt: at,
            eyesAcross: over,
          }),
        );
        const box = value(backdropExtent(camera, b));
        // Top and bottom edges of the frame end on the box; its wider end ends at the sides.
        const seen = [box.left, box.right].flatMap((x) =>
          [box.bottom, box.top].map((y) => value(pictureShare(camera, [x, y, -b]))),
        );
        expect(Math.min(...seen.map(({ down }) => down))).toBeCloseTo(0, 9);
        expect(Math.max(...seen.map(({ down }) => down))).toBeCloseTo(1, 9);
        for (const end of [0, 1] as const) {
          const corners = seen.filter(({ across }) => Math.abs(across - end) < 1e-9);
          expect(corners.length).toBeGreaterThan(0);
        }
        for (const { across } of seen) expect(across <= 1e-9 || across >= 1 - 1e-9).toBe(true);
      }),
    );
  });

  it('refuses a frame that looks past the backdrop', () => {
    const camera = value(
      cameraAt({
        standpoint: metres(1),
        tilt: radians(1.2),
        focal: mmToM(16),
        sensor: FULL_FRAME_PORTRAIT,
      }),
    );
    expect(refusal(backdropExtent(camera, metres(1))).reason).toBe('behind-camera');
  });
});
