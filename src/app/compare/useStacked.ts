import { useMedia } from '../state/useMedia';

/** More columns than this do not fit beside their names. */
const BESIDE = 2;

/** Do the numbers of a table of so many columns stand below their names? */
export function useStacked(columns: number): boolean {
  const narrow = useMedia('(max-width: 699px)');
  return narrow || columns > BESIDE;
}
