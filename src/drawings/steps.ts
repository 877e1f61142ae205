/** How a handle's distance changes by key or by hand. Metres. */
import { METRES_PER, type Units } from '../readings/quantities';

interface Steps {
  readonly fine: number;
  readonly coarse: number;
}

export const STEPS: Readonly<Record<Units, Steps>> = {
  metric: { fine: METRES_PER.cm, coarse: 10 * METRES_PER.cm },
  imperial: { fine: METRES_PER.in / 2, coarse: 3 * METRES_PER.in },
};

export interface Limits {
  readonly min: number;
  readonly max: number;
}

/** On the grid of fine steps, so that what is shown is what is meant; a limit may lie off it. */
export function snap(distance: number, units: Units, { min, max }: Limits): number {
  const { fine } = STEPS[units];
  const onGrid = Number((Math.round(distance / fine) * fine).toFixed(6));
  return Math.min(max, Math.max(min, onGrid));
}

/** The distance after a key, or null when the key is not one of the slider's. */
export function distanceAfterKey(
  { key, shiftKey }: { readonly key: string; readonly shiftKey: boolean },
  distance: number,
  units: Units,
  limits: Limits,
): number | null {
  const { fine, coarse } = STEPS[units];
  const step = shiftKey ? coarse : fine;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return snap(distance + step, units, limits);
    case 'ArrowLeft':
    case 'ArrowDown':
      return snap(distance - step, units, limits);
    case 'PageUp':
      return snap(distance + coarse, units, limits);
    case 'PageDown':
      return snap(distance - coarse, units, limits);
    case 'Home':
      return limits.min;
    case 'End':
      return limits.max;
    default:
      return null;
  }
}

/** Whether a key begins a typed distance. */
export function beginsTyping(key: string): boolean {
  return /^[0-9.,]$/.test(key) || key === 'Enter';
}
