/** Waits until all that was asked of a context is drawn. */
export function finish(gl: WebGL2RenderingContext): void {
  gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
}

/** A canvas as RGBA. */
export function pixelsOf(canvas: HTMLCanvasElement): Uint8ClampedArray {
  const pen = new OffscreenCanvas(canvas.width, canvas.height).getContext('2d');
  if (!pen) throw new Error('no canvas to read with');
  pen.drawImage(canvas, 0, 0);
  return pen.getImageData(0, 0, canvas.width, canvas.height).data;
}

/** Mean absolute difference of two pictures, 0..255. */
export function meanDifference(a: Uint8ClampedArray, b: Uint8ClampedArray): number {
  if (a.length !== b.length) throw new Error(`${a.length} and ${b.length} bytes`);
  return a.reduce((sum, value, i) => sum + Math.abs(value - (b[i] as number)), 0) / a.length;
}
