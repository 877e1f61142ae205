import { Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { LengthValue } from '../controls/LengthValue';
import { Sheet } from '../controls/Sheet';
import { present } from '../words/present.en';
import { CARD, DRAWN, drawnWidth, NOMINAL_PIXEL, pixelOfCard, pixelOfWidth } from './calibration';

const said = present.measure;

/** A card drawn as large as the one held to the screen tells how large a pixel is. */
export function Measure(props: {
  pixel: number | null;
  onPixel: (pixel: number) => void;
  onClose: () => void;
}) {
  const pixel = props.pixel ?? NOMINAL_PIXEL;
  const drawn = drawnWidth(pixel);
  const { innerWidth } = window;
  const card = {
    '--card': `${CARD.width / pixel}px`,
    '--card-shape': CARD.width / CARD.height,
    '--card-corner': `${CARD.corner / pixel}px`,
  } as React.CSSProperties;
  return (
    <Sheet title={said.title} open onClose={props.onClose}>
      <p>{said.how}</p>
      <div className="measure-card" style={card} />
      <Slider
        className="measure-slider"
        aria-label={said.card}
        minValue={DRAWN.least}
        maxValue={DRAWN.most}
        step={DRAWN.step}
        value={drawn}
        onChange={(width) => props.onPixel(pixelOfCard(width))}
      >
        <SliderTrack className="play-track">
          <SliderThumb className="play-thumb" autoFocus />
        </SliderTrack>
      </Slider>
      <p>
        {said.width({
          width: (
            <LengthValue
              label={said.wide}
              metres={pixel * innerWidth}
              range={{
                least: innerWidth * pixelOfCard(DRAWN.most),
                most: innerWidth * pixelOfCard(DRAWN.least),
              }}
              onCommit={(width) => props.onPixel(pixelOfWidth(width, innerWidth))}
            />
          ),
        })}
      </p>
      <p className="slip-note">{said.note}</p>
    </Sheet>
  );
}
