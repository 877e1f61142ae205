import { ProgressBar } from 'react-aria-components';
import { Do } from '../controls/words';
import { words } from '../words';
import { takeAway as said } from '../words/takeaway.en';
import { progressWords } from './time';
import type { Work } from './useWork';

/** How far the work is, with a way to stop it; afterwards what came of it. */
export function WorkBar<Result>(props: {
  work: Work<Result>;
  done: (result: Result) => string;
  failed: (why: string) => string;
}) {
  const { state, stop } = props.work;
  return (
    <>
      {state.is === 'working' && (
        <div className="row">
          <ProgressBar
            value={100 * state.share}
            aria-label={progressWords(state.share, state.seconds)}
            className="still-progress"
          >
            <p>{progressWords(state.share, state.seconds)}</p>
            <div className="bar">
              <i style={{ width: `${100 * state.share}%` }} />
            </div>
          </ProgressBar>
          <Do onPress={stop}>{words.controls.cancel}</Do>
        </div>
      )}
      <p role="status">
        {state.is === 'done' && props.done(state.result)}
        {state.is === 'stopped' && said.stopped}
        {state.is === 'failed' && props.failed(state.why)}
      </p>
    </>
  );
}
