/** A picture rendered onto a canvas. */
import type { StageHandle, StillOptions } from '../../stage';
import type { Shown } from '../compare/shown';

/** Where on the canvas, and how large, pixels. */
export interface PaintedBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** @throws AbortError when the signal is raised. */
export async function paintPicture(
  pen: OffscreenCanvasRenderingContext2D,
  stage: StageHandle,
  { resolved, company }: Pick<Shown, 'resolved' | 'company'>,
  box: PaintedBox,
  options: StillOptions,
): Promise<void> {
  let { y } = box;
  for await (const band of stage.renderPicture(resolved.camera, box.width, box.height, {
    sitters: company,
    ...options,
  })) {
    const rows = new Uint8ClampedArray(band.buffer, band.byteOffset, band.length);
    pen.putImageData(new ImageData(rows, box.width), box.x, y);
    y += band.length / (4 * box.width);
  }
}
