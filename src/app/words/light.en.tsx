import type { ReactNode } from 'react';
import type { LampName } from '../../session/light';
import { COMMA, SEMICOLON, STOP } from './marks';

interface LampValues {
  readonly azimuth: ReactNode;
  readonly elevation: ReactNode;
  readonly softness: ReactNode;
  readonly strength: ReactNode;
}

interface LampWords {
  readonly name: string;
  readonly on: (v: LampValues) => ReactNode;
  readonly off: (strength: ReactNode) => ReactNode;
  readonly labels: Readonly<Record<keyof LampValues, string>>;
  readonly caution: string;
}

const labels = (name: string): LampWords['labels'] => ({
  azimuth: `Direction of the ${name}, degrees to the picture’s left (+) or right (−)`,
  elevation: `Height of the ${name} over the eyes, degrees`,
  softness: `Softness of the ${name}`,
  strength: `Strength of the ${name}`,
});

const lamp = (name: string, does: string, caution: string): LampWords => ({
  name,
  on: (v) => (
    <>
      The {name} stands {v.azimuth}
      {COMMA} {v.elevation}
      {SEMICOLON} it is {v.softness} and {v.strength}
      {STOP} {does}
    </>
  ),
  off: (strength) => (
    <>
      The {name} is {strength}.
    </>
  ),
  labels: labels(name),
  caution,
});

const LAMP_WORDS: Readonly<Record<LampName, LampWords>> = {
  key: lamp(
    'key light',
    'It shapes the face.',
    'Keep bright lamps out of the line of sight: nobody should have to look into one.',
  ),
  fill: lamp(
    'fill light',
    'It opens the shadows and casts none.',
    'A large box catches a draught: weigh its stand down.',
  ),
  hair: lamp(
    'hair light',
    'It parts hair and shoulders from the wall.',
    'On a boom it hangs over a head: a counterweight, a safety cord, and nobody below while it is moved.',
  ),
  background: {
    ...lamp('background light', '', 'It gets hot: keep it off paper and cloth.'),
    on: (v) => (
      <>
        The background light falls on the wall {v.azimuth}
        {COMMA} {v.elevation}
        {SEMICOLON} its pool is {v.softness} and {v.strength}
        {STOP}
      </>
    ),
  },
};

/** Beyond this a lamp stands behind the sitter. */
const BEHIND = Math.PI / 2;

/** The lights in English. */
export const light = {
  lamps: LAMP_WORDS,
  azimuth: (azimuth: number, size: string): string => {
    if (azimuth === 0) return 'straight in front';
    const side = azimuth > 0 ? 'left' : 'right';
    return `${size} to the picture’s ${side}${Math.abs(azimuth) > BEHIND ? ', behind the sitter' : ''}`;
  },
  elevation: (elevation: number, size: string): string =>
    elevation === 0
      ? 'level with the eyes'
      : `${size} ${elevation > 0 ? 'above' : 'below'} the eyes`,
  soft: (share: number): string =>
    share < 0.15 ? 'hard' : share < 0.35 ? 'half soft' : share < 0.65 ? 'soft' : 'very soft',
  softNote: 'The width of the light over its distance: 5 % is hard, 100 % is very soft.',
  strength: (share: number, shown: string): string =>
    share === 0
      ? 'off'
      : share === 1
        ? 'of the usual strength'
        : `at ${shown} of the usual strength`,
  caution:
    'Keep lamps out of the line of sight and away from children, tape cables down, and weigh every stand; a boom wants a counterweight.',
  usual: 'Lights in their usual places',
};
