/** Base-2 radical inverse: the digits mirrored about the binary point. */
function radicalInverse(index: number): number {
  let value = 0;
  let weight = 0.5;
  for (let rest = index; rest > 0; rest = Math.floor(rest / 2)) {
    value += weight * (rest % 2);
    weight /= 2;
  }
  return value;
}

/**
 * Hammersley points over one pixel, as offsets from its centre in pixels (-1/2 .. 1/2), whose mean is
 * exactly the centre, so that an average over them shifts nothing.
 */
export function pixelOffsets(count: number): readonly (readonly [number, number])[] {
  const raw = Array.from({ length: count }, (_, i) => [(i + 0.5) / count, radicalInverse(i)]);
  const mean = raw.reduce((sum, point) => sum + (point[1] as number), 0) / count;
  return raw.map(([x, y]) => [(x as number) - 0.5, (y as number) - mean] as const);
}
