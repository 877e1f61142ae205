/** What the rail says. */
import {
  PERSONAL_DISTANCES,
  type PersonalDistance,
  personalDistance,
} from '../../readings/proxemics';
import { formatLength, formatNumber, METRES_PER, type Units } from '../../readings/quantities';
import type { FocusGroup, RailContent, RailPicture } from './types';

export const showDistance = (metres: number, units: Units): string =>
  formatLength(metres, units, 'distance');

export const showFrame = (metres: number, units: Units): string =>
  formatLength(metres, units, 'frame');

/** A distance as it is read aloud: whole words, no symbols. */
export function speakDistance(metres: number, units: Units): string {
  if (units === 'metric') return `${formatNumber(metres, 2)} metres`;
  const inches = Math.round((metres / METRES_PER.in) * 2) / 2;
  const feet = Math.floor(inches / 12);
  const rest = inches - 12 * feet;
  const parts = [
    feet > 0 ? `${feet} ${feet === 1 ? 'foot' : 'feet'}` : '',
    rest > 0 || feet === 0 ? `${rest} ${rest === 1 ? 'inch' : 'inches'}` : '',
  ];
  return parts.filter(Boolean).join(' ');
}

/** The slider's value in words, with the reason when a limit is met. */
export function speakStandpoint(metres: number, units: Units, reason: string | undefined): string {
  const place = `${speakDistance(metres, units)} from the eyes, ${personalDistance(metres)} distance`;
  return reason ? `${place}. ${reason}` : place;
}

/** A band of personal distance along the line, metres. */
export interface Zone {
  readonly name: PersonalDistance;
  readonly from: number;
  readonly to: number;
}

export const ZONES: readonly Zone[] = PERSONAL_DISTANCES.map(({ band, upTo }, i) => ({
  name: band,
  from: PERSONAL_DISTANCES[i - 1]?.upTo ?? 0,
  to: upTo,
}));

/** A zone's label, from full to short. */
export function zoneTexts({ name, from, to }: Zone, units: Units): string[] {
  const limit = Number.isFinite(to)
    ? `to ${showDistance(to, units)}`
    : `from ${showDistance(from, units)}`;
  return [`${name} distance, ${limit}`, `${name}, ${limit}`, name];
}

/** All zones in one sentence, for those who cannot see the line. */
export function zonesSentence(units: Units): string {
  const parts = ZONES.map((zone) => zoneTexts(zone, units)[1]);
  return `Bands of personal distance (Hall 1966): ${parts.join('; ')}.`;
}

/** Said wherever the stretched scale is drawn. */
const STRETCHED = 'stretched near the sitter: angles are not to scale';
export const STRETCHED_TEXTS = [
  [STRETCHED],
  ['stretched near the sitter:', 'angles are not to scale'],
  ['stretched: angles', 'are not to scale'],
] as const;

/** Two lines of nearly equal length. */
export function splitInTwo(text: string): string[] {
  const words = text.split(' ');
  const options = words.slice(1).map((_, i) => ({
    lines: [words.slice(0, i + 1).join(' '), words.slice(i + 1).join(' ')],
  }));
  const longest = ({ lines }: { lines: string[] }) => Math.max(...lines.map((l) => l.length));
  return options.sort((a, b) => longest(a) - longest(b))[0]?.lines ?? [text];
}

/** How high the frame is at the eyes; each picture's own where they differ. */
export function frameTexts({ pictures, units }: RailContent, shared: boolean): string[][] {
  const height = ({ frame }: RailPicture) => showFrame(frame.top - frame.bottom, units);
  const [first] = pictures;
  if (!first) return [];
  if (shared) return [[`frame of ${height(first)}`, 'at the eyes'], [height(first)]];
  const each = pictures.map((picture) => `${picture.letter} ${height(picture)}`);
  return [['frames at the eyes:', each.join(', ')], each];
}

export function keptTexts({ room, units }: RailContent): string[][] {
  const depth = showDistance(room.behindCamera, units);
  return [[`${depth} kept`, 'for you'], [depth, 'kept', 'for you'], [`${depth} kept for you`]];
}

/** "A focuses from 0.35 m", "A and B focus from 0.92 m". */
export function focusText({ distance, letters, lenses }: FocusGroup, units: Units): string {
  const who = [...letters, ...lenses];
  return `${joinAnd(who)} ${who.length > 1 ? 'focus' : 'focuses'} from ${showDistance(distance, units)}`;
}

function joinAnd(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/** The narrow rail's note: what the wide one writes into the drawing. */
export function noteSentences(
  content: RailContent,
  shared: boolean,
  groups: readonly FocusGroup[],
): string[] {
  const { room, units } = content;
  const frame = frameTexts(content, shared)[0]?.join(' ');
  const places = [
    `backdrop ${showDistance(room.backdrop, units)} behind`,
    `wall at ${showDistance(room.cameraWall, units)}`,
    ...(room.behindCamera > 0 ? [`${showDistance(room.behindCamera, units)} kept for you`] : []),
  ];
  const focus = groups.map((group) => focusText(group, units)).join(', ');
  return [
    ...(content.scale === 'stretched' ? [STRETCHED] : []),
    ...(frame ? [frame] : []),
    places.join(', '),
    ...(focus ? [focus] : []),
  ].map((sentence) => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`);
}
