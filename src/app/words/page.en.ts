/** What the pages of a handout say by themselves, in English. Anything of it can be changed on the page. */
import type { PageKind } from '../../session/handout';
import type { Letter } from '../../session/types';

export interface SpokenPair {
  readonly a: Letter;
  readonly b: Letter;
  /** Where each was taken from, as shown. */
  readonly from: string;
  readonly to: string;
  readonly frame: string;
  readonly person: 'her' | 'him' | 'them';
  /** The crop is the same in both. */
  readonly alike: boolean;
  /** The nose of the nearer picture against the ears, over that of the farther: "25 % larger". */
  readonly gain: string | null;
  readonly nearer: Letter;
}

const of = { her: 'her', him: 'him', them: 'them' } as const;

export const page = {
  titles: {
    comparison: 'The same crop from two standpoints',
    lesson: 'Distance makes the look, the lens only the frame',
    answers: 'Answers',
    client: 'Why the camera stands where it stands',
    day: 'The room on the day',
    cards: 'Set-up cards',
    numbers: 'What distance does, in numbers',
    notes: 'Notes',
  } satisfies Record<PageKind, string>,
  leads: {
    one: (from: string, frame: string, person: SpokenPair['person']) =>
      `This picture holds ${frame} of ${of[person]}, taken from ${from}.`,
    comparison: ({ frame, person, from, to, alike }: SpokenPair) =>
      alike
        ? `Both pictures hold the same ${frame} of ${of[person]}. Only the standpoint moved, from ${from} to ${to}; the lens was changed to keep the crop.`
        : `The pictures were taken from ${from} and from ${to}, with different crops.`,
    claim:
      'The look of a face comes from the distance to the lens. The focal length decides only how much of that view the frame keeps.',
    client: ({ from, to, frame, person, nearer, a, b }: SpokenPair) =>
      `Both pictures show the same ${frame} of ${of[person]}: ${nearer} from ${nearer === a ? from : to}, ${nearer === a ? b : a} from ${nearer === a ? to : from}. From near, what stands nearer to the lens is drawn larger, so the nose gains on the ears. From farther back the face keeps its own proportions. That is why the camera stands there, with a longer lens.`,
    day: 'The room, drawn to scale. Distances are in the lines; the camera, the sitter and the backdrop stand where they are drawn.',
    cards: 'One card for each picture, in the order with the fewest moves.',
    numbers: 'The same crop throughout; only the standpoint changes along the line.',
    notes: 'Write here.',
  },
  exercise: 'Exercise',
  exercises: (person: SpokenPair['person']) => [
    `Cover the captions. Which picture was taken from nearer, and what shows it?`,
    `From where would the nose gain half as much over the ears? Guess first, then find it on the rail.`,
    `A lens of half the focal length stays at the same standpoint. What changes in the face, and what in the frame, of ${of[person]}?`,
  ],
  answers: (pair: SpokenPair, half: string | null) => [
    `${pair.nearer} was taken from nearer${pair.gain === null ? '' : `: its nose is ${pair.gain} against the ears`}. The ears slip behind the cheeks and the wall behind shows more of itself.`,
    half === null
      ? 'No standpoint gives half of that gain.'
      : `From ${half}. The gain falls with distance, so most of the change lies near the sitter.`,
    'Nothing changes in the face: the standpoint is the same. The frame holds twice the height, so the face is smaller in it; cut out, it is the same picture with fewer pixels.',
  ],
  answersLead: (title: string) => `To: ${title}`,
  by: (name: string) => `Photographs: ${name}`,
  pageOf: (n: number, count: number) => `${n} of ${count}`,
  sheetOf: (n: number, count: number) => `, sheet ${n} of ${count}`,
  measured: 'Measured',
  inWords: 'In words',
  seriesNote:
    'Small pictures: the same crop from several standpoints, with nose to ear under each.',
  computed: (v: { format: string; nose: string; ears: string }) =>
    `Computed with a thin lens on ${v.format}; distances run from the lens to the point midway between the pupils, nose tip ${v.nose} before it, ears ${v.ears} behind it. The pictures are rendered, not photographs.`,
  computedPlain:
    'Worked out from the room, the kit and the sitter’s own measures. Lens figures are those of the kit; check the first frame.',
  caution: 'Readings are for photographs, not for medical or identity decisions.',
  closeTo: (letter: Letter, distance: string) =>
    `${letter} stands ${distance} from a nose. Ask first, and move slowly.`,
  closeToChild: (letter: Letter, distance: string) =>
    `${letter} stands ${distance} from a child’s nose. Ask the parent and the child first, and keep straps and cables short.`,
  raised: (letter: Letter) =>
    `In ${letter} the camera is raised. A raised camera wants a firm support. Nobody stands below it.`,
  rules: 'Rules of the house and local rules come first.',
  drawingsAt: (scale: number) => `1 : ${scale} when printed at full size`,
  rail: 'The room from the side, to scale, with each picture’s standpoint.',
  waiting: 'The picture is being rendered.',
  failed: (why: string) => `No picture: ${why}`,
  partMissing: 'a picture or a part of a page could not be made; it says so in its place',
  spills:
    'Some of this page does not fit on the paper and is cut off. Shorten its words, or take a part out.',
  editable: (place: string) => `Words of the page: ${place}`,
  giveBack: 'Back to the words that follow the pictures',
  places: {
    title: 'title',
    lead: 'first lines',
    notes: 'notes',
    exercise: 'exercise',
    answers: 'answers',
  } as Readonly<Record<string, string>>,
};
