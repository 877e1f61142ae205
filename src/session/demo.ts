/** The session a newcomer meets: the head-shot day of an amateur theatre company. */
import { UPRIGHT } from '../sitter/types';
import { USUAL_LIGHT } from './light';
import { USUAL_ASKED } from './plan-asked';
import { type PlanWanted, SESSION_VERSION, type Session } from './types';
import { USUAL } from './usual';

const wanted = (number: string, framing: string, eyesAt: number): PlanWanted => ({
  id: `wanted-${number}`,
  framing,
  frameHeight: null,
  orientation: 'portrait',
  eyesAt,
  cameraHeight: 0,
  of: '1',
});

/**
 * A village hall's committee room, 5.20 m long: the backdrop hangs 0.20 m off the end wall, the sitter
 * stands 1.20 m before it, which leaves 3.80 m to the wall behind the camera.
 */
const DEMO: Session = {
  version: SESSION_VERSION,
  title: 'Head-shot day, village hall players',
  units: 'metric',
  people: [{ id: '1', model: 'adult-woman', changes: {}, pose: UPRIGHT, looks: {}, gaze: 'lens' }],
  beside: { right: 0.45, forward: 0 },
  kits: [
    {
      id: 'kit-1',
      name: 'Kit',
      bodies: [{ id: 'body-1', name: 'Body', format: 'full-frame', megapixels: 24 }],
      body: 'body-1',
      lenses: ['35-f2', '85-f1-8', '28-70-f4-zoom', '70-300-f4-5-6-zoom'],
    },
  ],
  kit: 'kit-1',
  ownLenses: [],
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
  room: {
    name: 'Committee room',
    length: 5.2,
    width: 3.4,
    ceiling: 2.6,
    axis: 'along',
    aside: 0,
    backdrop: { offWall: 0.2, width: 1.35, top: 2.3 },
    sitterBefore: 1.2,
    behindCamera: 0.6,
    obstacles: [
      {
        id: 'thing-1',
        name: 'Piano',
        kind: 'thing',
        x: 2.1,
        y: 2.8,
        length: 1.5,
        width: 0.6,
        height: 1.25,
      },
      {
        id: 'thing-2',
        name: 'Costume rail',
        kind: 'thing',
        x: 1.4,
        y: 0.05,
        length: 1.5,
        width: 0.5,
        height: 1.7,
      },
      {
        id: 'thing-3',
        name: 'Door',
        kind: 'door',
        x: 4.2,
        y: 0,
        length: 0.85,
        width: 0.85,
        height: 2,
      },
    ],
  },
  plan: {
    wanted: [
      wanted('1', 'headshot', 0.33),
      wanted('2', 'head-and-shoulders', 0.33),
      wanted('3', 'half-length', 0.26),
      wanted('4', 'three-quarter', 0.2),
      wanted('5', 'full-length', 0.135),
    ],
    asked: USUAL_ASKED,
    group: null,
    picture: 'B',
  },
  play: { from: 'A', to: 'B', seconds: 4 },
  printHeight: 0.3,
  notes: '',
  ...USUAL,
};

export const demoSession = (): Session => DEMO;
