import { type ReactNode, useRef } from 'react';
import { paperSize } from '../../handout/paper';
import { comparisonOf } from '../../session/comparison';
import type { HandoutPage, PagePart } from '../../session/handout';
import type { Session } from '../../session/types';
import { captionWords } from '../compare/captions';
import type { Darkroom } from '../darkroom/useDarkroom';
import { useWorkbench } from '../state/workbench';
import { page as said } from '../words/page.en';
import { CardPages } from './CardPages';
import { Editable } from './Editable';
import { ChartPart } from './parts/ChartPart';
import { Hung } from './parts/Hung';
import { NumbersPart } from './parts/NumbersPart';
import { cautionsOf, computedLine } from './parts/notes';
import { RailPart } from './parts/RailPart';
import { ReadingsPart } from './parts/ReadingsPart';
import { RoomPart } from './parts/RoomPart';
import { SeriesPart } from './parts/SeriesPart';
import { halfGain, spokenPair } from './spoken';
import { type PageSitting, useSitting } from './useSitting';
import { useSpill } from './useSpill';
import { HAS_FAILED, IS_PENDING } from './whole';

interface PageProps {
  readonly darkroom: Darkroom;
  readonly page: HandoutPage;
  /** From 1. */
  readonly number: number;
  readonly count: number;
}

/** What a page's margins, its head and its foot take from the paper, millimetres. */
const TAKEN = { width: 36, height: 82 } as const;

/** Millimetres free for drawings. */
function spaceOf({ paper, orientation }: Session['handout']) {
  const { width, height } = paperSize(paper, orientation);
  return { width: width - TAKEN.width, height: height - TAKEN.height };
}

function leadOf(page: HandoutPage, sitting: PageSitting): string {
  const { leads } = said;
  const { session, pictures, pronoun } = sitting;
  const pair = spokenPair(sitting);
  const kind = page.kind;
  if (kind === 'lesson') return leads.claim;
  if (kind === 'answers') {
    const lessons = session.handout.pages.filter((each) => each.kind === 'lesson');
    const lesson = lessons.find((each) => each.comparison === page.comparison) ?? lessons[0];
    const title = lesson?.words.title ?? said.titles.lesson;
    const about = lessons.length > 1 && comparisonOf(session, page.comparison)?.name;
    return said.answersLead(about ? `${title}, ${about}` : title);
  }
  if (kind !== 'client' && kind !== 'comparison') return leads[kind];
  if (pair) return leads[kind](pair);
  const { distance, frame } = captionWords(pictures[0], session.units);
  return leads.one(distance, frame, pronoun);
}

function Numbered(props: {
  page: HandoutPage;
  place: 'exercise' | 'answers';
  usual: readonly string[];
}) {
  return (
    <ol className="page-exercise">
      {props.usual.map((text, i) => (
        <Editable
          // biome-ignore lint/suspicious/noArrayIndexKey: the exercises keep their places
          key={i}
          page={props.page}
          place={`${props.place}${i + 1}`}
          usual={text}
          as="li"
        />
      ))}
    </ol>
  );
}

function Body(props: PageProps & { sitting: PageSitting }) {
  const { page, darkroom, sitting } = props;
  const { models } = useWorkbench();
  const has = (part: PagePart) => page.parts.includes(part);
  const pair = spokenPair(sitting);
  const { kind } = page;
  const showsPictures = kind === 'comparison' || kind === 'lesson' || kind === 'client';
  const cautions = has('cautions') ? cautionsOf(sitting, models) : [];
  return (
    <>
      {kind === 'notes' ? (
        <Editable
          page={page}
          place="notes"
          usual={said.leads.notes}
          as="p"
          className="page-notes"
        />
      ) : (
        <Editable
          page={page}
          place="lead"
          usual={leadOf(page, sitting)}
          as="p"
          className="page-lead"
        />
      )}
      {showsPictures && <Hung darkroom={darkroom} sitting={sitting} />}
      {has('rail') && <RailPart sitting={sitting} />}
      {has('readings') && <ReadingsPart sitting={sitting} all={kind === 'comparison'} />}
      {has('series') && <SeriesPart darkroom={darkroom} sitting={sitting} />}
      {kind === 'numbers' && <NumbersPart sitting={sitting} />}
      {has('chart') && <ChartPart sitting={sitting} />}
      {kind === 'lesson' && pair && (
        <>
          <h3>{said.exercise}</h3>
          <Numbered page={page} place="exercise" usual={said.exercises(pair.person)} />
        </>
      )}
      {kind === 'answers' && pair && (
        <Numbered page={page} place="answers" usual={said.answers(pair, halfGain(sitting))} />
      )}
      {has('room') && <RoomPart sitting={sitting} space={spaceOf(sitting.session.handout)} />}
      {cautions.length > 0 && (
        <ul className="page-cautions">
          {cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
    </>
  );
}

interface FrameProps extends PageProps {
  readonly foot: string | null;
  /** Where a page needs several sheets: which of them this is, from 1. */
  readonly sheet?: { readonly place: number; readonly of: number };
  readonly children: ReactNode;
}

function Frame(props: FrameProps) {
  const { session } = useWorkbench();
  const { page, number, count, sheet } = props;
  const { author, paper, orientation } = session.handout;
  const body = useRef<HTMLDivElement>(null);
  const spills = useSpill(body);
  return (
    <>
      {spills && (
        <p className="page-spills no-print" role="status">
          {said.spills}
        </p>
      )}
      <article className={`paper ${paper} ${orientation}`} data-page={page.id} lang="en">
        <header className="page-head">
          <Editable page={page} place="title" usual={said.titles[page.kind]} as="h2" />
          <div className="page-by">
            <p>{session.title}</p>
            {session.room.name !== '' && page.kind === 'day' && <p>{session.room.name}</p>}
            {author.name !== '' && <p>{said.by(author.name)}</p>}
            {author.words !== '' && <p className="page-author-words">{author.words}</p>}
          </div>
          {author.logo !== null && <img className="page-logo" src={author.logo} alt="" />}
        </header>
        <div ref={body} className="page-body">
          {props.children}
        </div>
        <footer className="page-foot">
          <p>{props.foot}</p>
          <p className="page-number">
            {said.pageOf(number, count)}
            {sheet && sheet.of > 1 && said.sheetOf(sheet.place, sheet.of)}
          </p>
        </footer>
      </article>
    </>
  );
}

/** A page as it prints, its words edited where they stand. */
export function Page(props: PageProps) {
  const { page } = props;
  const { models } = useWorkbench();
  const sat = useSitting(props.darkroom, page.comparison);
  if (sat.is !== 'there')
    return (
      <Frame {...props} foot={null}>
        <p role="status" {...(sat.is === 'waiting' ? IS_PENDING : HAS_FAILED)}>
          {sat.is === 'waiting' ? said.waiting : said.failed(sat.why)}
        </p>
      </Frame>
    );
  const { sitting } = sat;
  const isOfRoom = page.kind === 'day' || page.kind === 'cards';
  const computed = isOfRoom ? said.computedPlain : computedLine(sitting, models);
  const series = page.parts.includes('series') ? `${said.seriesNote} ` : '';
  const foot = page.parts.includes('computed') ? series + computed : null;
  if (page.kind === 'cards')
    return (
      <CardPages
        sheet={(place, of, content) => (
          <Frame key={place} {...props} foot={foot} sheet={{ place, of }}>
            {place === 1 && <Body {...props} sitting={sitting} />}
            {content}
          </Frame>
        )}
      />
    );
  return (
    <Frame {...props} foot={foot}>
      <Body {...props} sitting={sitting} />
    </Frame>
  );
}
