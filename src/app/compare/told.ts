/** What a picture shows, for somebody who does not see it: sentences of its readings. */
import { readings, type Speaking } from '../../readings/read';
import type { ReadingId } from '../../readings/rows';
import type { Shown } from './shown';

const TOLD: ReadonlySet<ReadingId> = new Set([
  'standpoint_m',
  'nose_to_ear_ratio',
  'background_size_ratio',
]);

export const tell = ({ measures }: Shown, speaking: Speaking): string =>
  readings(measures, speaking)
    .filter(({ id }) => TOLD.has(id))
    .map(({ meaning }) => meaning)
    .join(' ');
