import { type RefObject, useEffect } from 'react';

/** The places that a stage draws its pictures in. */
const FRAMES = '.print-picture, .chosen-print';

/**
 * While the browser prints, each picture's frame holds its own part of the stage's canvas: on paper the frames
 * stand elsewhere than on screen, and the canvas cannot follow.
 */
export function usePrintedPictures(wall: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const printed: HTMLCanvasElement[] = [];
    const before = (): void => {
      const stage = wall.current?.querySelector<HTMLCanvasElement>('.wall-stage canvas');
      if (!stage || printed.length > 0) return;
      for (const frame of wall.current?.querySelectorAll(FRAMES) ?? [])
        printed.push(partOf(stage, frame));
    };
    const after = (): void => {
      for (const canvas of printed.splice(0)) canvas.remove();
    };
    window.addEventListener('beforeprint', before);
    window.addEventListener('afterprint', after);
    return () => {
      window.removeEventListener('beforeprint', before);
      window.removeEventListener('afterprint', after);
      after();
    };
  }, [wall]);
}

/** The part of the stage that lies over a frame, as a canvas inside the frame. */
function partOf(stage: HTMLCanvasElement, frame: Element): HTMLCanvasElement {
  const [whole, part] = [stage.getBoundingClientRect(), frame.getBoundingClientRect()];
  const scale = stage.width / whole.width;
  const canvas = document.createElement('canvas');
  canvas.className = 'printed';
  canvas.width = Math.round(part.width * scale);
  canvas.height = Math.round(part.height * scale);
  canvas
    .getContext('2d')
    ?.drawImage(stage, (whole.left - part.left) * scale, (whole.top - part.top) * scale);
  frame.append(canvas);
  return canvas;
}
