/** What the contact sheets show. */
import { readdirSync } from 'node:fs';
import { ARMS, BEARDS, CLOTHES, HAIR_STYLES } from '../../src/sitter/types';
import type { Cell, Sheet } from './cell';

const people = (): string[] =>
  readdirSync('models/sitters')
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -5))
    .sort();

const ANGLES = [
  ['front', 0],
  ['three-quarter', -40],
  ['profile', -90],
  ['back', 180],
] as const;
const ADULTS = ['adult-woman', 'adult-man'] as const;

const small = { width: 240, height: 300, samples: 4 } as const;

/** A sitter from four sides. */
const turns = (cell: Cell): Cell[] =>
  ANGLES.map(([side, turn]) => ({ ...cell, turn, label: `${cell.label}, ${side}` }));

const face = { frame: 0.4, distance: 1.5 } as const;
const whole = { frame: 2.1, distance: 4, eyesAt: 0.14 } as const;

const LIGHTS: readonly (Pick<Cell, 'light'> & { readonly label: string })[] = [
  { label: 'usual' },
  { label: 'key from the other side', light: { key: { azimuth: -38 }, fill: { azimuth: 40 } } },
  { label: 'key high in front', light: { key: { azimuth: 0, elevation: 50 } } },
  { label: 'key from the side', light: { key: { azimuth: 80, elevation: 15 } } },
  { label: 'small hard key', light: { key: { softness: 0.05 } } },
  { label: 'large soft key', light: { key: { softness: 0.9 } } },
  { label: 'fill off', light: { fill: { strength: 0 } } },
  { label: 'fill twice as strong', light: { fill: { strength: 2 } } },
  { label: 'hair light off', light: { hair: { strength: 0 } } },
  { label: 'hair light twice as strong', light: { hair: { strength: 2 } } },
  { label: 'background off', light: { background: { strength: 0 } } },
  { label: 'background twice as strong', light: { background: { strength: 2 } } },
];

const GAZES: readonly (Pick<Cell, 'gaze' | 'distance'> & { readonly label: string })[] = [
  { label: 'ahead' },
  { label: 'at the lens, 0.3 m', gaze: 'lens', distance: 0.3 },
  { label: 'at the lens, 4 m', gaze: 'lens', distance: 4 },
  { label: '30° to the sitter’s left', gaze: [30, 0] },
  { label: '30° to the right, 10° up', gaze: [-30, 10] },
  { label: '20° down', gaze: [0, -20] },
];

export const sheets = (): Sheet[] => [
  {
    ...small,
    name: 'people',
    columns: 4,
    cells: people().flatMap((person) => turns({ ...face, label: person, person, gaze: 'lens' })),
  },
  {
    ...small,
    name: 'people-clay',
    columns: 4,
    cells: people().flatMap((person) => turns({ ...face, label: person, person, look: 'clay' })),
  },
  {
    ...small,
    name: 'people-standing',
    columns: 6,
    height: 420,
    cells: people().map((person) => ({ ...whole, label: person, person })),
  },
  {
    ...small,
    name: 'distances',
    columns: 4,
    width: 300,
    height: 375,
    cells: ADULTS.flatMap((person) =>
      [0.3, 0.6, 1.5, 4].map(
        (distance): Cell => ({
          ...face,
          person,
          distance,
          gaze: 'lens',
          label: `${person}, ${distance} m`,
        }),
      ),
    ),
  },
  {
    ...small,
    name: 'hair',
    columns: 4,
    cells: ADULTS.flatMap((person) =>
      HAIR_STYLES.flatMap((hair) =>
        turns({ ...face, frame: 0.5, label: hair, person, looks: { hair } }),
      ),
    ),
  },
  {
    ...small,
    name: 'beards-and-glasses',
    columns: 4,
    cells: [
      ...BEARDS.flatMap((beard) =>
        turns({ ...face, label: `beard ${beard}`, person: 'adult-man', looks: { beard } }),
      ),
      ...ADULTS.flatMap((person) =>
        turns({ ...face, label: 'glasses', person, looks: { glasses: true } }),
      ),
    ],
  },
  {
    ...small,
    name: 'expressions',
    columns: 4,
    cells: ADULTS.flatMap((person) =>
      [0, 1].flatMap((smile) =>
        turns({ ...face, frame: 0.3, label: `smile ${smile}`, person, looks: { smile } }),
      ),
    ),
  },
  {
    ...small,
    name: 'clothes',
    columns: 4,
    height: 420,
    cells: ADULTS.flatMap((person) =>
      CLOTHES.flatMap((clothes) => turns({ ...whole, label: clothes, person, looks: { clothes } })),
    ),
  },
  {
    ...small,
    name: 'poses',
    columns: 6,
    height: 360,
    cells: ADULTS.flatMap((person) => [
      ...(['standing', 'seated'] as const).flatMap((stance) =>
        ARMS.filter((arms) => stance === 'seated' || arms !== 'lap').map(
          (arms): Cell => ({
            frame: stance === 'seated' ? 1.5 : 2.1,
            distance: 4,
            eyesAt: 0.16,
            person,
            label: `${stance}, arms ${arms}`,
            pose: { stance, arms },
            turn: -20,
          }),
        ),
      ),
      { ...whole, person, label: 'leaning', pose: { lean: 15, arms: 'folded' }, turn: -40 },
      { ...face, frame: 0.6, person, label: 'head turned', pose: { headTurn: 35 } },
      { ...face, frame: 0.6, person, label: 'head nodded', pose: { headNod: -15 } },
      { ...face, frame: 0.6, person, label: 'head tilted', pose: { headTilt: 15 } },
    ]),
  },
  {
    ...small,
    name: 'lights',
    columns: 4,
    cells: LIGHTS.map((light, i) => ({ ...face, ...light, person: ADULTS[i % 2] as string })),
  },
  {
    ...small,
    name: 'gaze',
    columns: 3,
    width: 420,
    height: 200,
    cells: GAZES.map((gaze) => ({ ...gaze, frame: 0.09, eyesAt: 0.5, person: 'adult-woman' })),
  },
  {
    ...small,
    name: 'company',
    columns: 2,
    width: 420,
    height: 420,
    cells: ['photo', 'clay'].map((look) => ({
      label: `two in one picture, ${look}`,
      person: 'adult-woman',
      frame: 0.95,
      eyesAcross: 0.31,
      distance: 2.5,
      gaze: 'lens',
      look: look as 'photo' | 'clay',
      beside: { person: 'adult-man', at: [0.36, 0.08, -0.08], turn: -12 },
    })),
  },
];
