/** One camera: degrees about the sitter, distance and half of the picture's height in mm. */
interface View {
  readonly yaw: number;
  readonly pitch: number;
  readonly distance: number;
  readonly half: number;
  readonly at: readonly [number, number, number];
}
interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly views: readonly View[];
}

const view = (
  yaw: number,
  pitch: number,
  distance: number,
  half: number,
  at: readonly [number, number, number] = [0, -10, -70],
): View => ({ yaw, pitch, distance, half, at });

export const SHEETS: Readonly<Record<string, Sheet>> = {
  turn: {
    width: 1500,
    height: 1240,
    columns: 3,
    views: [
      view(0, 0, 3000, 165),
      view(38, 0, 3000, 165),
      view(90, 0, 3000, 165, [0, -10, -85]),
      view(0, 0, 600, 160, [0, -25, -40]),
      view(-35, 8, 600, 160, [0, -25, -40]),
      view(150, 8, 3000, 190, [0, -30, -70]),
    ],
  },
  face: {
    width: 1500,
    height: 660,
    columns: 3,
    views: [
      view(0, 0, 2400, 145, [0, -30, -40]),
      view(38, 0, 2400, 145, [0, -30, -60]),
      view(90, 0, 2400, 145, [0, -30, -65]),
    ],
  },
  front: { width: 900, height: 900, columns: 1, views: [view(0, 0, 1500, 140, [0, -5, 0])] },
  near: {
    width: 1500,
    height: 1000,
    columns: 3,
    views: [
      view(0, 0, 300, 34, [31, 4, -5]),
      view(30, 0, 300, 34, [31, 4, -8]),
      view(0, 0, 300, 42, [0, -62, 8]),
      view(0, -28, 300, 42, [0, -40, 8]),
      view(40, 0, 300, 45, [10, -45, 8]),
      view(78, 4, 300, 48, [80, -12, -92]),
    ],
  },
  eyes: {
    width: 1500,
    height: 560,
    columns: 3,
    views: [
      view(0, 0, 900, 36, [34, 4, -8]),
      view(35, 0, 900, 36, [36, 4, -12]),
      view(0, 0, 900, 36, [12, -38, 8]),
    ],
  },
  ear: {
    width: 1500,
    height: 640,
    columns: 3,
    views: [
      view(0, 0, 900, 42, [78, -12, -92]),
      view(40, 0, 900, 42, [78, -12, -92]),
      view(85, 4, 900, 42, [80, -12, -92]),
    ],
  },
  bust: {
    width: 1400,
    height: 800,
    columns: 2,
    views: [view(0, 0, 3000, 270, [0, -100, -80]), view(55, 10, 3000, 270, [0, -100, -80])],
  },
};
