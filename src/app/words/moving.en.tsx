import type { ReactNode } from 'react';
import type { MovingLabels } from '../../handout/moving/types';
import type { Letter } from '../../session/types';
import { COMMA, ended, STOP } from './marks';

/** English words of the sheet that makes a moving page, and of the page itself. */
export const moving = {
  language: 'en',
  heading: 'Moving page',
  what: (v: {
    about: ReactNode;
    title: ReactNode;
    view: ReactNode;
    steps: ReactNode;
    side: ReactNode;
  }): ReactNode => (
    <>
      From {v.about}
      {COMMA} {v.view}
      {COMMA} at {v.steps}
      {COMMA} {v.side}
      {STOP} Headed {v.title}
      {STOP}
    </>
  ),
  title: 'Heading of the page',
  steps: 'Standpoints',
  shownSteps: (count: number) => `${count} standpoints`,
  stepsNote: 'Evenly in one over the distance, so that the face changes evenly.',
  side: 'Size of the pictures',
  shownSide: (pixels: number) => `pictures of ${pixels} pixels`,
  note: 'One file for phones and laptops. It opens from the disk with the network off, and holds the pictures, their readings and these words, no notes, kit or title of the session.',
  make: 'Make the page',
  saved: (name: string, megabytes: string) => `Saved as ${name}, ${megabytes} MB.`,
  failed: (why: string) => `The page could not be made: ${ended(why)}`,
  alt: (letter: string, says: string) => `Picture ${letter}. ${says}`,
  end: (letter: Letter, distance: string) => `${letter} ${distance}`,
  labels: {
    slider: 'Standpoint, from the eyes to the lens',
    hint: 'Drag, or use the arrow keys',
    noScript:
      'Scripts are switched off, so the slider does nothing. Open this file in a browser to move the standpoint.',
  } satisfies Omit<MovingLabels, 'measured'>,
};
