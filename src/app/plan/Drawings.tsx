import { useMemo, useRef, useState } from 'react';
import {
  FromAbove,
  FromSide,
  type Moved,
  type MovePhase,
  type PlanThing,
} from '../../drawings/plan';
import type { PlanRequest } from '../../plan/types';
import { formatLength } from '../../readings/format';
import { parseLength } from '../../readings/parse';
import type { Cast } from '../../session/cast';
import { leadOf } from '../../session/cast';
import type { Drag } from '../../session/store';
import type { Picture } from '../../session/types';
import type { Shown } from '../compare/shown';
import Entry from '../controls/Entry';
import { Sheet } from '../controls/Sheet';
import { useProfile } from '../state/useProfile';
import { useSheet } from '../state/useSheet';
import { useWorkbench } from '../state/workbench';
import { light } from '../words/light.en';
import { plan as said } from '../words/plan.en';
import { drawingContent } from './drawingContent';
import { move } from './moves';
import { placeOfThing, typedRange } from './typing';

interface Typing {
  readonly what: PlanThing;
  readonly which: 0 | 1;
  readonly first: string;
}

/** The room from above and from the side; what is drawn is moved there, and typed. */
export function Drawings(props: {
  cast: Cast;
  pictures: readonly Shown[];
  request: PlanRequest;
  /** On paper, at 1 : n. */
  printScale?: number;
}) {
  const { session, models, store, act } = useWorkbench();
  const { pictures, request, printScale } = props;
  const profile = useProfile(leadOf(props.cast, session.pictures[0] as Picture));
  const above = useSheet();
  const side = useSheet();
  const drag = useRef<Drag | null>(null);
  const [typing, setTyping] = useState<Typing | null>(null);
  const content = useMemo(
    () =>
      drawingContent(session, pictures, request, models, profile, (lamp) => light.lamps[lamp].name),
    [session, pictures, request, models, profile],
  );
  const onMove = (what: PlanThing, to: Moved, phase: MovePhase) => {
    if (phase === 'start') drag.current ??= store.drag();
    const acting = drag.current ? drag.current.act : act;
    if (phase === 'move') move(acting, session, what, to, content.eyeHeight);
    if (phase === 'end') {
      drag.current?.end();
      drag.current = null;
    }
  };
  const actions = {
    onMove,
    onType: (what: PlanThing, which: 0 | 1, first: string) => setTyping({ what, which, first }),
  };
  const scale = printScale === undefined ? {} : { printScale };
  const show = (metres: number) => formatLength(metres, session.units, 'distance');
  const typed = typing && placeOfThing(content, typing.what);
  return (
    <>
      <section className="sheet-paper drawing" aria-label={said.fromAbove}>
        <h2>{said.fromAbove}</h2>
        <div ref={above.ref}>
          {above.width > 0 && (
            <FromAbove
              content={content}
              width={above.width}
              rem={above.rem}
              {...scale}
              {...actions}
            />
          )}
        </div>
      </section>
      <section className="sheet-paper drawing" aria-label={said.fromSide}>
        <h2>{said.fromSide}</h2>
        <div ref={side.ref}>
          {side.width > 0 && (
            <FromSide content={content} width={side.width} rem={side.rem} {...scale} {...actions} />
          )}
        </div>
      </section>
      {typing && typed && (
        <Sheet title={said.typed[typing.what.kind]} open onClose={() => setTyping(null)}>
          <Entry
            label={said.typed[typing.what.kind]}
            initial={typing.first === '' ? show(typed[typing.which] ?? 0) : typing.first}
            selected={typing.first === ''}
            parse={(text) => parseLength(text, { unit: session.units === 'metric' ? 'm' : 'ft' })}
            range={typedRange(content, typing.what, typing.which)}
            show={show}
            onCommit={(to) => {
              const next: Moved =
                typing.which === 0
                  ? typed[1] === undefined
                    ? [to]
                    : [to, typed[1]]
                  : [typed[0], to];
              move(act, session, typing.what, next, content.eyeHeight);
            }}
            close={() => setTyping(null)}
          />
        </Sheet>
      )}
    </>
  );
}
