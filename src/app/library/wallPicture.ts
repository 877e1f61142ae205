/** A small picture of what hangs on the wall, to tell sessions apart by. */

const HEIGHT = 120;
const GAP = 4;
const QUALITY = 0.8;

/** Wide enough for four upright pictures. */
const WIDEST = 400;

/** The wall's own pictures side by side as a JPEG in a data address; null where none hang. */
export function wallPicture(page: Document): string | null {
  const wall = page.querySelector<HTMLCanvasElement>('.wall-stage canvas');
  const hung = [...page.querySelectorAll('[data-picture] [role="img"]')];
  if (!wall || hung.length === 0) return null;
  const frame = wall.getBoundingClientRect();
  if (frame.width === 0) return null;
  const boxes = hung.map((each) => each.getBoundingClientRect());
  const [first] = boxes;
  if (!first || first.height === 0) return null;
  const gaps = GAP * (boxes.length - 1);
  const across = boxes.reduce((sum, { width }) => sum + width, 0);
  const shrink = Math.min(HEIGHT / first.height, (WIDEST - gaps) / across);
  const canvas = page.createElement('canvas');
  canvas.width = Math.round(across * shrink + gaps);
  canvas.height = Math.round(first.height * shrink);
  const pen = canvas.getContext('2d', { alpha: false });
  if (!pen) return null;
  pen.fillStyle = getComputedStyle(page.body).backgroundColor;
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  const scale = wall.width / frame.width;
  let x = 0;
  for (const { left, top, width, height } of boxes) {
    pen.drawImage(
      wall,
      (left - frame.left) * scale,
      (top - frame.top) * scale,
      width * scale,
      height * scale,
      x,
      0,
      width * shrink,
      height * shrink,
    );
    x += width * shrink + GAP;
  }
  return canvas.toDataURL('image/jpeg', QUALITY);
}
