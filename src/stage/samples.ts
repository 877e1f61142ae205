/** One of the views whose average is a picture. */
export interface Sample {
  /** From the pixel's centre, to the right and up, pixels: -1/2 .. 1/2. */
  readonly pixel: readonly [right: number, up: number];
  /** In the entrance pupil, shares of its radius. */
  readonly lens: readonly [right: number, up: number];
  /** Turn of the shadows' sampling discs, radians. */
  readonly turn: number;
}

const GOLDEN = 0.6180339887498949;
/** Of some irrationals tried, the one with which the sequences hang together least at 16 to 256 views. */
const SHUFFLE = Math.sqrt(7);

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

type Point = readonly [number, number];

/** Points moved so that their mean is exactly 0: an average over them shifts nothing. */
function centred(points: readonly Point[]): Point[] {
  const mean = (axis: 0 | 1) => points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  return points.map((point) => [point[0] - x, point[1] - y]);
}

/** Hammersley points over one pixel, as offsets from its centre. */
export const pixelOffsets = (count: number): readonly Point[] =>
  centred(Array.from({ length: count }, (_, i): Point => [(i + 0.5) / count, radicalInverse(i)]));

/**
 * Points spread evenly by area over the unit disc: the sunflower's spiral (Vogel, "A better way to
 * construct the sunflower head", 1979).
 */
export const discPoints = (count: number): readonly Point[] =>
  centred(
    Array.from({ length: count }, (_, i): Point => {
      const [radius, angle] = [Math.sqrt((i + 0.5) / count), 2 * Math.PI * GOLDEN * i];
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    }),
  );

/** 0 .. count - 1, each once, in an order that hangs together with none of the other sequences. */
function shuffled(count: number): readonly number[] {
  const place = (i: number) => (i * SHUFFLE) % 1;
  return Array.from({ length: count }, (_, i) => i).sort((a, b) => place(a) - place(b));
}

/** Views spread over the pixel and over the pupil at once. The same for the same count, always. */
export function samplesOf(count: number): readonly Sample[] {
  const [pixels, lens, order] = [pixelOffsets(count), discPoints(count), shuffled(count)];
  return pixels.map((pixel, i) => ({
    pixel,
    lens: lens[order[i] as number] as Point,
    turn: (i * 2 * Math.PI * GOLDEN) % (2 * Math.PI),
  }));
}
