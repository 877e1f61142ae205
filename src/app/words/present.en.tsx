import { formatPercent } from '../../readings/format';
import type { Letter } from '../../session/types';
import type { Finding } from '../present/finding';

const NUMBERS = ['one', 'two', 'three', 'four'];
const number = (n: number): string => NUMBERS[n - 1] ?? String(n);

/** A gain of the nose that rounds to less than this is no answer. */
const LEAST_GAIN = 0.005;

type Told = Exclude<Finding, { kind: 'one' }>;
type Pair = Extract<Finding, { kind: 'pair' }>;

const gains = ({ gain }: Pair): boolean => gain !== null && Math.abs(gain) >= LEAST_GAIN;

function nose({ gain, count, farthest }: Pair): string {
  if (gain === null) return 'the nose has no measure against the ears';
  if (Math.abs(gain) < LEAST_GAIN) return 'the nose is as large against the ears';
  const than = count > 2 ? ` than in ${farthest}` : '';
  const larger = gain > 0 ? 'larger' : 'smaller';
  return `the nose is ${formatPercent(Math.abs(gain))} ${larger} against the ears${than}`;
}

function cause(pair: Pair): string {
  if (pair.others !== null) return `${pair.others} What you see comes from all of that.`;
  const frame = `the lens only ${pair.sameCrop ? 'kept' : 'set'} the frame.`;
  return gains(pair) ? `Distance did that; ${frame}` : capital(frame);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const isFew = ({ count }: Told): boolean => count <= 2;

/** What the nearest picture shows and why; it is named where the sentence does not begin with its letter. */
function lesson(found: Told, distance: string, isNamed: boolean): string {
  if (found.kind === 'equal')
    return `${isFew(found) ? 'Both' : 'All'} were taken from ${distance}. The lens changes the frame, not the face.`;
  const says = `${isNamed ? `in ${found.nearest} ` : ''}${nose(found)}`;
  const equal = found.sameCrop && found.others === null;
  const whole = equal ? `the crop is equal, ${gains(found) ? 'yet' : 'and'} ${says}` : says;
  return `${capital(whole)}. ${cause(found)}`;
}

/** English words of the talk. What a class reads is short; what only the presenter reads names the key. */
export const present = {
  heading: (n: number, count: number) => `Talk, ${n} of ${count}`,
  number: (n: number, count: number) => `${n} of ${count}`,
  openActs: (n: number, count: number) => `${n} of ${count}: keys and acts`,
  pictures: 'Pictures',
  picture: (letter: Letter) => `Picture ${letter}`,
  away: 'away',
  lens: (focal: string) => `${focal} lens`,
  /** What a slide says before anything is asked or told. */
  shows: (found: Finding): string => {
    if (found.kind === 'one') return '';
    if (found.kind === 'equal') return `${capital(number(found.count))} pictures, one standpoint.`;
    return found.sameCrop
      ? `The same crop from ${number(found.count)} standpoints.`
      : `${capital(number(found.count))} pictures, ${number(found.count)} standpoints.`;
  },
  question: (pictures: number) =>
    pictures > 2
      ? 'Which picture was taken from the nearest place?'
      : 'Which picture was taken from nearer?',
  /** After a question: the answer first. */
  answer: (found: Told, distance: string) =>
    `${found.kind === 'pair' ? found.nearest : isFew(found) ? 'Neither' : 'None'}. ${lesson(found, distance, false)}`,
  /** Without a question, once the numbers are asked for. */
  tells: (found: Told, distance: string) => lesson(found, distance, true),
  moving: (from: Letter, to: Letter) => `${from} goes to where ${to} stands. The crop is held.`,
  answered: (n: number) => (n === 1 ? '1 answer' : `${n} answers`),
  tally: (votes: readonly (readonly [Letter, number])[]) =>
    `The class: ${votes.map(([letter, n]) => `${letter} ${n}`).join(', ')}.`,
  seenFrom: (places: readonly (readonly [Letter, string])[]) => {
    const [only, another] = places;
    if (only && !another) return `This picture shows the camera’s own perspective from ${only[1]}.`;
    return places
      .map(([letter, from], i) =>
        i === 0
          ? `${letter} shows the camera’s own perspective from ${from}`
          : `${letter} from ${from}`,
      )
      .join(', ')
      .concat('.');
  },
  waiting: 'The sitter is being fetched.',
  dark: 'The screen is dark. Any key brings the slide back.',
  actsTitle: 'Keys and acts of the talk',
  acts: {
    back: ['Back', 'Page Up'],
    next: ['Next', 'Page Down'],
    reveal: ['Reveal', 'Space'],
    showNumbers: ['Show the numbers', 'N'],
    hideNumbers: ['Hide the numbers', 'N'],
    ask: ['Ask', 'Q'],
    play: ['Play the move', 'M'],
    pause: ['Pause the move', 'M'],
    putBack: ['Back to the start', 'M'],
    dark: ['Darken', 'full stop'],
    measure: ['Measure the screen', 'C'],
    leave: ['Leave the talk', 'Escape'],
  } satisfies Record<string, [what: string, key: string]>,
  keysNote:
    'Digits open a slide. While a question is asked, the letters of the pictures count the answers of the class, and Backspace takes one back.',
  measure: {
    title: 'Measure the screen',
    how: 'Hold a bank card to the screen, 85.60 mm wide. Drag, or press the arrow keys, until the drawn card is as large.',
    card: 'Width of the drawn card',
    wide: 'All that is seen here, from left to right',
    width: (v: { width: React.ReactNode }): React.ReactNode => (
      <>So all that you see here is {v.width} wide. With a projector you may type that instead.</>
    ),
    note: 'Kept for this screen in this browser. The numbers of a slide then tell where to see its pictures from.',
  },
};
