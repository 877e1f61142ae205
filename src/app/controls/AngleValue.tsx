import { formatAngle } from '../../readings/format';
import { parseAngle } from '../../readings/parse';
import type { EntryProps } from './Entry';
import { TypedValue } from './TypedValue';

/** An angle as a sentence shows it: "40°", "12.5°". */
export const showAngle = (radians: number): string =>
  formatAngle(radians).replace(/[.,]0(?=°)/, '');

/** An angle in a sentence, typed in degrees. */
export function AngleValue(
  props: Omit<EntryProps, 'initial' | 'parse' | 'show'> & { radians: number; shown: string },
) {
  const { radians, ...rest } = props;
  return <TypedValue {...rest} initial={showAngle(radians)} parse={parseAngle} show={showAngle} />;
}
