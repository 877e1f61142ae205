import '@fontsource/literata/400.css';
import '@fontsource/literata/600.css';
import './handout.css';
import { Suspense, useState } from 'react';
import {
  addPage,
  movePage,
  removePage,
  setPageComparison,
  setPagePart,
  setSheet,
  setTemplate,
} from '../../session/actions/handout-page';
import {
  type HandoutPage,
  PAGE_KINDS,
  PAGE_PARTS,
  PAPERS,
  type PageKind,
  TEMPLATES,
} from '../../session/handout';
import { MOST } from '../../session/limits';
import { ChoiceValue } from '../controls/ChoiceValue';
import { Openings } from '../controls/Openings';
import { Slip } from '../controls/Slip';
import { Do, Toggle } from '../controls/words';
import { useDarkroom } from '../darkroom/useDarkroom';
import { ComparisonValue } from '../kept/ComparisonValue';
import { useWorkbench } from '../state/workbench';
import { TakeAway } from '../takeaway/TakeAway';
import { handout as said } from '../words/handout.en';
import { kept } from '../words/kept.en';
import { Author } from './Author';
import { Kept } from './onDemand';
import { Pages } from './Pages';
import { pageTitle } from './pageTitle';
import { SavePdf } from './SavePdf';

/** Kinds of page that are about one comparison. */
const COMPARING: ReadonlySet<PageKind> = new Set(['comparison', 'lesson', 'client', 'numbers']);

function SheetSentence() {
  const { session, act } = useWorkbench();
  const { template, paper, orientation, author } = session.handout;
  const way = { portrait: said.upright, landscape: said.lying };
  return (
    <p className="setup">
      {said.sheet({
        template: (
          <ChoiceValue
            label={said.template}
            shown={said.templates[template][0]}
            chosen={template}
            choices={TEMPLATES.map((id) => ({
              id,
              name: said.templates[id][0],
              note: said.templates[id][1],
            }))}
            onChoose={(to) => act(setTemplate, { template: to })}
          />
        ),
        paper: (
          <ChoiceValue
            label={said.paper}
            shown={said.sheetOf(said.papers[paper], way[orientation])}
            chosen={`${paper} ${orientation}`}
            choices={PAPERS.flatMap((size) =>
              (['portrait', 'landscape'] as const).map((to) => ({
                id: `${size} ${to}`,
                name: said.sheetOf(said.papers[size], way[to]),
              })),
            )}
            onChoose={(id) => {
              const size = PAPERS.find((each) => id.startsWith(each)) ?? paper;
              act(setSheet, {
                paper: size,
                orientation: id.endsWith('landscape') ? 'landscape' : 'portrait',
              });
            }}
          />
        ),
        signed: (
          <Slip label={said.author} shown={author.name || said.noName}>
            {(close) => <Author close={close} />}
          </Slip>
        ),
      })}
    </p>
  );
}

function PageActs(props: { page: HandoutPage; place: number; count: number }) {
  const { session, act } = useWorkbench();
  const { page, place, count } = props;
  const { id } = page;
  return (
    <div className="page-acts">
      {COMPARING.has(page.kind) && session.comparisons.length > 0 && (
        <ComparisonValue
          label={said.about}
          onTheWall={said.onTheWall}
          chosen={page.comparison}
          onChoose={(to) => act(setPageComparison, { id, to })}
        />
      )}
      <fieldset className="page-parts">
        <legend className="unseen">{said.partsLabel}</legend>
        {PAGE_PARTS.map((part) => (
          <Toggle
            key={part}
            on={page.parts.includes(part)}
            onChange={(shown) => act(setPagePart, { id, part, shown })}
          >
            {said.parts[part]}
          </Toggle>
        ))}
      </fieldset>
      <div className="row">
        <Do isDisabled={place === 0} onPress={() => act(movePage, { id, by: -1 })}>
          {said.earlier}
        </Do>
        <Do isDisabled={place === count - 1} onPress={() => act(movePage, { id, by: 1 })}>
          {said.later}
        </Do>
        <Do onPress={() => act(removePage, { id })}>{said.remove}</Do>
      </div>
    </div>
  );
}

/** The pages as a list; the chosen one is the one whose parts are changed, and is scrolled into sight. */
function PageList(props: { chosen: string | null; onChoose: (id: string) => void }) {
  const { session, act } = useWorkbench();
  const { pages } = session.handout;
  return (
    <>
      <h2 className="page-list-head">{said.pages}</h2>
      <ol className="page-list">
        {pages.map((page, i) => (
          <li key={page.id} className={page.id === props.chosen ? 'chosen' : ''}>
            <Do aria-expanded={page.id === props.chosen} onPress={() => props.onChoose(page.id)}>
              {said.page(i + 1, pageTitle(page))}
            </Do>
            {page.id === props.chosen && (
              <section aria-label={said.pageActs(i + 1)}>
                <PageActs page={page} place={i} count={pages.length} />
              </section>
            )}
          </li>
        ))}
      </ol>
      {pages.length === 0 && <p>{said.none}</p>}
      {pages.length < MOST.pages && (
        <ChoiceValue
          label={said.add}
          shown={said.add}
          chosen=""
          choices={PAGE_KINDS.map((id) => ({
            id,
            name: said.kinds[id][0],
            note: said.kinds[id][1],
          }))}
          onChoose={(kind) =>
            kind !== '' && act(addPage, { kind, comparison: session.comparisons[0]?.id ?? null })
          }
        />
      )}
    </>
  );
}

/** The pages as they will print, edited where they stand, and all that can be taken away. */
export default function Handout() {
  const { models } = useWorkbench();
  const { darkroom, element } = useDarkroom(models);
  const [chosen, setChosen] = useState<string | null>(null);
  return (
    <main className="handout">
      <h1 className="unseen">{said.heading}</h1>
      <section className="handout-setup no-print" aria-label={said.setUp}>
        <SheetSentence />
        <p className="slip-note">{said.templateNote}</p>
        <Openings parts={[{ name: kept.title, content: <Kept /> }]} />
        <PageList chosen={chosen} onChoose={(id) => setChosen((old) => (old === id ? null : id))} />
        <TakeAway darkroom={darkroom}>
          <SavePdf darkroom={darkroom} />
        </TakeAway>
      </section>
      <Suspense fallback={null}>
        <Pages darkroom={darkroom} chosen={chosen} />
      </Suspense>
      {element}
    </main>
  );
}
