/** What the drawings of the room and the chart say. A language is one object of this type. */
import { formatAngle, formatLength, type Units } from '../../readings/quantities';
import type { Letter } from '../../session/types';
import { speakDistance, ZONES, zoneTexts } from '../rail/words';

/** Texts from the longest to the shortest, each as lines. */
export type Texts = readonly (readonly string[])[];

export interface PlanWords {
  readonly above: string;
  readonly side: string;
  readonly distance: (metres: number, units: Units) => string;
  /** A length as it is read aloud. */
  readonly spoken: (metres: number, units: Units) => string;
  readonly backdrop: string;
  readonly backdropTop: (height: string) => Texts;
  readonly kept: (depth: string) => Texts;
  readonly band: (index: number, units: Units) => Texts;
  readonly focus: (who: readonly string[], distance: string) => Texts;
  readonly sharp: (letter: Letter, near: string, far: string | null) => Texts;
  readonly lensAt: (height: string) => string;
  readonly light: (
    name: string,
    inPicture: readonly Letter[],
    shadedBy: readonly Letter[],
    outside: 'walls' | 'ceiling' | null,
  ) => Texts;
  readonly overBackdrop: (letters: readonly Letter[]) => Texts;
  readonly meetsCeiling: (letters: readonly Letter[]) => Texts;
  /** How wide a picture's field is at the backdrop, and its angle of view across. */
  readonly field: (letter: Letter, width: string) => Texts;
  readonly angle: (letter: Letter, radians: number) => Texts;
  readonly prints: (scale: number | null) => string;
  readonly drawnAt: (scale: number) => string;
  readonly standpointOf: (letter: Letter, distance: string) => string;
  readonly names: {
    readonly camera: (letter: Letter) => string;
    readonly lens: (letter: Letter) => string;
    readonly sitter: string;
    readonly aside: string;
    readonly backdrop: string;
    readonly backdropTop: string;
    readonly along: (name: string) => string;
    readonly across: (name: string) => string;
  };
  readonly values: {
    readonly fromEyes: (spoken: string) => string;
    readonly aboveFloor: (spoken: string) => string;
    readonly beforeBackdrop: (spoken: string) => string;
    readonly offWall: (spoken: string) => string;
    readonly aside: (spoken: string, left: boolean) => string;
    readonly fromEndWall: (spoken: string) => string;
    readonly fromSideWall: (spoken: string) => string;
  };
  readonly chart: {
    readonly title: string;
    readonly framing: string;
    readonly lens: string;
    readonly reaches: string;
    readonly works: string;
    readonly nowhere: string;
    readonly frame: (height: string) => string;
    readonly span: (from: string, to: string) => string;
    readonly standpoint: (letter: Letter) => string;
    /** Where a lens begins to reach, when that lies off the chart. */
    readonly fromOn: (distance: string) => string;
    readonly here: (reaches: boolean, works: boolean) => string;
  };
}

const and = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

export const PLAN_WORDS: PlanWords = {
  above: 'The room from above, to scale',
  side: 'The room from the side along the camera’s axis, to scale',
  distance: (metres, units) => formatLength(metres, units, 'distance'),
  spoken: speakDistance,
  backdrop: 'backdrop',
  backdropTop: (height) => [[`backdrop to ${height}`], ['backdrop', `to ${height}`], [height]],
  kept: (depth) => [[`${depth} kept for you`], [depth, 'kept', 'for you'], [depth]],
  band: (index, units) => {
    const zone = ZONES[index];
    return zone ? zoneTexts(zone, units).map((text) => [text]) : [];
  },
  focus: (who, distance) => {
    const verb = who.length > 1 ? 'focus' : 'focuses';
    return [[`${and(who)} ${verb} from ${distance}`], [`${and(who)} ${verb}`, `from ${distance}`]];
  },
  sharp: (letter, near, far) => {
    const range = far === null ? `from ${near}` : `${near} to ${far}`;
    return [[`${letter} sharp ${range}`], [`${letter} sharp`, range]];
  },
  lensAt: (height) => `lens at ${height}`,
  light: (name, inPicture, shadedBy, outside) => {
    const says = [
      ...(outside ? [outside === 'walls' ? 'outside the room' : 'above the ceiling'] : []),
      ...(inPicture.length > 0 ? [`in ${and(inPicture)}`] : []),
      ...(shadedBy.length > 0 ? [`shaded by ${and(shadedBy)}`] : []),
    ];
    return says.length > 0 ? [[`${name}: ${says.join(', ')}`], [`${name}:`, ...says]] : [[name]];
  },
  overBackdrop: (letters) => [
    [`${and(letters)} ${letters.length > 1 ? 'see' : 'sees'} over the backdrop`],
    [`${and(letters)}: over`, 'the backdrop'],
  ],
  meetsCeiling: (letters) => [
    [`${and(letters)} ${letters.length > 1 ? 'meet' : 'meets'} the ceiling`],
    [`${and(letters)}: ceiling`],
  ],
  field: (letter, width) => [
    [`${letter} takes in ${width} at the backdrop`],
    [`${letter} takes in ${width}`, 'at the backdrop'],
  ],
  angle: (letter, radians) => [
    [`${letter} sees ${formatAngle(radians)} across`],
    [`${letter} sees`, `${formatAngle(radians)} across`],
  ],
  prints: (scale) =>
    scale === null ? 'too large for A4 at 1 : 100' : `prints at 1 : ${scale} on A4`,
  drawnAt: (scale) => `1 : ${scale}`,
  standpointOf: (letter, distance) => `${letter} ${distance}`,
  names: {
    camera: (letter) => `Standpoint ${letter}`,
    lens: (letter) => `Lens height ${letter}`,
    sitter: 'Sitter before the backdrop',
    aside: 'Sitter beside the middle of the room',
    backdrop: 'Backdrop',
    backdropTop: 'Upper edge of the backdrop',
    along: (name) => `${name}, along the room`,
    across: (name) => `${name}, across the room`,
  },
  values: {
    fromEyes: (length) => `${length} from the eyes`,
    aboveFloor: (length) => `${length} above the floor`,
    beforeBackdrop: (length) => `eyes ${length} before the backdrop`,
    offWall: (length) => `${length} off the wall`,
    aside: (length, left) => `${length} to the sitter’s ${left ? 'left' : 'right'}`,
    fromEndWall: (length) => `${length} from the end wall`,
    fromSideWall: (length) => `${length} from the side wall`,
  },
  chart: {
    title: 'What each lens reaches for each framing, by distance from the eyes',
    framing: 'Framing',
    lens: 'Lens',
    reaches: 'Reaches',
    works: 'Everything met',
    nowhere: 'nowhere',
    frame: (height) => `frame ${height}`,
    span: (from, to) => (from === to ? from : `${from} to ${to}`),
    standpoint: (letter) => `standpoint ${letter}`,
    fromOn: (distance) => `from ${distance}`,
    here: (reaches, works) =>
      works ? 'everything met' : reaches ? 'reaches, something else fails' : 'out of reach',
  },
};
