import '../compare/compare.css';
import './present.css';
import { useEffect, useMemo, useRef, useState } from 'react';
import { type Cast, leadOf } from '../../session/cast';
import { sessionWith } from '../../session/comparison';
import { runOf } from '../../session/kit';
import type { Picture } from '../../session/types';
import { Stage, type StageHandle, type Unavailable } from '../../stage';
import { pronounOf, showPictures } from '../compare/shown';
import { hangPictures, NO_TOOLS } from '../compare/tools';
import { usePictureRects } from '../compare/usePictureRects';
import { usePrintedPictures } from '../compare/usePrintedPictures';
import { Do } from '../controls/words';
import { exposeForTests, lookForTests } from '../state/testHook';
import type { Place } from '../state/usePlace';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { present as said } from '../words/present.en';
import { Acts } from './Acts';
import { Hung } from './Hung';
import type { Command } from './keys';
import { Measure } from './Measure';
import { offeredActs } from './offered';
import { Said } from './Said';
import { type Slide, slidesOf } from './slides';
import { begin, type Talk, talkAfter } from './talk';
import { useAwake } from './useAwake';
import { useCommands } from './useCommands';
import { useFullScreenLeft } from './useFullScreenLeft';
import { useMove } from './useMove';
import { usePixel } from './usePixel';
import { useSlideCast } from './useSlideCast';

const NOT_ASKED: Slide['letters'] = [];

/** How much captions tell: nothing before it is asked for, the distance once a question is told. */
function toldOf({ part, numbers }: Talk): 'nothing' | 'distance' | 'all' {
  if (part === 'question') return 'nothing';
  if (numbers) return 'all';
  return part === 'told' ? 'distance' : 'nothing';
}

/** The talk: chosen comparisons one after another, for a projector; nothing that edits is seen. */
export default function Present(props: { cast: Cast; leaveTo: Place }) {
  const { session: own, models, store } = useWorkbench();
  const slides = useMemo(() => slidesOf(own), [own]);
  const [talk, setTalk] = useState(() => begin(slides));
  const [isOpen, setOpen] = useState(false);
  const [isMeasuring, setMeasuring] = useState(false);
  const [stage, setStage] = useState<StageHandle | null>(null);
  const [unavailable, setUnavailable] = useState<Unavailable | null>(null);
  const [pixel, setPixel] = usePixel();
  const page = useRef<HTMLElement>(null);
  const wall = useRef<HTMLDivElement>(null);
  const { rects, hang } = usePictureRects(wall);
  usePrintedPictures(wall);

  const slide = slides[talk.at] ?? slides[0];
  const following = slides[talk.at + 1];
  const session = useMemo(() => sessionWith(own, slide.id), [own, slide.id]);
  const next = useMemo(() => (following ? sessionWith(own, following.id) : null), [own, following]);
  const sat = useSlideCast(session, next, { people: own.people, cast: props.cast }, models);
  const cast = sat.is === 'there' ? sat.cast : null;
  const move = useMove(session, talk.part !== 'question');
  const still = useMemo(
    () => (cast ? showPictures(session, models, cast, null) : []),
    [session, models, cast],
  );
  const { picture: moving } = move;
  const pictures = useMemo(
    () => (cast && moving ? showPictures(session, models, cast, moving) : still),
    [session, models, cast, moving, still],
  );
  const hung = useMemo(() => hangPictures(pictures, rects, NO_TOOLS, false), [pictures, rects]);
  useEffect(
    () => exposeForTests({ store, models, cast: cast ?? props.cast, pictures, stage }),
    [store, models, cast, props.cast, pictures, stage],
  );
  useEffect(() => page.current?.focus(), []);
  useAwake();

  const leave = () => {
    if (document.fullscreenElement) document.exitFullscreen().catch(() => undefined);
    window.location.replace(`#${props.leaveTo}`);
  };
  const give = (command: Command) => {
    if (command.do === 'leave') leave();
    else if (talk.dark) setTalk(talkAfter(talk, { do: 'dark' }, slides));
    else if (command.do === 'play') move.press();
    else if (command.do === 'measure') setMeasuring(true);
    else {
      const then = talkAfter(talk, command, slides);
      if (then.at !== talk.at || then.part !== talk.part) move.putBack();
      setTalk(then);
    }
  };
  useCommands(give, {
    asked: talk.part === 'question' ? slide.letters : NOT_ASKED,
    deaf: isMeasuring,
  });
  useFullScreenLeft(() => (isMeasuring ? setMeasuring(false) : leave()));

  const subjects = pictures.flatMap((shown) => shown.subjects);
  const speaking = { units: session.units, pronoun: pronounOf(subjects, session, models) };
  const wrong =
    sat.is === 'failed'
      ? words.notices.impossible(sat.why)
      : unavailable === null
        ? null
        : words.notices.noPictures[unavailable];
  const count = slides.length;
  const answers = talk.part === 'question' ? talk.answers.length : 0;
  const sensor = pictures[0]?.resolved.camera.sensor;
  const hanging = {
    '--count': slide.letters.length,
    ...(sensor && { '--aspect': sensor.width / sensor.height }),
  } as React.CSSProperties;
  return (
    <main
      className={`present ${session.crop.orientation}`}
      ref={page}
      tabIndex={-1}
      style={hanging}
    >
      <h1 className="unseen">{said.heading(talk.at + 1, count)}</h1>
      <Acts open={isOpen} offered={offeredActs(talk, slide, move.is)} give={give} />
      <section className="present-wall" aria-label={said.pictures} ref={wall}>
        {pictures.map((shown) => (
          <Hung
            key={shown.letter}
            shown={shown}
            told={toldOf(talk)}
            units={session.units}
            speaking={speaking}
            hang={hang(shown.letter)}
          />
        ))}
        <div className="wall-stage">
          <Stage
            pictures={hung}
            sitter={leadOf(cast ?? props.cast, session.pictures[0] as Picture)}
            light={session.light}
            room={runOf(session.room)}
            {...lookForTests()}
            onReady={(handle) => {
              setStage(handle);
              setUnavailable(null);
            }}
            onUnavailable={setUnavailable}
          />
        </div>
      </section>
      <Said
        talk={talk}
        slide={slide}
        session={session}
        pictures={still}
        move={move}
        rects={rects}
        pixel={pixel}
        speaking={speaking}
        wrong={wrong ?? (sat.is === 'waiting' ? said.waiting : null)}
      />
      <footer className="present-foot">
        {answers > 0 && <span role="status">{said.answered(answers)}</span>}
        <Do
          aria-label={said.openActs(talk.at + 1, count)}
          aria-expanded={isOpen}
          onPress={() => setOpen(!isOpen)}
        >
          {said.number(talk.at + 1, count)}
        </Do>
      </footer>
      {talk.dark && (
        <div className="present-dark" role="status">
          <span className="unseen">{said.dark}</span>
        </div>
      )}
      {isMeasuring && (
        <Measure pixel={pixel} onPixel={setPixel} onClose={() => setMeasuring(false)} />
      )}
    </main>
  );
}
