import { formatNumber } from '../../readings/format';
import { LIMITS } from '../../session/limits';
import { words } from '../words';
import { TypedValue } from './TypedValue';

const said = words.compare;

/** What a body records, typed in a sentence. */
export function MegapixelsValue(props: { megapixels: number; onCommit: (to: number) => void }) {
  const shown = formatNumber(props.megapixels, 0);
  return (
    <TypedValue
      label={said.labels.megapixels}
      shown={said.megapixels(shown)}
      initial={shown}
      parse={(text) => {
        const value = Number(text.replace(/\s*(mp|megapixels)\s*$/i, '').replace(',', '.'));
        return Number.isFinite(value) && text.trim() !== ''
          ? { ok: true, value }
          : { ok: false, why: said.notANumber(text) };
      }}
      range={LIMITS.megapixels}
      offers={[12, 24, 45].map((value) => ({ value, shown: formatNumber(value, 0) }))}
      onCommit={props.onCommit}
    />
  );
}
