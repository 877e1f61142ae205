/** What a passed limit says on screen: the limit first, then the smallest changes that would do. */
import {
  formatAngle,
  formatFNumber,
  formatFocal,
  formatLength,
  type Units,
} from '../readings/format';
import type { Limit, Remedy } from './limit';

/** The smallest part shown of each: centimetres or half inches, tenths. */
function partOf(change: Remedy['change'], units: Units): number {
  if (change === 'focal') return 0.0001;
  if (change === 'f-number') return 0.1;
  return units === 'imperial' ? 0.0127 : 0.01;
}

/** Rounds to what is shown, towards the side that does. */
function safely({ change, value, atLeast }: Remedy, units: Units): number {
  const part = partOf(change, units);
  // A value that is round already must not be pushed on by its last bit.
  const parts = value / part;
  const whole = Math.round(parts);
  const settled = Math.abs(parts - whole) < 1e-6 ? whole : parts;
  return (atLeast ? Math.ceil(settled) : Math.floor(settled)) * part;
}

function remedyWords(remedy: Remedy, units: Units): string {
  const value = safely(remedy, units);
  switch (remedy.change) {
    case 'standpoint':
      return `stand at ${formatLength(value, units, 'distance')} or ${remedy.atLeast ? 'farther' : 'nearer'}`;
    case 'frame-height':
      return `take a frame of ${formatLength(value, units, 'frame')} or ${remedy.atLeast ? 'more' : 'less'}`;
    case 'focal':
      return `use ${formatFocal(value)} or ${remedy.atLeast ? 'longer' : 'shorter'}`;
    case 'f-number':
      return `use ${formatFNumber(value)} or ${remedy.atLeast ? 'a larger number' : 'a smaller number'}`;
    case 'camera-height':
      return `bring the camera within ${formatLength(Math.abs(remedy.value), units, 'distance')} of the eyes' height`;
    case 'tilt':
      return `tilt the camera to ${formatAngle(remedy.value)}`;
  }
}

function limitWords({ reason, limit, asked, lens }: Limit, units: Units): string {
  const name = `The ${lens?.name ?? 'lens'}`;
  switch (reason) {
    case 'lens-too-short':
      return `${name} ends at ${formatFocal(limit)}; this picture needs ${formatFocal(asked)}.`;
    case 'lens-too-long':
      return lens
        ? `${name} begins at ${formatFocal(limit)}; this picture needs ${formatFocal(asked)}.`
        : `From here the whole picture of ${formatFocal(asked)} is smaller than the frame.`;
    case 'too-near-to-focus':
      return `${name} focuses from ${formatLength(limit, units, 'distance')} on the tape; this is ${formatLength(asked, units, 'distance')}.`;
    case 'aperture-too-wide':
      return `${name} opens to ${formatFNumber(limit)} here; ${formatFNumber(asked)} was asked.`;
    case 'aperture-too-small':
      return `${name} closes to ${formatFNumber(limit)}; ${formatFNumber(asked)} was asked.`;
    case 'inside-focal-length':
      return `A lens of ${formatFocal(limit)} focuses nothing as near as ${formatLength(asked, units, 'distance')}.`;
    case 'frame-too-small':
      return `This lens would frame only ${formatLength(asked, units, 'frame')} from here; ${formatLength(limit, units, 'frame')} is the least drawn.`;
    case 'camera-too-high':
      return `From this standpoint the camera can be at most ${formatLength(limit, units, 'distance')} above or below the eyes.`;
    case 'behind-camera':
      return `The axis may point at most ${formatAngle(limit)} past the eyes; this is ${formatAngle(asked)}.`;
    case 'no-room':
      return `Your back meets the wall: the sensor can be ${formatLength(limit, units, 'distance')} from the eyes, this is ${formatLength(asked, units, 'distance')}.`;
    case 'no-clearance':
      return `${name} would reach past the nose tip by ${formatLength(-asked, units, 'depth')}.`;
    case 'outside-frame':
      return `The frame of ${formatLength(limit, units, 'frame')} does not hold both heads.`;
    default:
      return 'This picture cannot be taken.';
  }
}

/** One passed limit in one or two sentences. */
export function limitSentence(limit: Limit, units: Units): string {
  const said = limitWords(limit, units);
  const ways = limit.remedies.map((remedy) => remedyWords(remedy, units));
  if (ways.length === 0) return said;
  const joined = ways.join(', or ');
  return `${said} Would do: ${joined}.`;
}
