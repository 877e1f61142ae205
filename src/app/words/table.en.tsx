import type { ReactNode } from 'react';
import { formatLength, type Units } from '../../readings/format';
import { LIMITS, MOST } from '../../session/limits';
import type { StandpointsRefused } from '../../session/standpoint-list';
import { COMMA, STOP } from './marks';

/** English words of tables and charts over a range of standpoints. */
export const table = {
  title: 'Table and charts',
  sentence: (v: { standpoints: ReactNode; sitters: ReactNode; readings: ReactNode }): ReactNode => (
    <>
      {v.standpoints}
      {COMMA} of {v.sitters}
      {COMMA} with {v.readings}
      {STOP}
    </>
  ),
  note: (letter: string) =>
    `The crop, the height of the camera and the aperture are those of picture ${letter}. Each sitter is alone in it, those added in the pose of the first.`,
  standpoints: 'Standpoints',
  standpointsShown: (count: number, from: string, to: string) =>
    count === 1 ? `One standpoint, ${from}` : `${count} standpoints, ${from} to ${to}`,
  noStandpoints: 'No standpoints',
  range: 'In even steps',
  start: 'From',
  end: 'To',
  step: 'In steps of',
  list: 'Or one by one, such as 0.4, 60 cm, 2 ft',
  refused: (refused: StandpointsRefused, units: Units): string => {
    const show = (metres: number) => formatLength(metres, units, 'distance');
    switch (refused.kind) {
      case 'unreadable':
        return refused.why;
      case 'outside': {
        const { least, most } = LIMITS.standpoint;
        return `${Number.isFinite(refused.metres) ? show(refused.metres) : 'That'} is no standpoint. They lie between ${show(least)} and ${show(most)}.`;
      }
      case 'step':
        return 'That is no step from one standpoint to the next. Try 0.1 m.';
      case 'none':
        return 'No standpoint is typed. Try 0.4, 0.6, 1.2.';
      case 'many':
        return `${Number.isFinite(refused.count) ? refused.count : 'So many'} standpoints are too many for one table. Up to ${MOST.tabled} fit: take larger steps.`;
    }
  },
  withPictures: 'With the pictures’ own standpoints',
  sitters: 'Sitters',
  sittersShown: (names: readonly string[]) =>
    names.length === 0
      ? 'nobody'
      : names.length < 3
        ? names.join(' and ')
        : `${names[0]} and ${names.length - 1} others`,
  inPictures: (name: string) => `${name} in the pictures`,
  readings: 'Readings',
  readingsShown: (count: number) => (count === 1 ? 'one reading' : `${count} readings`),
  caption: 'Readings from each standpoint',
  standpoint: 'Standpoint',
  picture: 'Picture',
  si: (name: string, unit: string) => `${name} (${unit})`,
  copy: 'Copy the table',
  copied: 'Copied.',
  notCopied: 'The browser did not allow copying.',
  saveCsv: 'Save as CSV',
  saved: (name: string) => `Saved as ${name}.`,
  chart: 'Chart',
  chartOf: (v: { reading: ReactNode; scale: ReactNode }): ReactNode => (
    <>
      {v.reading} on a scale {v.scale}
      {STOP}
    </>
  ),
  charted: 'Reading in the chart',
  scale: 'Scale of the distance',
  scales: { even: 'even in distance', inverse: 'even in 1/d' },
  scaleNotes: {
    even: 'As a tape measures it.',
    inverse: 'Equal lengths change the face about equally.',
  },
  saveSvg: 'Save the chart as SVG',
  waiting: 'The sitters are being built and measured.',
  failed: (why: string) => `Not everybody could be measured: ${why}`,
  nothing: 'Choose standpoints, a sitter and a reading.',
  leftOut: (shown: number, all: number) =>
    `${shown} of ${all} standpoints are shown here, evenly chosen; Take away saves them all as CSV.`,
};
