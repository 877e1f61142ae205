/** English words that clips and moving pages share: the move from one standpoint to the other. */
import type { MoveView } from '../takeaway/move/along';

export const move = {
  about: 'Comparison',
  onTheWall: 'the comparison on the wall',
  view: 'Pictures',
  views: {
    two: [
      'the start beside the moving picture',
      'The first picture stays; the other moves away from it.',
    ],
    one: ['the moving picture alone', 'One picture, as large as the frame allows.'],
  } satisfies Record<MoveView, [string, string]>,
  /** A line may not break after the dash. */
  onTheWay: (from: string, to: string) => `${from}–\u2060${to}`,
  noseToEar: (ratio: string) => `nose to ear ${ratio}`,
  oneEnd: 'This comparison has one picture. A move needs two: hang another in Compare.',
  file: (from: string, to: string) => `move ${from} to ${to}`,
  /** What a file says of itself, for whoever finds it without these words around it. */
  title: (from: string, to: string) => `The same crop from ${from} to ${to}`,
  description: (from: string, to: string) =>
    `Rendered move from ${from} to ${to} with the crop held. Computed with a pinhole at the entrance pupil; not a photograph.`,
};
