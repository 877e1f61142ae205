import { useMemo, useState } from 'react';
import { clipFrames, RATE } from '../../handout/clip/plan';
import { formatNumber } from '../../readings/format';
import { sessionWith } from '../../session/comparison';
import { Sheet } from '../controls/Sheet';
import { Do } from '../controls/words';
import { ComparisonValue } from '../kept/ComparisonValue';
import { offerFile } from '../state/offerFile';
import { askSavePlace } from '../state/savePlace';
import { useWorkbench } from '../state/workbench';
import { clip as said } from '../words/clip.en';
import { move } from '../words/move.en';
import { ClipSentence, SIZES } from './clip/ClipSentence';
import { type ClipChoice, makeClip } from './clip/makeClip';
import { Preview } from './clip/Preview';
import { useEncoding } from './clip/useEncoding';
import { fileName } from './fileName';
import { canMove, endsOf } from './move/along';
import type { TakeAwayProps } from './TakeAway';
import { useWork } from './useWork';
import { WorkBar } from './WorkBar';

interface Saved {
  readonly name: string;
  readonly bytes: number;
}

/** Makes a clip of the move with the crop held. */
export default function Clip({ darkroom, onClose, onStills }: TakeAwayProps) {
  const { session: own, models } = useWorkbench();
  const [comparison, setComparison] = useState<string | null>(null);
  const session = useMemo(() => sessionWith(own, comparison), [own, comparison]);
  const [choice, setChoice] = useState<ClipChoice>(() => ({
    view: 'two',
    size: SIZES[1] as ClipChoice['size'],
    captioned: true,
    pace: 'look',
    timing: { seconds: own.play.seconds, rest: 0.5, way: 'back' },
  }));
  const encoding = useEncoding(choice.size);
  const work = useWork<Saved>();
  const frames = useMemo(() => clipFrames(choice.timing), [choice.timing]);

  const make = async () => {
    if (encoding === null || encoding === 'asking') return;
    const usual = fileName(move.file(...endsOf(session)), encoding.container);
    const place = await askSavePlace(usual, said.file, `video/${encoding.container}`);
    if (place === 'cancelled') return;
    work.start(async (signal, onProgress) => {
      const request = { choice, session, models, darkroom, encoding, signal, onProgress };
      if (place === null) {
        const blob = await makeClip(request);
        if (!blob) throw new Error('no file was made');
        offerFile(blob, usual);
        return { name: usual, bytes: blob.size };
      }
      try {
        await makeClip({ ...request, into: place.stream });
      } catch (error) {
        await place.leave();
        throw error;
      }
      return { name: place.name, bytes: await place.size() };
    });
  };

  return (
    <Sheet title={said.title} open onClose={onClose}>
      <ClipSentence
        about={
          <ComparisonValue
            label={move.about}
            onTheWall={move.onTheWall}
            chosen={comparison}
            onChoose={setComparison}
          />
        }
        choice={choice}
        onChange={(changes) => setChoice((old) => ({ ...old, ...changes }))}
      />
      {!canMove(session) && <p role="status">{move.oneEnd}</p>}
      {canMove(session) && encoding === null && (
        <>
          <p role="status">{typeof VideoEncoder === 'undefined' ? said.noCodecs : said.cannot}</p>
          <div className="row">
            <Do main onPress={() => onStills(comparison)}>
              {said.stills}
            </Do>
          </div>
        </>
      )}
      {canMove(session) && encoding !== null && (
        <>
          <Preview darkroom={darkroom} session={session} look={choice} pace={choice.pace} />
          <p className="slip-note">
            {encoding === 'asking'
              ? said.asking
              : said.amount(
                  frames.length,
                  RATE,
                  formatNumber(frames.length / RATE, 1),
                  encoding.name,
                )}
          </p>
          <div className="row">
            <Do
              main
              isPending={work.state.is === 'working'}
              isDisabled={encoding === 'asking'}
              onPress={() => void make()}
            >
              {said.make}
            </Do>
          </div>
          <WorkBar
            work={work}
            done={({ name, bytes }) => said.saved(name, formatNumber(bytes / 1e6, 1))}
            failed={said.failed}
          />
        </>
      )}
    </Sheet>
  );
}
