import type { ReactNode } from 'react';
import type { StandFault } from '../../plan/lights';
import { COMMA, STOP } from './marks';

/** The lights as stands in the room, in English. */
export const stands = {
  stand: (v: {
    name: string;
    azimuth: ReactNode;
    elevation: ReactNode;
    distance: ReactNode;
    size: ReactNode;
  }): ReactNode => (
    <>
      The {v.name} stands {v.azimuth}
      {COMMA} {v.elevation}
      {COMMA} {v.distance} from the eyes; its box is {v.size} wide{STOP}
    </>
  ),
  distanceOf: (name: string) => `From the eyes to the ${name}`,
  sizeOf: (name: string) => `Width of the box of the ${name}`,
  toBackdrop: (stops: string, rises: boolean) =>
    `From the face to the backdrop it ${rises ? 'rises' : 'falls'} by ${stops} stops.`,
  across: (stops: string) => `Across the group it falls by ${stops} stops.`,
  inPicture: (letters: string) => `It stands in picture ${letters}.`,
  shaded: (letters: string) => `The camera of ${letters} stands in its light.`,
  off: (name: string) => `The ${name} is off.`,
  faults: {
    'outside-walls': 'It reaches through a wall: bring it nearer.',
    'under-floor': 'Its box reaches the floor: raise it or take a smaller one.',
    'over-ceiling': 'It reaches the ceiling: lower it or bring it nearer.',
    'in-obstacle': 'Something else stands there.',
  } satisfies Record<StandFault, string>,
  hung: 'It hangs above and behind the sitter, turned to the backdrop; it has no stand, and the drawings leave it out.',
  note: 'A light falls off with the square of its distance: near lights fall off fast, far ones evenly.',
};
