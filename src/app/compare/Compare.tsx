import './compare.css';
import { Suspense, useEffect, useMemo, useRef, useState } from 'react';
import type { Cast } from '../../session/cast';
import { leadOf } from '../../session/cast';
import { differenceSentence, differences } from '../../session/differences';
import { runOf } from '../../session/kit';
import { pictureAlong } from '../../session/play';
import type { Picture } from '../../session/types';
import { Stage, type StageHandle, type Unavailable } from '../../stage';
import { exposeForTests, lookForTests } from '../state/testHook';
import { usePlay } from '../state/usePlay';
import { useVisibility } from '../state/useVisibility';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { LookCloser } from './LookCloser';
import { fetchTheRest, LengthsTable, Questions, ReadingsTable, StillSheet } from './onDemand';
import { drawnLengths } from './over/lengths';
import { Print } from './Print';
import { RailBox } from './RailBox';
import { SetUp } from './SetUp';
import { columnsOf, pronounOf, type Shown, showPictures, withVisibility } from './shown';
import { hangPictures, NO_TOOLS, otherOf, type Tools } from './tools';
import { useBlink } from './useBlink';
import { useCaptionRoom } from './useCaptionRoom';
import { useOutlines } from './useOutlines';
import { usePictureRects } from './usePictureRects';
import { usePrintedPictures } from './usePrintedPictures';

/** What is being saved: nothing, all pictures side by side, or one. */
export type Saving = 'none' | 'all' | Shown['letter'];

/** Pictures from several standpoints, the rail below them and the readings beside. */
export function Compare(props: {
  cast: Cast;
  saving: Saving;
  onSaving: (saving: Saving) => void;
  onUnavailable: (reason: Unavailable | null) => void;
}) {
  const { session, models, store } = useWorkbench();
  const { cast } = props;
  const [stage, setStage] = useState<StageHandle | null>(null);
  const [tools, setTools] = useState<Tools>(NO_TOOLS);
  const wall = useRef<HTMLDivElement>(null);
  const { rects, hang } = usePictureRects(wall);
  usePrintedPictures(wall);
  const below = useCaptionRoom(wall, session.pictures.length);
  const play = usePlay(session.play.seconds);
  const blinked = useBlink(tools.blink);

  const moving = play.at === null ? null : pictureAlong(session, play.at, 'metres');
  const bare = useMemo(
    () => showPictures(session, models, cast, moving),
    [session, models, cast, moving],
  );
  const visibilities = useVisibility(bare, cast);
  const pictures = useMemo(
    () => withVisibility(session, bare, visibilities),
    [session, bare, visibilities],
  );
  const silhouettes = useOutlines(tools.outline, pictures, stage);
  const hung = useMemo(
    () => hangPictures(pictures, rects, tools, blinked),
    [pictures, rects, tools, blinked],
  );
  useEffect(
    () => exposeForTests({ store, models, cast, pictures, stage }),
    [store, models, cast, pictures, stage],
  );

  const lengths = tools.landmarks
    ? pictures.map(({ resolved, subjects }) =>
        drawnLengths(resolved.camera, subjects[0].sitter.landmarks),
      )
    : null;
  const [first, second] = pictures;
  const differing =
    first && second ? differenceSentence(differences(first.resolved, second.resolved)) : null;
  const columns = columnsOf(pictures);
  const speaking = { units: session.units, pronoun: pronounOf(columns, session, models) };
  const said = words.compare;
  const { width, height } = (pictures[0] as Shown).resolved.camera.sensor;
  const hanging = {
    '--count': pictures.length,
    '--aspect': width / height,
    '--below': `${below}rem`,
  } as React.CSSProperties;
  return (
    <main className="compare" style={hanging}>
      <h1 className="unseen">{said.heading}</h1>
      <section className="wall" aria-label={said.pictures}>
        <div ref={wall} className={`wall-hung ${session.crop.orientation}`}>
          {pictures.map((shown, i) => {
            const other = otherOf(pictures, i);
            const silhouette = other && silhouettes[other.letter];
            return (
              <Print
                key={shown.letter}
                shown={shown}
                others={pictures.filter((each) => each !== shown)}
                tools={tools}
                lengths={
                  lengths && ((blinked ? lengths[(i + 1) % lengths.length] : lengths[i]) ?? null)
                }
                blinkedTo={blinked ? other : null}
                outlined={other && silhouette ? { of: other, silhouette } : null}
                hang={hang(shown.letter)}
                onTools={setTools}
                onSaveAlone={() => props.onSaving(shown.letter)}
              />
            );
          })}
          <div className="wall-stage">
            <Stage
              pictures={hung}
              sitter={leadOf(cast, session.pictures[0] as Picture)}
              light={session.light}
              room={runOf(session.room)}
              {...(tools.clay ? { look: 'clay' } : {})}
              {...lookForTests()}
              onReady={(handle) => {
                setStage(handle);
                fetchTheRest();
                props.onUnavailable(null);
              }}
              onUnavailable={props.onUnavailable}
            />
          </div>
        </div>
      </section>
      <LookCloser tools={tools} onChange={setTools} several={pictures.length > 1} />
      <RailBox
        pictures={pictures}
        sitter={leadOf(cast, session.pictures[0] as Picture)}
        play={play}
      />
      <section className="side" aria-label={said.side}>
        <SetUp pronoun={speaking.pronoun} />
        {differing && <p className="differs">{said.twoDiffer(differing)}</p>}
        <Suspense fallback={null}>
          {lengths && <LengthsTable pictures={pictures} lengths={lengths} />}
        </Suspense>
        <Suspense fallback={<div className="sheet-paper readings-paper waiting-paper" />}>
          <ReadingsTable columns={columns} speaking={speaking} />
          <Questions pictures={pictures} columns={columns} />
        </Suspense>
      </section>
      <Suspense fallback={null}>
        {props.saving !== 'none' && (
          <StillSheet
            onClose={() => props.onSaving('none')}
            session={session}
            what={props.saving}
            sit={stage && ((_, work) => work({ cast, stage }))}
          />
        )}
      </Suspense>
    </main>
  );
}
