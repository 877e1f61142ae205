import { formatFNumber, formatLength } from '../../readings/format';
import { parseFNumber } from '../../readings/parse';
import { cutFromLens, setFNumber, setFocal, setFrameHeight } from '../../session/actions';
import { limitSentence } from '../../session/limit-words';
import { LIMITS } from '../../session/limits';
import { personOf } from '../../session/person';
import { LengthValue } from '../controls/LengthValue';
import { Slip } from '../controls/Slip';
import { TypedValue } from '../controls/TypedValue';
import { isChildSitter } from '../people/child';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { captionWords } from './captions';
import { PictureMore } from './onDemand';
import { CLOSE, StandpointValue } from './StandpointValue';
import type { Shown } from './shown';

const STOPS = [1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22];

/** The strip under a picture: letter, standpoint, lens, frame and aperture, each changed where it stands. */
export function Caption(props: {
  shown: Shown;
  others: readonly Shown[];
  onSaveAlone: () => void;
}) {
  const { session, models, act } = useWorkbench();
  const { shown } = props;
  const { letter, picture, resolved } = shown;
  const said = words.compare;
  const text = captionWords(shown, session.units);
  const [limit] = resolved.limits;
  const { noseToLens } = shown.measures.face;
  const hasChild = isChildSitter(models.sitters.get(personOf(session, picture.of[0]).model));
  const remarks = [
    ...(resolved.standpoint < CLOSE
      ? [
          (hasChild ? said.closeToChild : said.closeTo)(
            formatLength(noseToLens, session.units, 'distance'),
          ),
        ]
      : []),
    ...(text.angle ? [text.angle] : []),
    ...(limit ? [limitSentence(limit, session.units)] : []),
    ...(resolved.cut ? [words.picture.cutCost(resolved.cut)] : []),
  ];
  return (
    <figcaption className="caption">
      <span className="letter" aria-hidden="true">
        {letter}
      </span>
      <span>
        <span className="where">
          <StandpointValue shown={shown} /> <span className="from">{said.fromEyes}</span>
        </span>
        <span className="how">
          {text.who !== null && `${text.who}, `}
          <span className="nb">
            <LengthValue
              label={said.focalOf(letter)}
              metres={picture.view.by === 'crop' ? resolved.focal : picture.view.focal}
              shown={text.focal}
              purpose="sensor"
              held={picture.view.by !== 'crop'}
              range={LIMITS.focal}
              note={said.focalNote}
              onCommit={(to) =>
                picture.view.by === 'cut'
                  ? act(cutFromLens, { letter, focal: to })
                  : act(setFocal, { letter, to })
              }
            />{' '}
            {said.lensWord},
          </span>{' '}
          <span className="nb">
            <LengthValue
              label={said.frameOf(letter)}
              metres={resolved.frameHeight}
              purpose="frame"
              held={resolved.followsCrop}
              range={LIMITS.frameHeight}
              note={said.kepts[session.kept][1]}
              onCommit={(to) => act(setFrameHeight, { letter, to })}
            />{' '}
            {said.frameWord},
          </span>{' '}
          <TypedValue
            label={said.apertureOf(letter)}
            shown={text.aperture}
            initial={text.aperture}
            parse={parseFNumber}
            range={LIMITS.fNumber}
            show={(value) => formatFNumber(value)}
            offers={STOPS.map((value) => ({ value, shown: formatFNumber(value) }))}
            onCommit={(to) => act(setFNumber, { letter, to })}
          />{' '}
          <Slip label={said.moreOf(letter)} shown={said.more}>
            {(close) => (
              <PictureMore
                shown={shown}
                others={props.others}
                onSaveAlone={props.onSaveAlone}
                close={close}
              />
            )}
          </Slip>
        </span>
      </span>
      {remarks.length > 0 && (
        <span className="limit" role="status">
          {remarks.join(' ')}
        </span>
      )}
    </figcaption>
  );
}
