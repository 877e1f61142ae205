import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutRequest, cutFrom } from '../../src/optics/cut';
import { blurInPicture } from '../../src/optics/focus';
import { frameForFocal } from '../../src/optics/framing';
import { metres, mmToM } from '../../src/optics/units';
import { always, FULL_FRAME_PORTRAIT, length, refusal, value } from './value';

const request: CutRequest = {
  focal: mmToM(35),
  fNumber: 4,
  focus: metres(2),
  sensor: FULL_FRAME_PORTRAIT,
  frameHeight: metres(0.4),
  megapixels: 24,
};

describe('stay back and crop', () => {
  it('keeps the share of the frame that the wanted one is', () => {
    always(
      fc.property(length(0.5, 6), length(0.2, 1), (focus, frameHeight) => {
        const whole = value(frameForFocal(request.focal, focus, FULL_FRAME_PORTRAIT.height));
        fc.pre(frameHeight < whole);
        const cut = value(cutFrom({ ...request, focus, frameHeight }));
        expect(cut.linearShare).toBeCloseTo(frameHeight / whole, 9);
        expect(cut.areaShare).toBeCloseTo((frameHeight / whole) ** 2, 9);
        expect(cut.megapixels).toBeCloseTo(24 * (frameHeight / whole) ** 2, 9);
      }),
    );
  });

  it('blurs as the lens and f-number it names, in focus and out', () => {
    always(
      fc.property(length(0.5, 6), length(0.3, 20), (focus, x) => {
        const cut = value(cutFrom({ ...request, focus, frameHeight: metres(0.3) }));
        const own = value(blurInPicture({ ...request, focus }, x, mmToM(36)));
        const asIf = value(blurInPicture({ ...cut.asIf, focus }, x, mmToM(36)));
        expect(own / cut.linearShare).toBeCloseTo(asIf, 9);
      }),
    );
  });

  it('prints at 300 dots an inch: 4000 x 6000 pixels uncut are 339 x 508 mm', () => {
    const frameHeight = value(frameForFocal(request.focal, request.focus, mmToM(36)));
    const cut = value(cutFrom({ ...request, frameHeight }));
    expect(cut.linearShare).toBeCloseTo(1, 12);
    expect(cut.print.width).toBeCloseTo((4000 / 300) * 0.0254, 9);
    expect(cut.print.height).toBeCloseTo((6000 / 300) * 0.0254, 9);
  });

  it('refuses a lens too long for the framing, and names the longest that does', () => {
    const refused = refusal(cutFrom({ ...request, focal: mmToM(200) }));
    expect(refused).toMatchObject({ reason: 'lens-too-long', asked: 0.2 });
    expect(refused.limit).toBeCloseTo((2 * 0.036) / 0.436, 12);
  });
});
