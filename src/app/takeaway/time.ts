/** How far long work is and how long it still takes. */
import { formatPercent } from '../../readings/format';
import { takeAway as said } from '../words/takeaway.en';

/** Before so much is done, or so many seconds have passed, nothing is told of the time left. */
const LEAST_SHARE = 0.02;
const LEAST_SECONDS = 1.5;

/** "40 % done, 12 seconds left"; `seconds` have passed since it began. */
export function progressWords(share: number, seconds: number): string {
  const percent = formatPercent(Math.floor(100 * share) / 100);
  if (share < LEAST_SHARE || share >= 1 || seconds < LEAST_SECONDS)
    return said.rendering(percent, null);
  const left = Math.ceil((seconds * (1 - share)) / share);
  return said.rendering(
    percent,
    left < 90 ? said.seconds(left) : said.minutes(Math.round(left / 60)),
  );
}
