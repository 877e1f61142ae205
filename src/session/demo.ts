/** The session a newcomer meets: the head-shot day of an amateur theatre company. */
import { UPRIGHT } from '../sitter/types';
import { USUAL_LIGHT } from './light';
import { SESSION_VERSION, type Session } from './types';

/**
 * A small village hall, 5.20 m long: the backdrop hangs 0.20 m off the end wall, the sitter
 * stands 1.20 m before it, which leaves 3.80 m to the wall behind the camera.
 */
const DEMO: Session = {
  version: SESSION_VERSION,
  title: 'Head-shot day, village hall players',
  units: 'metric',
  people: [{ id: '1', model: 'adult-woman', changes: {}, pose: UPRIGHT, looks: {}, gaze: 'lens' }],
  beside: { right: 0.45, forward: 0 },
  body: { format: 'full-frame', megapixels: 24 },
  lenses: ['35-f2', '85-f1-8', '28-70-f4-zoom', '70-300-f4-5-6-zoom'],
  crop: {
    hold: 'frame-height',
    frameHeight: 0.42,
    framing: 'headshot',
    orientation: 'portrait',
    eyesAt: 0.33,
    eyesAcross: 0.5,
  },
  kept: 'crop',
  pictures: [
    {
      letter: 'A',
      of: ['1'],
      standpoint: 0.4,
      view: { by: 'crop' },
      fNumber: 8,
      cameraHeight: 0,
      tilt: 0,
      lens: null,
    },
    {
      letter: 'B',
      of: ['1'],
      standpoint: 2.4,
      view: { by: 'crop' },
      fNumber: 8,
      cameraHeight: 0,
      tilt: 0,
      lens: null,
    },
  ],
  light: USUAL_LIGHT,
  room: { backdrop: 1.2, cameraWall: 3.8, behindCamera: 0.6 },
  play: { from: 'A', to: 'B', seconds: 4 },
  printHeight: 0.3,
  notes: '',
};

export const demoSession = (): Session => DEMO;
