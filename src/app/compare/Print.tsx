import { type RefCallback, Suspense } from 'react';
import type { Silhouette } from '../../stage';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { Caption } from './Caption';
import { Framed } from './Framed';
import { LINES } from './lines';
import { Lengths, Outline, Stretch } from './onDemand';
import type { DrawnLength } from './over/lengths';
import { Wipe } from './over/Wipe';
import { pronounOf, type Shown } from './shown';
import type { Tools } from './tools';
import { useTold } from './useTold';

/** One picture as it hangs: cords, mat, the tools over it, and its caption strip. */
export function Print(props: {
  shown: Shown;
  others: readonly Shown[];
  tools: Tools;
  /** While the other picture blinks in this one's place, that one. */
  blinkedTo: Shown | null;
  /** Lengths between landmarks, when they are shown. */
  lengths: readonly DrawnLength[] | null;
  outlined: { of: Shown; silhouette: Silhouette } | null;
  hang: RefCallback<HTMLElement>;
  onTools: (tools: Tools) => void;
  onSaveAlone: () => void;
}) {
  const { session, models } = useWorkbench();
  const { shown, tools, blinkedTo } = props;
  const { camera } = shown.resolved;
  const seen = blinkedTo ?? shown;
  const aspect = camera.sensor.width / camera.sensor.height;
  const pronoun = pronounOf(shown.subjects, session, models);
  const told = useTold(shown, { units: session.units, pronoun });
  return (
    <Framed
      letter={shown.letter}
      alt={words.alt(shown.letter, told)}
      hang={props.hang}
      over={
        <div className="print-tools">
          <Suspense fallback={null}>
            {tools.stretch && <Stretch camera={seen.resolved.camera} aspect={aspect} />}
            {props.outlined && !blinkedTo && (
              <Outline of={props.outlined.of.letter} silhouette={props.outlined.silhouette} />
            )}
            {props.lengths && <Lengths lengths={props.lengths} aspect={aspect} />}
            {tools.wipe !== null && props.others.length > 0 && (
              <Wipe at={tools.wipe} onChange={(wipe) => props.onTools({ ...tools, wipe })} />
            )}
            {blinkedTo && (
              <span className={`blinked ${LINES[blinkedTo.letter].css}`}>{blinkedTo.letter}</span>
            )}
          </Suspense>
        </div>
      }
    >
      <Caption shown={shown} others={props.others} onSaveAlone={props.onSaveAlone} />
    </Framed>
  );
}
