import type { PlanContent, PlanFigure, PlanPicture } from '../../src/drawings/plan/types';
import { profileOutline } from '../../src/drawings/profile/outline';
import type { RoomAsked } from '../../src/plan/room';
import { runThrough } from '../../src/plan/run';
import { MANIKIN } from './shapes';

/** A small committee room, the backdrop before its end wall. */
export const ROOM: RoomAsked = {
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
      id: 'piano',
      name: 'piano',
      kind: 'thing',
      x: 0.75,
      y: 0.02,
      length: 1.5,
      width: 0.6,
      height: 1.2,
    },
    {
      id: 'rail',
      name: 'costume rail',
      kind: 'thing',
      x: 2.6,
      y: 2.85,
      length: 1.4,
      width: 0.5,
      height: 1.7,
    },
    {
      id: 'door',
      name: 'door',
      kind: 'door',
      x: 4.35,
      y: 0.2,
      length: 0.85,
      width: 0.85,
      height: 2,
    },
  ],
};

export const FIGURE: PlanFigure = {
  id: '1',
  name: 'sitter',
  eyes: [0, 0, 0],
  stepHeight: 0,
  seated: false,
  bodyTurn: 0,
  headTurn: 0,
  shoulders: { breadth: 0.48, depth: 0.24, behind: 0.09 },
  head: { breadth: 0.152, depth: 0.195, behind: 0.09 },
  nose: 0.035,
  crown: 0.115,
  chin: -0.115,
  shoulderHeight: -0.27,
  profile: profileOutline(MANIKIN),
};

export function pictureAt(
  letter: PlanPicture['letter'],
  standpoint: number,
  height: number,
  room: RoomAsked,
  lift = 0,
): PlanPicture {
  const depth = Math.sqrt(standpoint ** 2 - lift ** 2);
  const half = height / depth;
  const { cameraWall } = runThrough(room);
  return {
    letter,
    camera: {
      position: [0, lift, depth],
      tilt: 0 as PlanPicture['camera']['tilt'],
      frustum: {
        left: -0.4 * half,
        right: 0.4 * half,
        top: 0.4 * half - lift / depth,
        bottom: -0.6 * half - lift / depth,
      },
    },
    standpoint,
    sharp: [depth - 0.11, depth + 0.12],
    toSensor: 0.13,
    move: { min: 0.15, max: cameraWall },
    lift: { min: 0.3, max: 2.4 },
  };
}

export function contentIn(room: RoomAsked, changes: Partial<PlanContent> = {}): PlanContent {
  return {
    units: 'metric',
    room,
    eyeHeight: 1.51,
    people: [FIGURE],
    steps: [],
    pictures: [pictureAt('A', 0.5, 0.77, room), pictureAt('B', 2.5, 0.77, room)],
    chosen: 'B',
    focus: [
      { distance: 0.42, letter: 'A' },
      { distance: 0.96, letter: 'B' },
    ],
    lights: [],
    moves: {
      sitter: { min: 0.3, max: 4 },
      aside: { min: -1.5, max: 1.5 },
      backdrop: { min: 0, max: 2 },
      backdropTop: { min: 0.5, max: room.ceiling },
      obstacles: Object.fromEntries(
        room.obstacles.map(({ id, length, width }) => [
          id,
          [
            { min: 0, max: room.length - length },
            { min: 0, max: room.width - width },
          ] as const,
        ]),
      ),
    },
    ...changes,
  };
}

export const LIGHTS: PlanContent['lights'] = [
  {
    id: 'key',
    name: 'key light',
    x: 2.25,
    y: 2.55,
    height: 1.95,
    size: 0.6,
    inPicture: [],
    shadedBy: [],
    move: [
      { min: 0, max: 5.2 },
      { min: 0, max: 3.4 },
    ],
  },
  {
    id: 'fill',
    name: 'fill',
    x: 2.6,
    y: 1.2,
    height: 1.6,
    size: 0.8,
    inPicture: ['B'],
    shadedBy: ['A'],
    move: [
      { min: 0, max: 5.2 },
      { min: 0, max: 3.4 },
    ],
  },
];
