import type { FocusMark } from '../../drawings';
import { lensFocusForMarkDistance, nearestFocusAt } from '../../optics/real-lens';
import type { Shown } from './shown';

/** Nearest focus of each picture's lens, as a distance from the eyes to the lens. */
export function focusMarks(pictures: readonly Shown[]): FocusMark[] {
  return pictures.flatMap(({ letter, resolved: { lens, lensMark, focal } }) => {
    if (!lens || lensMark === null) return [];
    const nearest = nearestFocusAt(lens, lensMark);
    const focus = nearest.ok ? lensFocusForMarkDistance(lens, focal, nearest.value) : nearest;
    return focus.ok ? [{ letter, distance: focus.value }] : [];
  });
}
