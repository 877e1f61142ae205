/** The readings in English. A second language is one more object of the same type. */
import { formatNumber, formatPercent, formatStops } from './format';
import type { Difference, Words } from './words';
import { FACE_EN } from './words.en.face';
import { LENS_EN } from './words.en.lens';
import { larger } from './words.en.phrases';
import { SCENE_EN } from './words.en.scene';

const WAYS = {
  more: ['more', 'less'],
  larger: ['larger', 'smaller'],
  longer: ['longer', 'shorter'],
  nearer: ['farther', 'nearer'],
  wider: ['wider', 'narrower'],
  higher: ['higher', 'lower'],
} as const;

export const EN: Words = {
  locale: 'en',
  rows: { ...FACE_EN, ...SCENE_EN, ...LENS_EN },
  pair: {
    nose_to_ear_gain_against_other_percent: {
      name: (a, b) => `Gain of the nose, ${a.letter} against ${b.letter}`,
      formula: 'nose-to-ear ratio of the one / that of the other − 1',
      meaning: (a, b, value) =>
        `${a.letter} draws the nose ${larger(1 + value)} for the ears, set against ${b.letter}.`,
      missing: 'In one of the pictures the lens would stand inside the face.',
    },
    match_the_look_distance_m: {
      name: (a, b) => `Distance at which ${a.letter} matches the look of ${b.letter}`,
      formula: 'd = z nose + (z nose − z ears) / gain of the other picture',
      meaning: (a, b, _value, shown) =>
        `From ${shown}, ${a.letter} draws the nose for the ears as ${b.letter} does.`,
      missing: 'No distance draws the nose for the ears as the other picture does.',
    },
  },
  codes: { intimate: 'intimate', personal: 'personal', social: 'social', public: 'public' },
  yes: 'yes',
  no: 'no',
  infinite: 'no limit',
  none: '–',
  missing: 'This cannot be measured here.',
  stops: (value) => `${formatStops(value)} ${formatStops(value) === '1.0' ? 'stop' : 'stops'}`,
  megapixels: (value) => `${formatNumber(value, 1)} MP`,
  equal: 'equal',
  nearlyEqual: 'nearly equal',
  difference: (comparing, difference: Difference) => {
    const [up, down] = WAYS[comparing];
    const amount =
      difference.kind === 'share' ? formatPercent(Math.abs(difference.by)) : difference.shown;
    return `${amount} ${difference.by > 0 ? up : down}`;
  },
};
