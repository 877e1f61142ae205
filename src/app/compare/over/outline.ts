import { contours } from 'd3-contour';
import type { Silhouette } from '../../../stage';

/** The mask's outline as an SVG path, in shares of the picture's height. */
export function outlinePath({ width, height, mask }: Silhouette): string {
  // A margin of empty cells is not added: where the sitter leaves the frame the line leaves it too.
  const { coordinates } = contours()
    .size([width, height])
    .smooth(true)
    .contour(Array.from(mask), 127.5);
  const onEdge = ([x, y]: [number, number]) =>
    x <= 0.5 || y <= 0.5 || x >= width - 0.5 || y >= height - 0.5;
  let path = '';
  for (const ring of coordinates.flat() as [number, number][][]) {
    let drawing = false;
    for (const point of ring) {
      if (onEdge(point)) {
        drawing = false;
        continue;
      }
      path += `${drawing ? 'L' : 'M'}${(point[0] / height).toFixed(4)} ${(point[1] / height).toFixed(4)}`;
      drawing = true;
    }
  }
  return path;
}
