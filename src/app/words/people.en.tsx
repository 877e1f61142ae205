import type { ReactNode } from 'react';
import type { Arms, Stance } from '../../sitter/types';
import { COMMA } from './marks';

const STANCES: Readonly<Record<Stance, string>> = { standing: 'standing', seated: 'seated' };

/** Name and what it shows. */
const ARMS: Readonly<Record<Arms, readonly [string, string]>> = {
  hanging: ['arms hanging', 'The hands lie as far from the lens as the trunk.'],
  folded: ['arms folded', 'The forearms come nearer than the chest and are drawn larger.'],
  lap: ['hands in the lap', 'Seated alone. The hands come nearer than the face.'],
  'near-face': ['one hand near the face', 'The hand stands at the depth of the chin.'],
};

/** Who sits and how, in English: what the set-up's sentence says. */
export const people = {
  numbered: (id: string) => `person ${id}`,
  the: (noun: string) => `the ${noun}`,
  inPicture: (letter: string, who: string) => `${letter} (${who})`,
  labelOf: (name: string, id: string) => `${name}, person ${id}`,
  who: (v: {
    name: string;
    sitter: ReactNode;
    stance: ReactNode;
    turned: ReactNode;
    gaze: ReactNode;
  }): ReactNode => (
    <>
      {/^[aeiou]/i.test(v.name) ? 'An' : 'A'} {v.sitter}
      {COMMA} {v.stance}
      {COMMA} {v.turned}
      {COMMA} {v.gaze}
    </>
  ),
  stanceLabel: 'How the sitter stands',
  stanceWords: (stance: Stance, arms: Arms, lean: string | null) =>
    [
      STANCES[stance],
      ...(arms === 'hanging' ? [] : [ARMS[arms][0]]),
      ...(lean === null ? [] : [`leaning ${lean}`]),
    ].join(', '),
  stanceSentence: (v: { stance: ReactNode; arms: ReactNode; lean: ReactNode }): ReactNode => (
    <p>
      The sitter is {v.stance}, {v.arms}, the trunk {v.lean}.
    </p>
  ),
  stance: 'Standing or seated',
  stances: STANCES,
  arms: 'Arms and hands',
  armsWords: ARMS,
  lean: 'Lean of the trunk towards the camera, degrees',
  leanNote: 'From the hips; the head keeps its own direction.',
  upright: 'upright',
  leaning: (angle: string) => `leaning ${angle} forward`,
  gazeLabel: 'Where the eyes look',
  gazes: {
    lens: ['eyes to the lens', 'Of each picture. From near both eyes turn inwards.'],
    ahead: ['eyes straight ahead', 'Whatever the camera does.'],
    turned: ['eyes turned aside', 'In the head, by angles of your own.'],
  } satisfies Record<string, readonly [string, string]>,
  gazeYaw: 'Eyes to the picture’s right (+) or left (−), degrees',
  gazePitch: 'Eyes up (+) or down (−), degrees',
};
