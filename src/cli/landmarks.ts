import { type LandmarkName, MIDLINE_LANDMARKS, PAIRED_LANDMARKS } from '../sitter/types';

/** Every landmark, midline first. */
export const LANDMARKS: readonly LandmarkName[] = [
  ...MIDLINE_LANDMARKS,
  ...PAIRED_LANDMARKS.flatMap((name) => [`${name}_left`, `${name}_right`] as const),
];
