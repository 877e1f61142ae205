import {
  type LandmarkName,
  MIDLINE_LANDMARKS,
  type MidlineLandmark,
  PAIRED_LANDMARKS,
  type PairedLandmark,
} from '../../sitter/types';

/** Landmarks in plain words, the term of anthropometry beside each. */
const PLAIN: Readonly<Record<MidlineLandmark | PairedLandmark, string>> = {
  vertex: 'crown',
  opisthocranion: 'back of the head',
  glabella: 'brow, midline',
  sellion: 'root of the nose',
  pronasale: 'nose tip',
  subnasale: 'base of the nose',
  labrale_superius: 'upper lip',
  stomion: 'mouth line',
  labrale_inferius: 'lower lip',
  pogonion: 'front of the chin',
  menton: 'underside of the chin',
  suprasternale: 'notch of the neck',
  cervicale: 'nape',
  pupil: 'pupil',
  endocanthion: 'inner eye corner',
  ectocanthion: 'outer eye corner',
  alare: 'nostril wing',
  cheilion: 'mouth corner',
  zygion: 'cheekbone',
  tragion: 'ear, at its flap',
  gonion: 'angle of the jaw',
  frontotemporale: 'temple',
  euryon: 'widest point of the head',
  superaurale: 'top of the ear',
  subaurale: 'lobe of the ear',
  postaurale: 'rim of the ear',
  acromion: 'shoulder tip',
  deltoid: 'upper arm',
  elbow: 'elbow',
  wrist: 'wrist',
  knee: 'knee',
  fingertip: 'fingertip',
};

export interface NamedLandmark {
  readonly id: LandmarkName;
  readonly name: string;
  readonly term: string;
}

const term = (name: string): string => name.replaceAll('_', ' ');

/** All landmarks as a list shows them; sides are the sitter's own. */
export const landmarkWords: readonly NamedLandmark[] = [
  ...MIDLINE_LANDMARKS.map((id) => ({ id, name: PLAIN[id], term: term(id) })),
  ...PAIRED_LANDMARKS.flatMap((name) =>
    (['left', 'right'] as const).map((side) => ({
      id: `${name}_${side}` as const,
      name: `${PLAIN[name]}, ${side}`,
      term: `${term(name)}, the sitter’s ${side}`,
    })),
  ),
];
