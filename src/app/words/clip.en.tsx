import type { ReactNode } from 'react';
import type { Way } from '../../handout/clip/plan';
import type { Pace } from '../../session/play';
import { COMMA, ended, STOP } from './marks';

/** English words of the sheet that makes a clip. */
export const clip = {
  title: 'Clip of the move',
  what: (v: {
    about: ReactNode;
    view: ReactNode;
    size: ReactNode;
    seconds: ReactNode;
    pace: ReactNode;
    way: ReactNode;
    rest: ReactNode;
    captions: ReactNode;
  }): ReactNode => (
    <>
      From {v.about}
      {COMMA} {v.view}
      {COMMA} {v.size}
      {STOP} The move takes {v.seconds} one way
      {COMMA} {v.pace}
      {COMMA} {v.way}
      {COMMA} {v.rest}
      {COMMA} {v.captions}
      {STOP}
    </>
  ),
  size: 'Size',
  shownSize: (width: number, height: number) => `${width} × ${height}`,
  sizeNotes: [
    'small, quick to make',
    'full HD, for most screens',
    '4K, for large screens',
    'upright, for phones',
  ],
  seconds: 'Length of the move one way',
  shownSeconds: (seconds: string) => `${seconds} s`,
  secondsWrong: 'Write seconds, such as 6.',
  pace: 'Pace',
  paces: {
    look: ['even in look', 'The face changes evenly: one over the distance runs evenly.'],
    metres: ['even in metres', 'As one walks: most of the change comes near the sitter.'],
  } satisfies Record<Pace, [string, string]>,
  way: 'Way',
  ways: {
    once: ['once', 'From the first standpoint to the second.'],
    back: ['there and back', 'It ends on the first picture.'],
    loop: ['as a loop', 'There and back, made to be played on and on without a stop.'],
  } satisfies Record<Way, [string, string]>,
  rest: 'Rest at each end',
  shownRest: (seconds: string) =>
    seconds === '0' ? 'without a rest' : `resting ${seconds} s at the ends`,
  withCaptions: 'with captions',
  look: 'Place in the move',
  preview: (place: string) => `A frame of the clip, ${place} from the eyes`,
  previewing: 'The frame is being rendered.',
  noPreview: (why: string) => `The frame could not be rendered: ${ended(why)}`,
  amount: (frames: number, rate: number, seconds: string, kind: string) =>
    `${frames} frames at ${rate} a second, ${seconds} s, ${kind}. Each is rendered, not filmed, which takes its time; keep this page in sight.`,
  asking: 'Asking the browser what it can make.',
  make: 'Make the clip',
  saved: (name: string, megabytes: string) => `Saved as ${name}, ${megabytes} MB.`,
  failed: (why: string) => `The clip could not be made: ${ended(why)}`,
  cannot: 'This browser cannot make a video of this size. A series of stills shows the same move.',
  noCodecs: 'This browser has no way to make a video. A series of stills shows the same move.',
  stills: 'Take the stills instead',
  file: 'Video',
};
