import { Suspense, useMemo, useState } from 'react';
import { frameAtEyePlane, Rail, type RailPicture, type ScaleKind } from '../../drawings';
import { addPicture, moveStandpoint, setKept, setPlay } from '../../session/actions';
import { runOf } from '../../session/kit';
import { LIMITS } from '../../session/limits';
import { type Kept, LETTERS, type Letter } from '../../session/types';
import type { Sitter } from '../../sitter/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { Do, Toggle } from '../controls/words';
import { useDragging } from '../state/useDragging';
import type { Play } from '../state/usePlay';
import { useProfile } from '../state/useProfile';
import { useSheet } from '../state/useSheet';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { focusMarks } from './focusMarks';
import { TypeStandpoint } from './onDemand';
import { PlayMove } from './PlayMove';
import type { Shown } from './shown';

const KEPTS: readonly Kept[] = ['crop', 'lens', 'standpoint'];

/** Height of the room's drawing: a share of the window's, and at least so many root font sizes. */
const BAND_SHARE = 0.12;
const LEAST_BAND = 6.5;

/** The rail under the pictures with its switches. */
export function RailBox(props: { pictures: readonly Shown[]; sitter: Sitter; play: Play }) {
  const { session, act } = useWorkbench();
  const { units, kept } = session;
  const room = useMemo(() => runOf(session.room), [session.room]);
  const [scale, setScale] = useState<ScaleKind>('even');
  const [typing, setTyping] = useState<{ letter: Letter; first: string } | null>(null);
  const dragging = useDragging();
  const { ref, width, rem, windowHeight } = useSheet();
  const maxBand = Math.max(LEAST_BAND * rem, BAND_SHARE * windowHeight);
  const said = words.rail;
  const figure = useProfile(props.sitter);

  const pictures = props.pictures.map(({ letter, picture, resolved }): RailPicture => {
    const passed = resolved.limits.find(({ reason }) => reason in said.reasons);
    const fixed = kept === 'standpoint';
    return {
      letter,
      standpoint: resolved.standpoint,
      cameraHeight: picture.cameraHeight,
      frame: frameAtEyePlane(resolved.camera),
      min: fixed ? resolved.standpoint : LIMITS.standpoint.least,
      max: fixed ? resolved.standpoint : Math.max(room.cameraWall, resolved.standpoint),
      reason: passed && said.reasons[passed.reason as keyof typeof said.reasons],
    };
  });

  return (
    <section className="rail-box" aria-label={said.title}>
      <div className="rail-head">
        <h2>{said.title}</h2>
        <span>
          <Toggle on={scale === 'even'} onChange={() => setScale('even')}>
            {said.even}
          </Toggle>
          <Toggle on={scale === 'stretched'} onChange={() => setScale('stretched')}>
            {said.stretched}
          </Toggle>
        </span>
        <span className="grow" />
        {props.pictures.length > 1 && (
          <PlayMove
            play={props.play}
            move={session.play}
            letters={props.pictures.map(({ letter }) => letter)}
            onChange={(play) => act(setPlay, play)}
          />
        )}
        <span className="grow" />
        <span>
          {said.keeps(
            <ChoiceValue
              label={said.keptLabel}
              shown={words.compare.kepts[kept][0]}
              chosen={kept}
              choices={KEPTS.map((id) => ({
                id,
                name: words.compare.kepts[id][0],
                note: words.compare.kepts[id][1],
              }))}
              onChoose={(to) => act(setKept, { to })}
            />,
          )}
        </span>
        <Do
          isDisabled={session.pictures.length >= LETTERS.length}
          onPress={() => act(addPicture, {})}
        >
          {said.hang}
        </Do>
      </div>
      <div ref={ref} className="rail-drawing">
        {width > 0 && (
          <Rail
            units={units}
            scale={scale}
            figure={figure}
            room={room}
            pictures={pictures}
            focus={focusMarks(props.pictures)}
            width={width}
            rem={rem}
            maxBand={maxBand}
            onMoveStart={() => {
              props.play.scrub(null);
              dragging.start();
            }}
            onMove={(letter, to) => dragging.act(moveStandpoint, { letter, to })}
            onMoveEnd={dragging.end}
            onType={(letter, first) => setTyping({ letter, first })}
          />
        )}
      </div>
      <Suspense fallback={null}>
        {typing && (
          <TypeStandpoint
            letter={typing.letter}
            first={typing.first}
            onClose={() => setTyping(null)}
          />
        )}
      </Suspense>
    </section>
  );
}
