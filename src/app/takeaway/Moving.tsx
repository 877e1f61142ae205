import { useMemo, useState } from 'react';
import { formatNumber } from '../../readings/format';
import { sessionWith } from '../../session/comparison';
import { ChoiceValue } from '../controls/ChoiceValue';
import { Sheet } from '../controls/Sheet';
import { TextValue } from '../controls/TextValue';
import { Do } from '../controls/words';
import { ComparisonValue } from '../kept/ComparisonValue';
import { offerFile } from '../state/offerFile';
import { useWorkbench } from '../state/workbench';
import { move } from '../words/move.en';
import { moving as said } from '../words/moving.en';
import { page } from '../words/page.en';
import { fileName } from './fileName';
import { canMove, endsOf } from './move/along';
import { ViewValue } from './move/ViewValue';
import type { MovingChoice } from './moving/content';
import { makeMoving } from './moving/makeMoving';
import type { TakeAwayProps } from './TakeAway';
import { useWork } from './useWork';
import { WorkBar } from './WorkBar';

const STEPS = [9, 16, 24, 32] as const;
/** Pixels of a picture's longer side. */
const SIDES = [480, 720, 1000] as const;

interface Saved {
  readonly name: string;
  readonly bytes: number;
}

/** Makes one HTML file in which the standpoint of a comparison can be moved. */
export default function Moving({ darkroom, onClose }: TakeAwayProps) {
  const { session: own, models } = useWorkbench();
  const [comparison, setComparison] = useState<string | null>(null);
  const session = useMemo(() => sessionWith(own, comparison), [own, comparison]);
  const [choice, setChoice] = useState<MovingChoice>({
    view: 'two',
    steps: 24,
    side: 1000,
    title: page.titles.comparison,
  });
  const change = (changes: Partial<MovingChoice>) => setChoice((old) => ({ ...old, ...changes }));
  const work = useWork<Saved>();
  const make = () =>
    work.start(async (signal, onProgress) => {
      const blob = await makeMoving({ choice, session, models, darkroom, signal, onProgress });
      const name = fileName(move.file(...endsOf(session)), 'html');
      offerFile(blob, name);
      return { name, bytes: blob.size };
    });
  return (
    <Sheet title={said.heading} open onClose={onClose}>
      <p className="setup">
        {said.what({
          about: (
            <ComparisonValue
              label={move.about}
              onTheWall={move.onTheWall}
              chosen={comparison}
              onChoose={setComparison}
            />
          ),
          view: <ViewValue chosen={choice.view} onChoose={(view) => change({ view })} />,
          steps: (
            <ChoiceValue
              label={said.steps}
              shown={said.shownSteps(choice.steps)}
              chosen={String(choice.steps)}
              choices={STEPS.map((count) => ({ id: String(count), name: said.shownSteps(count) }))}
              onChoose={(id) => change({ steps: Number(id) })}
            />
          ),
          side: (
            <ChoiceValue
              label={said.side}
              shown={said.shownSide(choice.side)}
              chosen={String(choice.side)}
              choices={SIDES.map((side) => ({ id: String(side), name: said.shownSide(side) }))}
              onChoose={(id) => change({ side: Number(id) })}
            />
          ),
          title: (
            <TextValue
              label={said.title}
              text={choice.title}
              onCommit={(title) => change({ title })}
            />
          ),
        })}
      </p>
      <p className="slip-note">{said.stepsNote}</p>
      <p className="slip-note">{said.note}</p>
      {canMove(session) ? (
        <div className="row">
          <Do main isPending={work.state.is === 'working'} onPress={make}>
            {said.make}
          </Do>
        </div>
      ) : (
        <p role="status">{move.oneEnd}</p>
      )}
      <WorkBar
        work={work}
        done={({ name, bytes }) => said.saved(name, formatNumber(bytes / 1e6, 1))}
        failed={said.failed}
      />
    </Sheet>
  );
}
