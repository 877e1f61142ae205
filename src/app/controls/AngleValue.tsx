import { formatAngle } from '../../readings/format';
import { parseAngle } from '../../readings/parse';
import type { EntryProps } from './Entry';
import { TypedValue } from './TypedValue';

/** An angle in a sentence, typed in degrees. */
export function AngleValue(
  props: Omit<EntryProps, 'initial' | 'parse' | 'show'> & { radians: number; shown: string },
) {
  const { radians, ...rest } = props;
  return (
    <TypedValue
      {...rest}
      initial={formatAngle(radians)}
      parse={parseAngle}
      show={(angle) => formatAngle(angle)}
    />
  );
}
