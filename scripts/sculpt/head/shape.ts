/**
 * The frame of every sculpture: millimetres, origin midway between the pupils (a pupil is the
 * foremost point of its eyeball), +X to the sitter's left, +Y up, +Z out of the face. The forms
 * are drawn at the size of an average man ("drawn" coordinates) and scaled to the person; eyes
 * keep their own size, because eyeballs hardly differ between adults.
 */
export interface HeadShape {
  readonly id: 'female' | 'male';
  /** Person over drawn size, along x, y and z. */
  readonly scale: readonly [number, number, number];
  /** 0 = average man's forms, 1 = average woman's. */
  readonly femininity: number;
  /** Distance between the pupils, mm. */
  readonly interpupillary: number;
}

/** Sizes: medians of the 2012 US Army survey (head) and of models/sitters (pupils). */
export const SHAPES: { readonly female: HeadShape; readonly male: HeadShape } = {
  female: { id: 'female', scale: [0.954, 0.932, 0.948], femininity: 1, interpupillary: 63 },
  male: { id: 'male', scale: [1, 1, 1], femininity: 0, interpupillary: 65 },
};

/** Radius of the eyeball behind the cornea, mm (schematic eye: about 12). */
export const GLOBE_RADIUS = 12;
/** How far the cornea stands before the globe, mm. */
export const CORNEA_RISE = 0.9;
/** Half of the visible iris' breadth: 11.71 mm white to white (Ruefer et al. 2005). */
export const IRIS_RADIUS = 5.85;
/** Depth of the globe's centre behind the pupil. */
export const GLOBE_DEPTH = GLOBE_RADIUS + CORNEA_RISE;
