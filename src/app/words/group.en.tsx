import type { ReactNode } from 'react';
import type { RowCurve } from '../../plan/group';
import type { GroupRow } from '../../session/types';
import { COMMA, STOP } from './marks';

/** The group in English. */
export const group = {
  none: 'No group stands here yet.',
  make: 'Begin with a group of twelve, in two rows',
  dissolve: 'No group any more',
  addRow: 'Add a row behind',
  removeRow: (n: number) => `Remove row ${n}`,
  remove: 'remove',
  row: (v: {
    number: number;
    place: ReactNode;
    people: ReactNode;
    spacing: ReactNode;
  }): ReactNode => (
    <>
      Row {v.number}: {v.people}, {v.place}
      {COMMA} {v.spacing} from head to head{STOP}
    </>
  ),
  whole: (v: { rows: ReactNode; curve: ReactNode; step: ReactNode | null }): ReactNode => (
    <>
      The rows are {v.rows} apart and {v.curve}
      {v.step && <>; one step is {v.step} high</>}
      {STOP}
    </>
  ),
  places: {
    seated: 'seated',
    standing: 'standing',
    step: 'on a step',
  } satisfies Record<GroupRow['place'], string>,
  curves: { straight: 'straight', curved: 'curved about the camera' },
  curveNotes: {
    straight: 'Everybody is equally deep: heads at the ends are drawn wider, none is drawn larger.',
    curved:
      'Everybody is equally far from the lens: the ends come forward, and are drawn larger and wider still.',
  },
  people: (n: number) => (n === 1 ? '1 person' : `${n} people`),
  labels: {
    place: 'How the row stands',
    people: 'Who is in the row',
    spacing: 'From head to head in the row',
    rows: 'From row to row',
    curve: 'Straight or curved',
    step: 'Height of one step',
  },
  more: 'one more',
  fewer: 'one fewer',
  moreOf: (name: string) => `One more: ${name}`,
  fewerOf: (name: string) => `One fewer: ${name}`,
  full: (most: number) => `The group holds ${most} people at the most.`,
  addWanted: 'Add a picture of the group',
  /** What it does from one standpoint. */
  does: {
    title: (distance: string) => `From ${distance} to the first row`,
    width: (width: string) => `The frame must be ${width} wide at the front row, margins with it.`,
    backdrop: (distance: string) =>
      `The back row would stand in the backdrop: the front row must be at least ${distance} before it.`,
    heads: (share: string, curve: RowCurve, rows: number) =>
      curve === 'straight'
        ? `Heads of the front row are drawn ${share} larger than those of the back row.`
        : rows > 1
          ? `Heads at the ends of the front row are drawn ${share} larger than in the middle of the back row.`
          : `Heads at the ends are drawn ${share} larger than in the middle.`,
    keep: (share: string, distance: string, apart: string | null) =>
      `To keep them within the ${share} that is asked, stand at least ${distance} before the front row${apart === null ? '' : `, or keep the back row within ${apart} of it`}.`,
    focus: (focus: string, fNumber: string, rows: number) =>
      `Focus at ${focus}: ${rows === 1 ? 'ends and middle are' : rows === 2 ? 'both rows are' : 'all rows are'} then sharp from ${fNumber} on. It lies nearer to the front than the middle, and not at a third.`,
    ends: (v: { curve: RowCurve; isChosen: boolean; across: string; up: string }) =>
      v.curve === 'straight'
        ? `Straight${v.isChosen ? '' : ' instead'}, a head at the end is drawn ${v.across} wider and no higher.`
        : `Curved${v.isChosen ? '' : ' instead'}, a head at the end is drawn ${v.across} wider and ${v.up} higher.`,
    limit: (v: { row: number | null; aside: string; forward: string | null; people: string }) =>
      `To stay under the stretch that was asked, the ends${v.row === null ? '' : ` of row ${v.row}`} stand at most ${v.aside} from the middle${v.forward === null ? '' : ` and ${v.forward} before it`}: ${v.people} in the row.`,
  },
};
