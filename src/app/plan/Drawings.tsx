import { useMemo, useState } from 'react';
import {
  FromAbove,
  FromSide,
  type Moved,
  type MovePhase,
  type PlanThing,
} from '../../drawings/plan';
import type { PlanRequest } from '../../plan/types';
import { formatLength } from '../../readings/format';
import { PLAIN_UNIT, parseLength } from '../../readings/parse';
import type { Cast } from '../../session/cast';
import { leadOf } from '../../session/cast';
import type { Picture } from '../../session/types';
import type { Shown } from '../compare/shown';
import Entry from '../controls/Entry';
import { Sheet } from '../controls/Sheet';
import { useDragging } from '../state/useDragging';
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
export function Drawings(props: { cast: Cast; pictures: readonly Shown[]; request: PlanRequest }) {
  const { session, models, act } = useWorkbench();
  const { pictures, request } = props;
  const profile = useProfile(leadOf(props.cast, session.pictures[0] as Picture));
  const above = useSheet();
  const side = useSheet();
  const dragging = useDragging();
  const [typing, setTyping] = useState<Typing | null>(null);
  const content = useMemo(
    () =>
      drawingContent(session, pictures, request, models, profile, (lamp) => light.lamps[lamp].name),
    [session, pictures, request, models, profile],
  );
  const onMove = (what: PlanThing, to: Moved, phase: MovePhase) => {
    if (phase === 'move') move(dragging.act, session, what, to, content.eyeHeight);
    else dragging[phase]();
  };
  const actions = {
    onMove,
    onType: (what: PlanThing, which: 0 | 1, first: string) => setTyping({ what, which, first }),
  };
  const show = (metres: number) => formatLength(metres, session.units, 'distance');
  const typed = typing && placeOfThing(content, typing.what);
  return (
    <>
      <section className="sheet-paper drawing" aria-label={said.fromAbove}>
        <h2>{said.fromAbove}</h2>
        <div ref={above.ref}>
          {above.width > 0 && (
            <FromAbove content={content} width={above.width} rem={above.rem} {...actions} />
          )}
        </div>
      </section>
      <section className="sheet-paper drawing" aria-label={said.fromSide}>
        <h2>{said.fromSide}</h2>
        <div ref={side.ref}>
          {side.width > 0 && (
            <FromSide content={content} width={side.width} rem={side.rem} {...actions} />
          )}
        </div>
      </section>
      {typing && typed && (
        <Sheet title={said.typed[typing.what.kind]} open onClose={() => setTyping(null)}>
          <Entry
            label={said.typed[typing.what.kind]}
            initial={typing.first === '' ? show(typed[typing.which] ?? 0) : typing.first}
            selected={typing.first === ''}
            parse={(text) => parseLength(text, { unit: PLAIN_UNIT[session.units] })}
            range={typedRange(content, typing.what, typing.which)}
            show={show}
            onCommit={(to) => {
              const next = typed.map((now, i) =>
                i === typing.which ? to : now,
              ) as unknown as Moved;
              move(act, session, typing.what, next, content.eyeHeight);
            }}
            close={() => setTyping(null)}
          />
        </Sheet>
      )}
    </>
  );
}
