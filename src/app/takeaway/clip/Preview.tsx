import { useEffect, useRef, useState } from 'react';
import { Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { formatLength } from '../../../readings/format';
import { type Pace, standpointAlong } from '../../../session/play';
import type { Session } from '../../../session/types';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { useWorkbench } from '../../state/workbench';
import { clip as said } from '../../words/clip.en';
import { type FrameLook, framePainter } from './frame';

/** The preview's longer side, pixels. */
const SIDE = 480;
/** Views a pixel of it. */
const SAMPLES = 2;
/** Pause after a change before it is rendered, milliseconds. */
const REST = 250;

/** A frame of the clip, small, at any place of the move. */
export function Preview(props: {
  darkroom: Darkroom;
  session: Session;
  look: FrameLook;
  pace: Pace;
}) {
  const { models } = useWorkbench();
  const { darkroom, session, look, pace } = props;
  const [at, setAt] = useState(1);
  const [drawn, setDrawn] = useState<boolean | string>(false);
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = SIDE / Math.max(look.size.width, look.size.height);
  const width = Math.round(look.size.width * scale);
  const height = Math.round(look.size.height * scale);
  const { view, captioned } = look;
  useEffect(() => {
    const stop = new AbortController();
    const { signal } = stop;
    setDrawn(false);
    const render = async () => {
      const frame = new OffscreenCanvas(width, height);
      const pen = frame.getContext('2d', { alpha: false });
      if (!pen) throw new Error('the browser gives no canvas');
      await darkroom.use(
        session,
        async ({ cast, stage }) => {
          const move = { session, models, cast, pace };
          const small = { size: { width, height }, view, captioned };
          const paint = await framePainter(move, small, stage, { samples: SAMPLES, signal });
          await paint(at, pen);
        },
        signal,
      );
      canvas.current?.getContext('2d')?.drawImage(frame, 0, 0);
    };
    const timer = setTimeout(
      () =>
        render().then(
          () => setDrawn(true),
          (error) => !signal.aborted && setDrawn(String((error as Error).message)),
        ),
      REST,
    );
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [darkroom, session, models, view, captioned, width, height, pace, at]);
  const end = (letter: string) =>
    session.pictures.find((each) => each.letter === letter)?.standpoint ?? 1;
  const standpoint = standpointAlong(end(session.play.from), end(session.play.to), at, pace);
  const place = formatLength(standpoint, session.units, 'distance');
  return (
    <div className="clip-preview">
      <canvas
        ref={canvas}
        width={width}
        height={height}
        role="img"
        aria-label={drawn === true ? said.preview(place) : said.previewing}
        data-drawn={drawn === true}
      />
      {typeof drawn === 'string' && <p role="status">{said.noPreview(drawn)}</p>}
      <Slider
        aria-label={said.look}
        minValue={0}
        maxValue={1}
        step={0.05}
        value={at}
        onChange={setAt}
        formatOptions={{ style: 'percent' }}
      >
        <SliderTrack className="play-track">
          <SliderThumb className="play-thumb" />
        </SliderTrack>
      </Slider>
    </div>
  );
}
