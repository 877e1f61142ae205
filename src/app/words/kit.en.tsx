import type { ReactNode } from 'react';
import { COMMA, STOP } from './marks';

/** Kit, lenses and their measuring in English. */
export const kit = {
  kits: (v: {
    name: ReactNode;
    choose: ReactNode | null;
    add: ReactNode;
    remove: ReactNode | null;
  }): ReactNode => (
    <>
      The kit in use is {v.name}
      {STOP} {v.choose} {v.add} {v.remove}
    </>
  ),
  chooseKit: 'Use another kit',
  addKit: 'Add a kit',
  newKit: 'New kit',
  removeKit: 'Remove this kit',
  bodies: 'Bodies',
  body: (v: { name: ReactNode; format: ReactNode; megapixels: ReactNode }): ReactNode => (
    <>
      {v.name}: {v.format}
      {COMMA} {v.megapixels}
      {STOP}
    </>
  ),
  inUse: 'In use in Compare.',
  use: 'Use it',
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  chooseOf: (name: string) => `Use ${name} in Compare`,
  addBody: 'Add a body',
  newBody: 'Second body',
  lenses: 'Lenses',
  lens: (v: {
    name: string;
    nearest: string;
    widest: string;
    smallest: string;
    pupil: string | null;
  }) =>
    `${v.name}: focuses from ${v.nearest}, ${v.widest} to ${v.smallest}${v.pupil === null ? '' : `, entrance pupil ${v.pupil} before the sensor mark, measured`}.`,
  typed: (first: string, second: string) => (first === second ? first : `${first}–${second}`),
  edit: 'Change',
  editOf: (name: string) => `Change the figures of ${name}`,
  measure: 'Measure it',
  measureOf: (name: string) => `Measure ${name}`,
  addLens: (classes: ReactNode, typed: ReactNode): ReactNode => (
    <>
      Add {classes} or {typed}.
    </>
  ),
  aClass: 'a lens of a usual class',
  typeLens: 'type a lens by its figures',
  typeTitle: 'A lens by its figures',
  measureTitle: (name: string) => `Measure ${name}`,
  measureHow:
    'Hold a tape before the lens at two distances, about two and three metres. Focus on it at the nearer one, or tell below where else, and leave focus and zoom as they are. Read at both how much of the tape fills the long side of the frame. Distances run from the sensor mark on the body.',
  measureWhy:
    'From the two frames follows where the entrance pupil is, the point that perspective runs from, and the angle that the lens takes in.',
  measured: (v: { pupil: string; angle: string; focal: string; error: string }) =>
    `Entrance pupil ${v.pupil} before the sensor mark (± ${v.error} if the tape is read to 5 mm); ${v.angle} on the long side; it acts as ${v.focal} at that focus.`,
  useMeasure: 'Use the lens so from now on',
  take: 'Put it in the kit',
  save: 'Keep the figures',
  faults: {
    'not-a-number': 'One of the figures is not a number.',
    'not-positive': 'Distances and frames are greater than zero.',
    'equal-distances': 'Both frames are at one distance. Measure at two.',
    'frame-not-growing': 'The farther frame is not the larger one. Check which is which.',
    'pupil-before-lens':
      'The entrance pupil would lie before the front of the lens. Check the tape: it starts at the sensor mark.',
    'focus-behind-pupil': 'The focus would lie behind the entrance pupil. Check the distances.',
  },
  impossible: 'No lens can have these figures. Check both distances and both frames.',
  figures: {
    name: 'Name',
    shortest: 'Shortest focal length, mm',
    longest: 'Longest focal length, mm; the same for a lens without zoom',
    widest: 'Widest aperture at the shortest',
    widestLong: 'Widest aperture at the longest',
    smallest: 'Smallest aperture',
    nearest: 'Nearest focus, from the sensor mark',
    magnification: 'Largest magnification, if known (0.25 for 1 : 4)',
    length: 'Sensor mark to the front of the lens',
    pupil: 'Entrance pupil before the sensor mark, if known',
    near: 'Nearer distance on the tape',
    nearFrame: 'What fills the long side there',
    far: 'Farther distance on the tape',
    farFrame: 'What fills the long side there',
    focusedAt: 'Distance it was focused at, if not the nearer one',
    mark: 'Focal length set on the lens, mm',
  },
  notes: {
    magnification: 'With it the lens’s own narrowing at near focus is counted.',
    pupil: '“Measure it” finds it with a tape.',
    focusedAt: (farthest: string) =>
      `On the tape. For a lens focused on infinity, ${farthest}. The angle holds for this focus: at another the lens may take in more or less.`,
  },
  ownName: 'Own lens',
  longestFirst: 'The longest focal length is shorter than the shortest.',
  wideFirst: 'The smallest aperture is wider than the widest.',
  thin: 'Without largest magnification a lens is taken as simple: its narrowing at near focus is left out.',
};
