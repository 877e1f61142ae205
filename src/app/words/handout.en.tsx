import type { ReactNode } from 'react';
import type { PageKind, PagePart, Paper, Template } from '../../session/handout';
import { COMMA, ended, STOP } from './marks';

/** English words of the handout's own controls; what its pages say stands in page.en.ts. */
export const handout = {
  heading: 'Handout: pages to take away',
  setUp: 'Sheet and pages',
  sheet: (v: { template: ReactNode; paper: ReactNode; signed: ReactNode }): ReactNode => (
    <>
      {v.template} on {v.paper}
      {COMMA} signed {v.signed}
      {STOP} Any words can be changed where they stand.
    </>
  ),
  template: 'Kind of handout',
  templates: {
    client: ['A client sheet', 'Why the camera stands where it stands, and the room on the day.'],
    lesson: ['A lesson', 'Claim, comparison, numbers and an exercise; the answers come last.'],
    comparisons: ['One comparison a page', 'Each kept comparison with its readings.'],
    day: ['A plan for the day', 'The room to scale and a card for each picture.'],
  } satisfies Record<Template, [string, string]>,
  templateNote: 'Another kind lays the pages anew. Undo brings yours back.',
  paper: 'Paper',
  papers: { a4: 'A4', letter: 'Letter' } satisfies Record<Paper, string>,
  upright: 'upright',
  lying: 'lying',
  sheetOf: (paper: string, way: string) => `${paper} ${way}`,
  author: 'Who hands it out',
  noName: 'with no name',
  name: 'Your name',
  words: 'Words under it, such as where to reach you',
  logo: 'Logo',
  chooseLogo: 'Choose a picture file',
  removeLogo: 'Take the logo off',
  logoWrong: 'That file is no PNG or JPEG picture. Choose another.',
  logoLarge: 'That picture is too large for a logo. Choose one below 220 kB.',
  pages: 'Pages',
  page: (n: number, title: string) => `${n} ${title}`,
  shown: 'shown',
  pageActs: (n: number) => `Page ${n}`,
  add: 'Add a page',
  kinds: {
    comparison: ['Comparison', 'Pictures, the rail and their readings.'],
    lesson: ['Lesson', 'Claim, comparison, numbers, exercise.'],
    answers: ['Answers', 'The answers to the exercises of the lessons.'],
    client: ['Client sheet', 'Why the camera stands where it stands.'],
    day: ['The room on the day', 'The room from above and from the side, to scale.'],
    cards: ['Set-up cards', 'A card for each wanted picture, in the order of shooting.'],
    numbers: ['Numbers', 'Readings over distance, as charts and a table.'],
    notes: ['Notes', 'A page of your own words.'],
  } satisfies Record<PageKind, [string, string]>,
  about: 'Comparison on this page',
  onTheWall: 'what hangs on the wall',
  earlier: 'Earlier',
  later: 'Later',
  remove: 'Take out',
  parts: {
    rail: 'the room to scale',
    readings: 'readings',
    series: 'strip of standpoints',
    chart: 'chart',
    room: 'room drawings',
    cautions: 'cautions',
    computed: 'how it was computed',
  } satisfies Record<PagePart, string>,
  partsLabel: 'Parts of this page',
  takeAway: 'Take away',
  savePdf: 'Save as PDF',
  print: 'Print',
  pdfNote: 'Text stays text, drawings stay lines, pictures at 300 per inch.',
  pdfSaved: (name: string, megabytes: string, missing: string) =>
    `Saved as ${name}, ${megabytes} MB.${
      missing === ''
        ? ''
        : ` No typeface here has these letters, so they print as boxes: ${missing}`
    }`,
  pdfFailed: (why: string) => `The PDF could not be made: ${ended(why)}`,
  printed: 'Handed to the browser’s own printing.',
  printFailed: (why: string) => `The pages could not be printed: ${ended(why)}`,
  none: 'There are no pages. Add one, or choose a kind of handout.',
};
