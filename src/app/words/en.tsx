import { Fragment, type ReactNode } from 'react';
import type { Cut } from '../../optics/cut';
import { formatFNumber, formatFocal, formatNumber, formatPercent } from '../../readings/format';
import type { Hold, Kept, Letter } from '../../session/types';
import type { LengthId } from '../compare/over/lengths';
import { COMMA, STOP } from './marks';
import { people } from './people.en';

const LENGTH_NAMES: Readonly<Record<LengthId, string>> = {
  'face-breadth': 'Face at the cheekbones',
  pupils: 'Between the pupils',
  'nose-breadth': 'Nose across the wings',
  mouth: 'Mouth',
  'face-height': 'Root of the nose to chin',
  'ear-left': 'Ear, on the picture’s right',
  'ear-right': 'Ear, on the picture’s left',
};

const list = (names: readonly string[]): string =>
  new Intl.ListFormat('en', { type: 'conjunction' }).format(names);

/** English. Short sentences, cause before effect, a unit with each number. */
export const en = {
  name: 'Standpoint',
  controls: {
    set: 'Set',
    close: 'Close',
    empty: 'A name has at least one letter.',
    needed: 'This figure is needed.',
    cancel: 'Stop',
    tooSmall: (least: string) => `The least is ${least}.`,
    tooLarge: (most: string) => `The most is ${most}.`,
  },
  head: {
    places: 'Places',
    placeNames: { compare: 'Compare', plan: 'Plan', handout: 'Handout' },
    saved: (time: string) => `Saved at ${time}`,
    unsaved: 'Not saved yet',
    undo: 'Undo',
    redo: 'Redo',
    undoOf: (label: string) => `Undo: ${label}`,
    redoOf: (label: string) => `Redo: ${label}`,
    still: 'Save a still',
    present: 'Present',
    link: 'Copy link',
    linkCopied: 'Link copied',
    linkOpened: 'Link opened',
    linkNotCopied: 'The browser did not allow copying. The link stands in the address line now.',
    session: 'Session',
    saveFile: 'Save as a file',
    openFile: 'Open a file',
    fileOpened: 'File opened',
    fileUnread: 'The file could not be read. Nothing was changed.',
    startAgain: 'Start again',
    startAgainNote:
      'Back to the demo session. Yours stays among your sessions; undo brings it back.',
    sessions: 'My sessions',
    title: 'Title of the session',
  },
  notices: {
    loading: 'The sitter is being fetched.',
    place: 'The page is being fetched.',
    noSculpture: (why: string) =>
      `The sitter could not be fetched (${why}). Reload the page to try again.`,
    impossible: (why: string) =>
      `No such sitter can be: ${why}. The last one stays; undo takes the change back.`,
    noPictures: {
      'no-webgl':
        'This browser gives the page no WebGL 2, so the pictures cannot be drawn. Switch hardware acceleration on, or use another browser. The readings and the rail work all the same.',
      'context-lost':
        'The graphics processor was taken away for a moment; the pictures come back by themselves. If they do not, reload the page: nothing is lost.',
    },
    dismiss: 'Put away',
  },
  compare: {
    heading: 'Compare: one crop from several standpoints',
    pictures: 'Pictures',
    side: 'Set-up and readings',
    fromEyes: 'from the eyes',
    lens: (focal: string) => `${focal} lens`,
    lensWord: 'lens',
    frame: (height: string) => `${height} frame`,
    frameWord: 'frame',
    standpointOf: (letter: Letter) => `Standpoint ${letter}, from the eyes to the lens`,
    standpointNote:
      'Straight from the midpoint between the pupils to the lens. Write m, cm, ft or in.',
    closeTo: (distance: string) => `${distance} from a nose. Ask first.`,
    closeToChild: (distance: string) =>
      `${distance} from a child’s nose. Ask the parent and the child first, and keep straps and cables short.`,
    tooNear: 'So near, the lens and your hand come close to a face. Ask first, and move slowly.',
    focalOf: (letter: Letter) => `Focal length of ${letter}`,
    focalNote: 'The thin-lens mark: what a simple lens would carry at this crop.',
    frameOf: (letter: Letter) => `Frame height of ${letter}, at the eyes`,
    apertureOf: (letter: Letter) => `Aperture of ${letter}`,
    moreOf: (letter: Letter) => `More of ${letter}`,
    angle: (angle: string, side: 'above' | 'below') =>
      `The camera sees the face from ${angle} ${side}.`,
    twoDiffer: (what: string) =>
      `Not the distance alone differs here: ${what}. The change you see comes from both.`,
    setup: (v: {
      people: readonly { who: ReactNode; letters: readonly Letter[] }[];
      framing: ReactNode;
      frame: ReactNode;
      orientation: ReactNode;
      format: ReactNode;
      eyes: ReactNode;
      hold: ReactNode;
      person: 'her' | 'him' | 'them';
      /** Everybody is in every picture. */
      alike: boolean;
    }): ReactNode => (
      <>
        {v.people.length === 1
          ? v.people[0]?.who
          : v.people.map(({ who, letters }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: people keep their places
              <Fragment key={i}>
                {i > 0 && ' '}
                {who}
                {COMMA} {letters.length === 0 ? 'in no picture.' : `in ${list(letters)}.`}
              </Fragment>
            ))}
        {v.people.length === 1 ? `${COMMA} in a ` : ' Each a '}
        {v.framing}: {v.frame} of {v.person} fills the {v.orientation} frame of {v.format}
        {COMMA} the eyes {v.eyes}
        {STOP} The crop is held by {v.hold}
        {v.alike ? `${COMMA} so only the standpoint changes the face.` : STOP}
      </>
    ),
    whoSits: 'Who sits',
    setupMore: 'Light, room and kit',
    kept: 'Kept',
    room: (v: { backdrop: ReactNode; wall: ReactNode; kept: ReactNode }): ReactNode => (
      <>
        The backdrop hangs {v.backdrop} behind the eyes. The wall behind the camera is {v.wall}{' '}
        before them; {v.kept} of that is kept for you.
      </>
    ),
    kit: (v: { lenses: ReactNode; names: string; megapixels: ReactNode }): ReactNode => (
      <>
        The kit holds {v.lenses} ({v.names}), on a body of {v.megapixels}.
      </>
    ),
    composition: (v: { across: ReactNode }): ReactNode => (
      <>The eyes sit {v.across} of the frame; the frame is placed by shift.</>
    ),
    eyesAcross: (percent: string) => `${percent} from the left`,
    reading: (v: { print: ReactNode; units: ReactNode }): ReactNode => (
      <>
        A print is {v.print} high. Lengths are shown in {v.units}.
      </>
    ),
    labels: {
      sitter: 'Sitter',
      turn: 'How the sitter faces the camera',
      framing: 'Framing',
      frame: 'Frame height at the eyes',
      orientation: 'Upright or lying',
      format: 'Sensor format',
      eyes: 'Where the eyes sit in the frame',
      across: 'Where the eyes sit across the frame',
      hold: 'What holds the crop equal',
      backdrop: 'Backdrop, behind the eyes',
      wall: 'Wall behind the camera, from the eyes',
      kept: 'Kept for you behind the sensor mark',
      lenses: 'Lenses of the kit',
      megapixels: 'Megapixels of the body',
      print: 'Height of the print',
      units: 'Units',
    },
    orientations: { portrait: 'upright', landscape: 'lying' },
    eyesAt: (percent: string) => `${percent} from the top`,
    eyesNote: 'A third from the top is usual for a headshot.',
    holds: {
      'frame-height': ['frame height', 'Both frames show the same height at the eyes.'],
      'head-height': ['head height', 'Crown to chin, as drawn, is equal in both.'],
      'pupil-distance': ['pupil distance', 'The pupils are equally far apart in both.'],
    } satisfies Record<Hold, [string, string]>,
    kepts: {
      crop: ['the crop', 'The focal length follows the standpoint.'],
      lens: ['the lens', 'The focal length stays; the frame follows the standpoint.'],
      standpoint: ['the standpoint', 'The handles stay; focal length and frame follow each other.'],
    } satisfies Record<Kept, [string, string]>,
    facing: 'facing the camera',
    and: ' and ',
    list,
    tilted: (a: string) => `tilted ${a}`,
    tiltField: 'Tilt of the head to the shoulder, degrees',
    notANumber: (text: string) => `"${text.trim()}" is not a number. Try 24.`,
    ownFraming: 'framing of your own',
    more: 'more',
    turnLeft: (a: string) => `turned ${a} to the picture’s right`,
    turnRight: (a: string) => `turned ${a} to the picture’s left`,
    nodUp: (a: string) => `raised ${a}`,
    nodDown: (a: string) => `lowered ${a}`,
    turnField: 'Turn of the head, degrees (to the picture’s right is +)',
    nodField: 'Head up (+) or down (−), degrees',
    bodyField: 'Turn of the whole figure, degrees',
    megapixels: (n: string) => `${n} megapixels`,
    units: { metric: 'metres', imperial: 'feet and inches' },
    lensCount: (n: number) => (n === 1 ? '1 lens' : `${n} lenses`),
  },
  people,
  picture: {
    camera: (v: { height: ReactNode; tilt: ReactNode }): ReactNode => (
      <>
        The camera stands {v.height}, its axis {v.tilt}.
      </>
    ),
    height: {
      label: (letter: Letter) => `Camera height of ${letter}, against the eyes`,
      level: 'at eye height',
      above: (h: string) => `${h} above the eyes`,
      below: (h: string) => `${h} below the eyes`,
      note: 'Above is +, below is −. The face is then seen from another angle, more so from near.',
      caution: 'A raised camera wants a firm support. Nobody stands below it.',
    },
    tilt: {
      label: (letter: Letter) => `Tilt of ${letter}, degrees`,
      level: 'level',
      up: (a: string) => `tilted up ${a}`,
      down: (a: string) => `tilted down ${a}`,
      note: 'Up is +, down is −. A tilt about the lens changes no proportion of the face, only the frame.',
    },
    lens: (v: { lens: ReactNode }): ReactNode => <>Taken with {v.lens}.</>,
    shows: 'In this picture',
    lensLabel: (letter: Letter) => `Lens of ${letter}`,
    anyLens: 'any lens of the kit',
    cut: (v: { focal: ReactNode }): ReactNode => (
      <>Stay back and crop: the framing is cut out of the wider picture of a lens of {v.focal}.</>
    ),
    stayBack: 'Stay back and crop',
    stayBackLabel: (letter: Letter) => `The lens that ${letter} is cut from`,
    stayBackAt: (focal: string) => `at ${focal}`,
    cutCost: ({ areaShare, megapixels, print, asIf }: Cut) =>
      `${formatPercent(areaShare)} of the wider picture is kept: ${formatNumber(megapixels, 1)} megapixels, a print of ${formatNumber(100 * print.width, 0)} × ${formatNumber(100 * print.height, 0)} cm at 300 dpi. The blur is that of ${formatFocal(asIf.focal)} at ${formatFNumber(asIf.fNumber)}.`,
    stayBackNote: 'The same perspective with a shorter lens; pixels are what it costs.',
    wholeFrame: 'Fill the frame again',
    match: (other: Letter) => `Match the look of ${other}`,
    takeDown: 'Take this picture down',
    saveAlone: 'Save this picture alone',
  },
  readings: {
    caption: 'Readings of the pictures',
    what: 'What changes',
    whatOne: 'What it shows',
    change: (a: string, b: string) => `${a} against ${b}`,
    all: (n: number) => `All ${n} readings`,
    fewer: 'The main readings',
    formulas: 'How each is computed',
    noFormulas: 'Hide the formulas',
    copyText: 'Copy the table',
    copyCsv: 'Copy as CSV',
    copied: 'Copied',
    notCopied: 'The browser did not allow copying.',
    caution: 'Readings are for photographs, not for medical or identity decisions.',
    any: (v: { a: ReactNode; b: ReactNode; ratios: readonly string[] }): ReactNode => (
      <>
        The {v.a} is drawn larger than the {v.b} by this ratio: {v.ratios.join(', ')}.
      </>
    ),
    sameLook: (v: { own: string; other: string; distance: string | null }): string =>
      v.distance === null
        ? `No standpoint gives ${v.own} the look of ${v.other}.`
        : `A face less deep shows the same from nearer: ${v.own} has the look of ${v.other} from ${v.distance}.`,
    takeLook: 'Stand there',
    ratioIn: (ratio: string | null, letter: string) => `${ratio ?? 'none'} in ${letter}`,
    landmark: 'Part whose size is asked',
    otherLandmark: 'Part it is set against',
    gain: (v: { gain: ReactNode; distance: string | null }): ReactNode => (
      <>
        For the nose to gain {v.gain} over the ears{' '}
        {v.distance === null ? 'there is no standpoint.' : `stand ${v.distance} from the eyes.`}
      </>
    ),
    gainAt: (distance: string, who: string | null) =>
      who === null ? distance : `${distance} (${who})`,
    or: ' or ',
    gainLabel: 'Wanted gain of the nose over the ears, percent',
  },
  looks: {
    title: 'Look closer:',
    outline: 'outline of the other',
    wipe: 'wipe',
    blink: 'blink',
    landmarks: 'landmarks',
    stretch: 'stretch',
    clay: 'clay',
    claySays: 'All in one grey: shape and light alone, without colour.',
    wipeAt: 'Where the wipe stands',
    lengthNames: LENGTH_NAMES,
    lengthsCaption: 'Lengths as drawn',
    lengthItself: 'itself',
    lengthsSay:
      'Drawn lengths are put to the scale of the eyes. What lies behind the eyes is drawn shorter from near, what stands before them longer.',
    stretchSays:
      'Each ring is a small ball at the same distance. The wide view draws it longer towards the edge; that belongs to the flat picture, not to the standpoint.',
  },
  rail: {
    title: 'The room, to scale',
    even: 'even',
    stretched: 'stretched near',
    keptLabel: 'What a moved handle keeps',
    ends: 'From which picture to which',
    from: (from: Letter, to: Letter) => `${from} to ${to}`,
    reasons: {
      'no-room': 'Farther, your back meets the wall.',
      'too-near-to-focus': 'The lens does not focus so near.',
      'no-clearance': 'The front of the lens would reach the nose.',
    },
    keeps: (kept: ReactNode): ReactNode => <>A moved handle keeps {kept}</>,
    hang: 'Hang another picture',
    play: (from: Letter, to: Letter) => `Play the move, ${from} to ${to}`,
    pause: 'Pause',
    at: 'Place in the move',
    seconds: 'Length of the move, seconds',
    shownSeconds: (s: string) => `${s} s`,
    step: 'Step through the move',
    secondsWrong: 'The length is a number of seconds, 0.5 to 60.',
    putBack: 'Back to the start',
  },
  alt: (letter: Letter, says: string) => `Picture ${letter}. ${says}`,
};
