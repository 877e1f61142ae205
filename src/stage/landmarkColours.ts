import { LANDMARKS, type LandmarkName } from '../sitter/types';

const STEPS = [0, 85, 170, 255] as const;

/**
 * The sRGB colour of a landmark in the test view: one of 63 that differ from each other and from black
 * by at least 85 steps in a channel.
 */
export function landmarkColour(name: LandmarkName): readonly [number, number, number] {
  const code = LANDMARKS.indexOf(name) + 1;
  const digit = (place: number) => STEPS[Math.floor(code / 4 ** place) % 4] as number;
  return [digit(0), digit(1), digit(2)];
}
