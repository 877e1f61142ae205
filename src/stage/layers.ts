/** Renderer layers: which things a drawing pass or a lamp's shadow map takes in. */
export const LAYER = {
  room: 1,
  sitter: 2,
  landmarks: 3,
  /** Nothing is on it: a pass that only brings the shadow maps up to date. */
  none: 4,
  /** Panes of glass: seen in photographs alone. */
  glass: 5,
  /** Hair, brows and lashes, whose sheets a lit look must cut into single hairs. */
  hair: 6,
} as const;
