import { Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { words } from '../../words';

/** The line of the wipe over a picture: right of it hangs the other picture. Dragged or by arrow keys. */
export function Wipe({ at, onChange }: { at: number; onChange: (at: number) => void }) {
  return (
    <Slider
      className="print-over wipe"
      aria-label={words.looks.wipeAt}
      minValue={0}
      maxValue={100}
      step={1}
      value={Math.round(100 * at)}
      onChange={(value) => onChange(value / 100)}
    >
      <SliderTrack className="wipe-track">
        <SliderThumb className="wipe-thumb" />
      </SliderTrack>
    </Slider>
  );
}
