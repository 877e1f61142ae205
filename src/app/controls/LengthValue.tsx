import { formatLength, type LengthPurpose, type Units } from '../../readings/format';
import { type LengthUnit, parseLength } from '../../readings/parse';
import { useWorkbench } from '../state/workbench';
import type { EntryProps } from './Entry';
import { TypedValue } from './TypedValue';

/** Below these a depth is shown, and typed, in the smaller unit; metres. */
const SMALL = { metric: 1, imperial: 0.3048 } as const;

function unitOf(metres: number, units: Units, purpose: LengthPurpose): LengthUnit {
  if (purpose === 'sensor') return 'mm';
  const small = purpose === 'depth' && metres < SMALL[units];
  if (units === 'metric') return small ? 'mm' : 'm';
  return small || purpose === 'frame' ? 'in' : 'ft';
}

/** A length in a sentence, typed and shown in the session's units. */
export function LengthValue(
  props: Omit<EntryProps, 'initial' | 'parse' | 'offers' | 'show'> & {
    metres: number;
    purpose?: LengthPurpose;
    /** The words of the sentence, where they are not the length alone. */
    shown?: string;
    held?: boolean;
    disabled?: boolean;
    /** Usual lengths, metres. */
    offers?: readonly number[];
  },
) {
  const { units } = useWorkbench().session;
  const { metres, purpose = 'distance', shown, offers, ...rest } = props;
  const show = (length: number) => formatLength(length, units, purpose);
  // A number without a unit is taken in the unit that the sentence shows.
  const unit = unitOf(metres, units, purpose);
  return (
    <TypedValue
      {...rest}
      shown={shown ?? show(metres)}
      initial={show(metres)}
      parse={(text) => parseLength(text, { unit })}
      show={show}
      offers={offers?.map((value) => ({ value, shown: show(value) }))}
    />
  );
}
