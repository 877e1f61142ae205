import type { ReactNode } from 'react';
import type { PersonId } from '../../session/types';
import type { Beard, Clothes, Colours, HairStyle } from '../../sitter/types';
import type { GroupName } from '../people/groups';
import { COMMA, SEMICOLON, STOP } from './marks';

const HAIR: Readonly<Record<HairStyle, string>> = {
  bald: 'shaven',
  cropped: 'cropped',
  short: 'short',
  bob: 'as a bob',
  long: 'long',
  tied: 'tied back',
  curly: 'curly',
};

const BEARDS: Readonly<Record<Beard, string>> = {
  none: 'no beard',
  short: 'a short beard',
  full: 'a full beard',
};

const CLOTHES: Readonly<Record<Clothes, string>> = {
  top: 'a plain top',
  jacket: 'a jacket',
  dress: 'a dress',
};

const PARTS: Readonly<Record<keyof Colours, string>> = {
  skin: 'Colour of the skin',
  hair: 'Colour of hair and brows',
  eyes: 'Colour of the eyes',
  top: 'Colour of the top',
  outer: 'Colour of the jacket',
  trousers: 'Colour of the trousers',
};

const GROUPS: Readonly<Record<GroupName, string>> = {
  head: 'Head',
  face: 'Face',
  nose: 'Nose and mouth',
  ears: 'Ears',
  depths: 'Depths behind the nose tip',
  neck: 'Neck and shoulders',
  body: 'Body',
  limbs: 'Limbs',
};

const ordinal = (n: number): string => {
  const tens = n % 100;
  const ending =
    tens > 10 && tens < 14
      ? 'th'
      : n % 10 === 1
        ? 'st'
        : n % 10 === 2
          ? 'nd'
          : n % 10 === 3
            ? 'rd'
            : 'th';
  return `${n}${ending}`;
};

/** The panel on which people are chosen and shaped, in English. */
export const panel = {
  labelOf: (name: string, person: string | null) => (person === null ? name : `${name}, ${person}`),
  hair: HAIR,
  beards: BEARDS,
  clothes: CLOTHES,
  parts: PARTS,
  labels: {
    hair: 'How the hair is worn',
    beard: 'Beard',
    glasses: 'Glasses',
    smile: 'Smile, 0 to 100 %',
    clothes: 'Clothes',
  },
  head: (v: { hair: ReactNode; hairColour: ReactNode; skin: ReactNode; eyes: ReactNode }) => (
    <>
      The hair is worn {v.hair}
      {SEMICOLON} it is {v.hairColour}
      {COMMA} the skin {v.skin}
      {COMMA} the eyes {v.eyes}
      {STOP}
    </>
  ),
  face: (v: { beard: ReactNode; glasses: ReactNode; smile: ReactNode }) => (
    <>
      The face has {v.beard} and {v.glasses}
      {SEMICOLON} the mouth is {v.smile}
      {STOP}
    </>
  ),
  wears: (
    clothes: Clothes,
    v: { clothes: ReactNode; top: ReactNode; outer: ReactNode; trousers: ReactNode },
  ): ReactNode => {
    if (clothes === 'dress')
      return (
        <>
          The sitter wears {v.clothes} of {v.top}.
        </>
      );
    if (clothes === 'jacket')
      return (
        <>
          The sitter wears {v.clothes} of {v.outer} over a top of {v.top}, and trousers of{' '}
          {v.trousers}.
        </>
      );
    return (
      <>
        The sitter wears {v.clothes} of {v.top} and trousers of {v.trousers}.
      </>
    );
  },
  glasses: { yes: 'thin glasses', no: 'no glasses' },
  glassesNote: 'A thin frame shows perspective well: it turns and bows as the lens comes near.',
  resting: 'at rest',
  smiling: (percent: string) => `smiling, ${percent}`,
  smileNote: 'A slight smile, mouth closed. The dimensions are those of the face at rest.',
  near: (name: string) => `nearly ${name}`,
  typedColour: 'Or a colour of your own, as six digits',
  notAColour: (text: string) => `"${text.trim()}" is not a colour. Try #6f7f8c.`,
  ownLooks: 'Looks as the sitter’s own',
  dimensions: 'Dimensions',
  dimensionsOf: (name: string) => `Dimensions, ${name}`,
  dimensionsSay: (survey: string) =>
    `The sliders run from the 1st to the 99th percentile of ${survey}. What hangs on a changed length follows it.`,
  childSays:
    'The surveys are of adults: a child’s sliders run as far about its own lengths, in proportion, and no percentile is told.',
  groups: GROUPS,
  changed: (n: number) => (n === 0 ? '' : `, ${n} changed`),
  standing: (percentile: number, who: 'female' | 'male'): string => {
    const whom = who === 'female' ? 'women' : 'men';
    if (percentile < 1) return `below the 1st percentile of ${whom}`;
    if (percentile > 99) return `above the 99th percentile of ${whom}`;
    return `${ordinal(Math.round(percentile))} percentile of ${whom}`;
  },
  survey: (name: string) => `, ${name}`,
  noSurvey: 'no survey',
  asMeasured: 'as measured',
  asMeasuredOf: (name: string) => `${name} as measured`,
  allAsMeasured: 'All dimensions as measured',
  impossible: (value: string, why: string) => `${value} cannot be: ${why}.`,
  add: 'Add a second person',
  addLabel: 'Second person',
  addNote:
    'A second person takes the last picture, for instance a child beside an adult, or joins the only one.',
  remove: 'Take the second person away',
  company: {
    label: (letter: string) => `Who is in ${letter}`,
    both: (first: string, second: string) => `${first} and ${second}`,
    note: (first: string) => `Distances and crop are taken to ${first}.`,
    shows: (letter: string, who: ReactNode): ReactNode => (
      <>
        {letter} shows {who}
      </>
    ),
  },
  beside: (v: { who: string; right: ReactNode; forward: ReactNode }): ReactNode => (
    <>
      Where both are in a picture, {v.who} is {v.right} and {v.forward}, on the same floor.
    </>
  ),
  rightLabel: 'Second person beside the first, to the picture’s right (+)',
  right: (distance: string, side: 'left' | 'right') => `${distance} to the ${side}`,
  forwardLabel: 'Second person before the first, towards the camera (+)',
  forward: (distance: string, where: 'nearer' | 'farther') => `${distance} ${where}`,
  level: 'equally far',
  childCaution:
    'With children: tape cables down, weigh stands, keep lamps out of reach, and have the parent beside the camera.',
  personHeading: (id: PersonId, name: string) => `Person ${id}: ${name}`,
};
