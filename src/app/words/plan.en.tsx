import type { ReactNode } from 'react';
import type { Change, Condition } from '../../plan/types';
import {
  formatFNumber,
  formatLength,
  formatNumber,
  formatPercent,
  type Units,
} from '../../readings/format';
import { COMMA, STOP } from './marks';

type Show = (metres: number) => string;

/** What the words of a condition speak of. */
export interface ConditionFigures {
  readonly show: Show;
  readonly focal: readonly [shortest: number, longest: number];
  readonly asked: {
    readonly noseGain: number | null;
    readonly rowDifference: number | null;
    readonly stretch: number | null;
    readonly personal: number | null;
    readonly clearance: number | null;
    readonly fNumber: readonly [number, number];
  };
  /** Name of the obstacle or person a condition is about. */
  readonly nameOf: (id: string | undefined) => string;
}

const percent = (share: number | null) => formatPercent(share ?? 0);
const list = (parts: readonly string[]): string =>
  new Intl.ListFormat('en', { type: 'conjunction' }).format(parts);
const lower = (names: readonly string[]) => names.map((name) => name.toLowerCase());
/** A mark on a lens: whole millimetres without a tenth. */
const mark = (metres: number): string => {
  const tenths = Math.round(metres * 10_000);
  return `${formatNumber(tenths / 10, tenths % 10 === 0 ? 0 : 1)} mm`;
};
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What stands in the way, as the end of "Nearer, ..." or "Farther, ...". */
function because({ name, of }: Condition, v: ConditionFigures): string {
  const { asked, show } = v;
  switch (name) {
    case 'lens-shortest':
      return `${mark(v.focal[0])} is too long`;
    case 'lens-longest':
      return `${mark(v.focal[1])} is too short`;
    case 'nearest-focus':
      return 'the lens does not focus';
    case 'clearance':
      return asked.clearance === null
        ? 'the lens meets a nose'
        : `the lens comes within ${show(asked.clearance)} of a nose`;
    case 'personal':
      return `the lens comes within ${show(asked.personal ?? 0)} of the eyes`;
    case 'nose-gain':
      return `the nose gains more than ${percent(asked.noseGain)}`;
    case 'row-difference':
      return `the rows’ heads differ by more than ${percent(asked.rowDifference)}`;
    case 'stretch':
      return `a face at the edge is stretched more than ${percent(asked.stretch)}`;
    case 'sharpness':
      return `what was asked is not all sharp at ${formatFNumber(asked.fNumber[1])}`;
    case 'softness':
      return 'the backdrop is not as soft as asked';
    case 'sharp-and-soft':
      return 'no aperture keeps the sitter sharp and the backdrop soft';
    case 'aperture':
      return 'the lens has no aperture that was allowed';
    case 'backdrop-sides':
      return 'the frame passes the sides of the paper';
    case 'backdrop-top':
      return 'the frame passes the upper edge of the paper';
    case 'ceiling':
      return 'the ceiling comes into the picture';
    case 'camera-height':
      return 'there is no place for the camera at that height';
    case 'wall-behind-camera':
      return 'your back meets the wall';
    case 'obstacle-in-picture':
      return `${v.nameOf(of)} is in the picture`;
    case 'obstacle-at-camera':
      return `${v.nameOf(of)} stands where you would`;
  }
}

/** A change that works, as the end of "Would work: ...". */
function wouldWork(change: Change, show: Show, nameOf: (id: string) => string): string {
  switch (change.change) {
    case 'room-length':
      return `${show(change.by)} more room behind you`;
    case 'focal':
      return `${mark(change.to)} or ${change.atLeast ? 'longer' : 'shorter'}`;
    case 'f-number':
      return `${formatFNumber(change.to)} or ${change.atLeast ? 'smaller' : 'wider'}`;
    case 'sitter-to-backdrop':
      return `the sitter ${show(change.to)} before the backdrop`;
    case 'backdrop-width':
      return `a backdrop ${show(change.to)} wide`;
    case 'backdrop-height':
      return `the backdrop’s upper edge at ${show(change.to)}`;
    case 'camera-height':
      return change.to === 0
        ? 'the camera at eye height'
        : `the camera ${show(Math.abs(change.to))} ${change.to > 0 ? 'above' : 'below'} the eyes`;
    case 'eyes-at':
      return `the eyes ${formatPercent(change.to)} from the top`;
    case 'frame-height':
      return `a frame of ${show(change.to)} or ${change.atLeast ? 'more' : 'less'}`;
    case 'nose-gain':
      return `a nose that may gain ${formatPercent(change.to)}`;
    case 'other-camera':
      return `the ${nameOf(change.camera)}`;
    case 'drop-demand':
      return `without asking for ${DEMANDS[change.demand]}`;
    case 'move-obstacle':
      return `${nameOf(change.obstacle)} put elsewhere`;
  }
}

const DEMANDS = {
  noseGain: 'the nose’s gain',
  rowDifference: 'equal heads in all rows',
  stretch: 'little stretch',
  personal: 'a nearest distance',
  clearance: 'room before the nose',
  sharp: 'sharpness',
  fNumber: 'these apertures',
  softness: 'a soft backdrop',
  backdropMargin: 'a backdrop that fills the frame',
};

/** Plan in English. */
export const plan = {
  heading: 'Plan: what works in this room',
  setUp: 'Room and what is asked',
  working: 'Being worked out',
  because,
  wouldWork,
  demands: DEMANDS,
  nearer: (why: string) => `Nearer, ${why}.`,
  between: (from: string, to: string, whys: readonly string[]) =>
    `Between ${from} and ${to}, ${whys.join(', then ')}.`,
  farther: (why: string) => `Farther, ${why}.`,
  wouldWorkLead: 'Would work:',
  seekingWays: 'What would work is being looked for.',
  fails: (whys: readonly string[]) => whys.map((why) => `${capital(why)}.`).join(' '),
  failsThere: (span: string, whys: readonly string[]) =>
    `It frames so from ${span}, where ${list(whys)}.`,
  onePlace: 'One focal length, one standpoint.',
  noseGains: (share: string) => `The nose gains ${share}.`,
  no: 'no',
  mark,
  withMarks: (span: string, from: string, to: string) => `${span}, ${from} to ${to}`,
  range: (from: string, to: string) => `${from} to ${to}`,
  something: 'something',
  whatWorks: 'What works here',
  nothingWanted: 'No picture is wanted yet. Add a framing under “Wanted pictures”.',
  noLens: 'The kit holds no lens yet. Add one under “Kit”.',
  frame: (height: string) => `frame ${height}`,
  everybody: 'as wide as everybody needs',
  lensOn: (lens: string, body: string) => `${lens} on ${body}`,
  hangIn: (letter: string) => `Hang it in ${letter}.`,
  orElse: '; or ',
  moreWays: (more: number) => `${more} more`,
  fewerWays: 'fewer',
  remedy: (change: string, span: string) => `${change} (${span})`,
  setting: (v: { lens: string; mark: string; isZoom: boolean; aperture: string; height: string }) =>
    `${v.lens}${v.isZoom ? ` at ${v.mark}` : ''}, ${v.aperture}, lens ${v.height} high`,
  reasons: (v: { gain: string; asked: string | null; used: string; toSpare: string }) =>
    `The nose gains ${v.gain}${v.asked === null ? '' : `, at most ${v.asked} is asked`}. The frame is ${v.used} wide at the backdrop, and you have ${v.toSpare} to spare before your back meets the wall.`,
  room: (v: {
    name: ReactNode;
    length: ReactNode;
    width: ReactNode;
    ceiling: ReactNode;
    backdrop: ReactNode;
    offWall: ReactNode;
    top: ReactNode;
    sitter: ReactNode;
    kept: ReactNode;
    axis: ReactNode;
  }): ReactNode => (
    <>
      {v.name} is {v.length} long, {v.width} wide and {v.ceiling} high; the camera looks {v.axis}
      {STOP} A backdrop {v.backdrop} wide hangs {v.offWall} off the wall, its upper edge at {v.top}
      {STOP} The sitter stands {v.sitter} before it, and you keep {v.kept} behind the camera.
    </>
  ),
  axes: { along: 'along it', across: 'across it', diagonal: 'along its diagonal' },
  axisNotes: {
    along: 'The backdrop hangs on the end wall.',
    across: 'The backdrop hangs on the long wall.',
    diagonal: 'The backdrop hangs across a corner: the longest way in a small room.',
  },
  asked: (parts: readonly ReactNode[], more: ReactNode): ReactNode => (
    <>
      Asked of every picture:{' '}
      {parts.map((part, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the parts keep their places
        <span key={i}>
          {i > 0 && (i === parts.length - 1 ? ' and ' : `${COMMA} `)}
          {part}
        </span>
      ))}
      {STOP} {more}
    </>
  ),
  askedParts: {
    noseGain: (value: ReactNode) => <>the nose gains at most {value}</>,
    stretch: (value: ReactNode) => <>no face is stretched more than {value}</>,
    rowDifference: (value: ReactNode) => <>heads of different rows differ by at most {value}</>,
    personal: (value: ReactNode) => <>the lens keeps {value} from the eyes</>,
    clearance: (value: ReactNode) => <>the front of the lens keeps {value} from the nose</>,
    sharp: (value: ReactNode) => <>{value} sharp</>,
    fNumber: (widest: ReactNode, smallest: ReactNode) => (
      <>
        the aperture is {widest} to {smallest}
      </>
    ),
    softness: (value: ReactNode) => <>the backdrop’s blur is at least {value} of the picture</>,
    backdropMargin: (value: ReactNode) => <>the backdrop shows {value} beyond the frame</>,
  },
  sharps: {
    eyes: 'both eyes are',
    'nose-to-ears': 'all from nose to ears is',
    rows: 'all rows are',
  },
  sharpNames: {
    eyes: 'both eyes',
    'nose-to-ears': 'all from the nose’s tip to the ears',
    rows: 'everybody in all rows',
  },
  askMore: 'Ask for more or less',
  labels: {
    roomName: 'Name of the room',
    length: 'Length of the room',
    width: 'Width of the room',
    ceiling: 'Height of the ceiling',
    axis: 'How the camera looks through the room',
    backdropWidth: 'Width of the backdrop',
    rolls: 'Paper rolls come in these widths.',
    offWall: 'Backdrop off the wall',
    top: 'Upper edge of the backdrop, above the floor',
    sitterBefore: 'Sitter’s eyes before the backdrop',
    kept: 'Kept for you behind the sensor mark',
    noseGain: 'The most that the nose may gain over the ears',
    stretch: 'The most that a face may be stretched',
    rowDifference: 'The most by which heads of two rows may differ',
    softness: 'The least blur of the backdrop, share of the picture’s height',
    personal: 'The least from the lens to the eyes',
    clearance: 'The least from the lens to a nose',
    backdropMargin: 'Backdrop beyond the frame at each side',
    sharp: 'What is sharp',
    widest: 'The widest aperture allowed',
    smallest: 'The smallest aperture allowed',
    demands: 'What is asked of every picture',
    picture: 'Picture that a chosen result is hung in',
    who: 'Who is in the picture',
    cameraHeight: 'Camera above (+) or below (−) the eyes',
    addWanted: 'Framing to add',
    aside: 'Camera’s axis beside the middle, to the sitter’s left (+) or right (−)',
    thing: {
      name: 'What it is',
      kind: 'A thing, or the floor a door sweeps',
      length: 'Size along the room',
      width: 'Size across the room',
      height: 'Height',
      x: 'From the end wall, along the room',
      y: 'From the long wall, across the room',
    },
  },
  askedNotes: {
    noseGain: 'How much too large the nose is drawn for the ears. It falls with distance.',
    stretch: 'A face off the axis is drawn wider on flat paper. It belongs to the wide view.',
    rowDifference: 'Heads in the back row are drawn smaller, less so from far.',
    softness: 'The disc that a point of the backdrop is drawn as. 1 % is soft.',
    personal: 'Some people do not like a camera close to them. Ask first.',
    clearance: 'From the front of the lens. A hand on the lens needs room too.',
    backdropMargin: 'So that a step aside does not show its edge.',
  },
  chosen: 'The picture from there',
  chosenFrom: (framing: string, distance: string) => `${framing} from ${distance}`,
  onBody: (lens: string, body: string) => `${lens} on the ${body}`,
  passesLimit: 'Something asked is not met here: see what works below.',
  firstForAll: 'In this picture the first person stands for the whole group.',
  hungIn: (picture: ReactNode): ReactNode => (
    <>A result that you press is hung in {picture}, here and in Compare.</>
  ),
  parts: {
    wanted: 'Wanted pictures',
    kit: 'Kit',
    things: 'Things in the room',
    lights: 'Lights',
    group: 'Group',
    people: 'Who sits',
  },
  who: { '1': 'the sitter', '2': 'the second person', both: 'both', group: 'the group' },
  wanted: (v: {
    framing: ReactNode;
    who: ReactNode | null;
    height: ReactNode;
    orientation: ReactNode;
    eyes: ReactNode;
    camera: ReactNode;
  }): ReactNode => (
    <>
      {v.framing}
      {v.who && <> of {v.who}</>}: {v.height} fills the {v.orientation} frame, the eyes {v.eyes}
      {COMMA} the camera {v.camera}
      {STOP}
    </>
  ),
  cameraHeight: (height: number, units: Units) => {
    if (height === 0) return 'at eye height';
    const size = formatLength(Math.abs(height), units, 'distance');
    return `${size} ${height > 0 ? 'above' : 'below'} the eyes`;
  },
  fromAbove: 'From above',
  fromSide: 'From the side',
  typed: {
    camera: 'Standpoint, from the eyes to the lens',
    lens: 'Lens above the floor',
    sitter: 'Sitter’s place',
    backdrop: 'Backdrop off the wall',
    'backdrop-top': 'Upper edge of the backdrop, above the floor',
    obstacle: 'Place of the thing',
    light: 'Place of the light',
  },
  onePlaceTitle: 'One standpoint for the sitting',
  onePlaceSays: (v: {
    standpoint: string;
    lens: string;
    covers: readonly string[];
    misses: readonly string[];
    /** By how much more the nose gains than from each framing's own best place, shares. */
    lost: readonly { readonly name: string; readonly by: number }[];
  }) => {
    const all = v.covers.length + v.misses.length;
    const misses = v.misses.length === 0 ? '' : ` Not from there: ${list(lower(v.misses))}.`;
    const losses = v.lost.filter(({ by }) => by >= 0.005);
    const lost =
      losses.length === 0
        ? ''
        : ` Against its own best place the nose gains more: ${losses
            .map(({ name, by }) => `${formatPercent(by)} in ${name.toLowerCase()}`)
            .join(', ')}.`;
    const taken =
      all === 1
        ? 'takes the framing'
        : `takes ${v.covers.length} of the ${all} framings without a step`;
    return `Stand at ${v.standpoint}: the ${v.lens} ${taken}.${misses}${lost}`;
  },
  noPlace: 'No lens meets everything asked for any framing.',
  chartLegend: 'Filled: everything asked is met. Open: the lens reaches, something else fails.',
  shortLens: (name: string) => name.replace(/ mm.*$/, ''),
  kinds: { thing: 'a thing', door: 'the floor of a door' },
  kindNotes: {
    thing: 'Nobody stands in it, and no picture may show it.',
    door: 'Nobody stands there; the picture may look across it.',
  },
  thing: (v: {
    name: ReactNode;
    kind: ReactNode;
    length: ReactNode;
    width: ReactNode;
    height: ReactNode;
    x: ReactNode;
    y: ReactNode;
  }): ReactNode => (
    <>
      {v.name}, {v.kind}
      {COMMA} {v.length} by {v.width} and {v.height} high, stands {v.x} from the end wall and {v.y}{' '}
      from the side wall.
    </>
  ),
  removeThing: (name: string) => `Remove ${name}`,
  remove: 'Remove',
  addThing: 'Add a thing',
  addDoor: 'Add a door',
  aside: (value: ReactNode): ReactNode => <>The camera’s axis runs {value}.</>,
  asideShown: (aside: number, units: Units) => {
    if (aside === 0) return 'through the middle';
    const size = formatLength(Math.abs(aside), units, 'distance');
    return `${size} to the sitter’s ${aside > 0 ? 'left' : 'right'} of the middle`;
  },
  earlier: 'earlier',
  later: 'later',
  drop: 'drop',
  earlierOf: (name: string) => `${name}: take it earlier`,
  laterOf: (name: string) => `${name}: take it later`,
  dropOf: (name: string) => `Drop ${name}`,
  addWanted: (framing: ReactNode, group: ReactNode): ReactNode => (
    <>
      Add {framing}
      {group && <> or {group}</>}.
    </>
  ),
  aFraming: 'a framing',
  addGroupPicture: 'a picture of the group',
  capital,
};
