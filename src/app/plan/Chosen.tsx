import { useEffect, useMemo, useRef, useState } from 'react';
import type { PlanRequest, Setting } from '../../plan/types';
import { setPlanPicture } from '../../session/actions/plan-page';
import type { Cast } from '../../session/cast';
import { leadOf } from '../../session/cast';
import { runOf } from '../../session/kit';
import { hungRow } from '../../session/plan-request';
import type { Letter } from '../../session/types';
import { Stage, type StageHandle, type Unavailable } from '../../stage';
import { LINES } from '../compare/lines';
import { columnsOf, pronounOf, type Shown } from '../compare/shown';
import { hangPictures, NO_TOOLS } from '../compare/tools';
import { usePictureRects } from '../compare/usePictureRects';
import { usePrintedPictures } from '../compare/usePrintedPictures';
import { useTold } from '../compare/useTold';
import { ChoiceValue } from '../controls/ChoiceValue';
import { exposeForTests, lookForTests } from '../state/testHook';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { plan as said } from '../words/plan.en';
import type { Planned } from './plan.worker';
import { settingWords, showIn } from './told';

/** How far a picture may be off a setting that it still shows, metres: told distances are in centimetres. */
const SAME_PLACE = 0.005;

const isAt = (
  shown: Pick<Shown['resolved'], 'standpoint' | 'fNumber'>,
  setting: Pick<Setting, 'standpoint' | 'fNumber'>,
): boolean =>
  Math.abs(shown.standpoint - setting.standpoint) < SAME_PLACE && shown.fNumber === setting.fNumber;

/** The picture that results are hung in, with what is set for it and why. */
export function Chosen(props: {
  cast: Cast;
  pictures: readonly Shown[];
  request: PlanRequest | null;
  planned: Planned | null;
  onUnavailable: (reason: Unavailable | null) => void;
}) {
  const { session, models, store, act } = useWorkbench();
  const { cast, pictures, request, planned } = props;
  const [stage, setStage] = useState<StageHandle | null>(null);
  const wall = useRef<HTMLDivElement>(null);
  const { rects, hang } = usePictureRects(wall);
  usePrintedPictures(wall);
  const shown =
    pictures.find(({ letter }) => letter === session.plan.picture) ?? (pictures[0] as Shown);
  const hung = useMemo(() => hangPictures([shown], rects, NO_TOOLS, false), [shown, rects]);
  const room = useMemo(() => runOf(session.room), [session.room]);
  useEffect(
    () => exposeForTests({ store, models, cast, pictures, stage }),
    [store, models, cast, pictures, stage],
  );
  const told = useTold(shown, {
    units: session.units,
    pronoun: pronounOf(columnsOf([shown]), session, models),
  });
  const show = showIn(session.units);
  const row = hungRow(session);
  const verdict = planned?.verdicts.find(
    ({ wanted, camera }) => wanted === row?.wanted && camera === row.camera,
  );
  const framing = session.crop.framing;
  const name = framing === null ? undefined : models.framings.get(framing)?.name;
  const recommended = verdict?.recommended;
  // Its reasons are those of one place and aperture: moved from there, the picture has others.
  const says =
    request && recommended && isAt(shown.resolved, recommended)
      ? settingWords(recommended, verdict, request, show)
      : null;
  const isGroup = session.plan.wanted.find(({ id }) => id === row?.wanted)?.of === 'group';
  const { width, height } = shown.resolved.camera.sensor;
  return (
    <section
      className="chosen-picture"
      aria-label={said.chosen}
      style={{ '--aspect': width / height } as React.CSSProperties}
    >
      <div ref={wall} className={`chosen-wall ${LINES[shown.letter].css}`}>
        <div className="chosen-sheet">
          <div
            ref={hang(shown.letter)}
            className="chosen-print"
            role="img"
            aria-label={words.alt(shown.letter, told)}
          />
        </div>
        <div className="wall-stage">
          <Stage
            pictures={hung}
            sitter={leadOf(cast, shown.picture)}
            light={session.light}
            room={room}
            {...lookForTests()}
            onReady={(handle) => {
              setStage(handle);
              props.onUnavailable(null);
            }}
            onUnavailable={props.onUnavailable}
          />
        </div>
      </div>
      <div className="chosen-says">
        <h2>
          {said.chosenFrom(name ?? words.compare.ownFraming, show(shown.resolved.standpoint))}
        </h2>
        {says && <p className="chosen-set">{says.set}</p>}
        {says && <p>{says.why}</p>}
        {shown.resolved.limits.length > 0 && !says && <p>{said.passesLimit}</p>}
        {isGroup && <p>{said.firstForAll}</p>}
        <p>
          {said.hungIn(
            <ChoiceValue
              label={said.labels.picture}
              shown={shown.letter}
              chosen={shown.letter}
              choices={session.pictures.map(({ letter }) => ({ id: letter, name: letter }))}
              onChoose={(letter: Letter) => act(setPlanPicture, { letter })}
            />,
          )}
        </p>
      </div>
    </section>
  );
}
