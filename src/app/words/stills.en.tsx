import type { ReactNode } from 'react';
import type { Format } from '../../handout/encode/types';
import type { Letter } from '../../session/types';
import { COMMA, ended, STOP } from './marks';

const FORMAT_NAMES: Readonly<Record<Format, string>> = { png: 'PNG', jpeg: 'JPEG', webp: 'WebP' };

/** English words of the sheet of stills, and of bringing one back. */
export const stills = {
  title: 'Save a still',
  sentence: (v: { what: ReactNode; format: ReactNode; samples: ReactNode }): ReactNode => (
    <>
      Save {v.what} as {v.format}
      {COMMA} each pixel the mean of {v.samples}
      {STOP}
    </>
  ),
  whatLabel: 'What is saved',
  all: 'the pictures side by side',
  strip: 'a strip of standpoints',
  stripNote: 'One crop from five to twelve distances.',
  alone: (letter: Letter) => `picture ${letter} alone`,
  formatLabel: 'Kind of file',
  formats: FORMAT_NAMES,
  formatNotes: {
    png: 'Exact, and large. For print.',
    jpeg: 'Small. For mail and messages.',
    webp: 'Smallest. For the web; up to 24 megapixels.',
  } satisfies Record<Format, string>,
  samplesLabel: 'Views a pixel',
  views: (n: number) => `${n} views`,
  viewsNote: 'More make edges and soft shadows smoother, and take longer.',
  about: 'Which comparison',
  of: (v: { comparison: ReactNode }): ReactNode => <>The comparison is {v.comparison}.</>,
  onTheWall: 'what hangs on the wall',
  width: 'Width, pixels',
  widthWrong: (least: number, most: number) =>
    `The width is a whole number from ${least} to ${most}.`,
  quality: 'Quality, 1 to 100',
  qualityWrong: 'The quality is a whole number from 1 to 100.',
  webpTooLarge:
    'A WebP is made all at once and holds up to 24 megapixels, 16383 a side. Take a smaller width, or a PNG or JPEG.',
  captions: 'with captions',
  letters: 'letters',
  scale: 'scale bar',
  blurred: 'depth of field as shot',
  whole: 'with names, notes, kit and measured bodies',
  carries: (whole: boolean) =>
    whole
      ? 'The file carries the whole session but a logo; anybody who has it can open it.'
      : 'The file carries what its pictures need and no more. Dropped on this page it brings them back, with the usual measures in the place of a sitter’s own.',
  save: (format: Format) => `Save the ${FORMAT_NAMES[format]}`,
  saved: (name: string, bytes: number) =>
    `Saved as ${name}, ${bytes < 1e6 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1e6).toFixed(1)} MB`}.`,
  failed: (why: string) => `The still could not be made: ${ended(why)}`,
  tooMuch:
    'the session holds too much to ride in a picture; leave names and notes out, or save it as a file',
  description: (pictures: string, blurred: boolean) =>
    `Rendered comparison of portrait perspective. ${pictures} Computed with ${
      blurred ? 'a lens as wide as its aperture' : 'a pinhole at the entrance pupil'
    }; not a photograph.`,
  listed: (letter: string, parts: readonly string[]) =>
    `${letter === '' ? '' : `${letter}: `}${parts.join(', ')}.`,
  atTheEyes: (length: string) => `${length} at the eyes`,
  series: {
    label: 'Standpoints of the strip',
    shown: (n: number, first: string, last: string) => `${n} standpoints, ${first} to ${last}`,
    strip: (v: { standpoints: ReactNode }): ReactNode => <>The strip has {v.standpoints}.</>,
    from: 'From',
    to: 'To',
    count: 'How many',
    pace: 'Spacing',
    paces: { metres: 'even in metres', look: 'even in look' },
    paceNote: 'Even in look: each step changes the face about as much.',
    space: 'Space them so',
    list: 'Or type them, one after another',
    listNote: 'Such as 0.3, 0.6, 1.2, 2.4, 4.8.',
    set: 'Set these',
    notWhole: (text: string) => `"${text.trim()}" is not a whole number.`,
    apart: 'From and to are two different distances.',
    wrongCount: (least: number, most: number) => `A strip has ${least} to ${most} standpoints.`,
  },
  opened: 'Picture opened',
  drop: 'Drop a still or a session file to open it',
  foreign:
    'This picture was not saved from here, or what it carried was taken out. Nothing was changed.',
  damaged: 'This picture is damaged. Nothing was changed.',
};
