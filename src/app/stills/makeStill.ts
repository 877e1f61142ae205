/** From a session to the still that is saved. */
import type { PrintedCaption } from '../../handout/caption';
import type { Format } from '../../handout/encode/types';
import { type StillPicture, saveStill } from '../../handout/still';
import type { Models } from '../../models/types';
import { type Aperture, pupilDiameter } from '../../optics/aperture';
import { must } from '../../optics/result';
import type { Session } from '../../session/types';
import type { StageHandle } from '../../stage';
import { captionWords } from '../compare/captions';
import { fetchTypeface, PRINTED, printedCaption, TYPEFACE } from '../compare/printed';
import { letterAt, showSeries } from '../compare/series';
import { type Shown, showPictures } from '../compare/shown';
import type { Sitting } from '../darkroom/useDarkroom';
import { words } from '../words';
import { metadataOf } from './describe';
import type { Options, What } from './options';
import { scaleBar } from './scaleBar';

/** How a stage is come by: the wall's own, or one in the darkroom. */
export type Sit = <T>(
  session: Session,
  work: (sitting: Sitting) => Promise<T>,
  signal: AbortSignal,
) => Promise<T>;

export interface StillRequest {
  readonly session: Session;
  readonly models: Models;
  readonly options: Options;
  readonly sit: Sit;
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}

export interface MadeStill {
  readonly blob: Blob;
  readonly name: string;
}

const EXTENSIONS: Readonly<Record<Format, string>> = { png: 'png', jpeg: 'jpg', webp: 'webp' };
/** No picture of a strip that no letter stands for has an accent. */
const UNLETTERED = { letter: '', accent: '#1a1a1a', dashes: [] } as const;

/** A picture of a strip: narrow, so that it tells its standpoint and lens alone. */
function stripCaption(shown: Shown, session: Session): PrintedCaption {
  const letter = letterAt(session, shown.resolved.standpoint);
  const { distance, focal } = captionWords(shown, session.units);
  return {
    ...(letter ? { letter, ...PRINTED[letter] } : UNLETTERED),
    title: distance,
    details: [words.compare.lens(focal)],
  };
}

function shownFor(what: What, request: StillRequest, { cast }: Sitting): Shown[] {
  const { session, models } = request;
  if (what === 'strip') return showSeries(session, models, cast, session.series);
  const all = showPictures(session, models, cast, null);
  return what === 'all' ? all : all.filter(({ letter }) => letter === what);
}

function stillPicture(
  shown: Shown,
  caption: PrintedCaption,
  { session, options }: StillRequest,
  stage: StageHandle,
): StillPicture {
  const { camera, frameWidth } = shown.resolved;
  const { samples, blurred } = options;
  return {
    ...caption,
    aspect: camera.sensor.width / camera.sensor.height,
    scale: scaleBar(frameWidth, session.units),
    render: (width, height, bandHeight, signal, onProgress) =>
      stage.renderPicture(camera, width, height, {
        bandHeight,
        signal,
        onProgress,
        samples,
        ...(blurred && { aperture: apertureOf(shown) }),
        sitters: shown.company,
      }),
  };
}

/** The entrance pupil that the picture is taken through, focused on the eyes. */
const apertureOf = ({ resolved: { focal, fNumber, focusDistance } }: Shown): Aperture => ({
  diameter: must(pupilDiameter(focal, fNumber)),
  focusDepth: focusDistance,
});

/** A file name that tells the pictures apart: "standpoint-a-0.40m-b-2.40m.png". */
function nameOf({ what, format }: Options, pictures: readonly Shown[], session: Session): string {
  const distance = (shown: Shown) =>
    captionWords(shown, session.units).distance.replaceAll(' ', '');
  const [first, last] = [pictures[0], pictures.at(-1)];
  const parts =
    what === 'strip' && first && last
      ? [String(pictures.length), distance(first), distance(last)]
      : pictures.map((shown) => `${shown.letter.toLowerCase()}-${distance(shown)}`);
  return `standpoint-${parts.join('-')}.${EXTENSIONS[format]}`;
}

/**
 * Renders the pictures side by side. The letters' typeface is fetched first.
 * @throws AbortError when the signal is raised, Error with what is wrong.
 */
export function makeStill(request: StillRequest): Promise<MadeStill> {
  const { session, options, signal, onProgress } = request;
  return request.sit(
    session,
    async (sitting) => {
      const pictures = shownFor(options.what, request, sitting);
      const captions = pictures.map((shown) =>
        options.what === 'strip' ? stripCaption(shown, session) : printedCaption(shown, session),
      );
      const metadata = metadataOf(session, pictures, captions, options);
      await fetchTypeface();
      const { format, width, quality, below } = options;
      const blob = await saveStill({
        format,
        width,
        quality,
        below,
        metadata,
        pictures: pictures.map((shown, i) =>
          stillPicture(shown, captions[i] as PrintedCaption, request, sitting.stage),
        ),
        typeface: TYPEFACE,
        signal,
        onProgress,
      });
      return { blob, name: nameOf(options, pictures, session) };
    },
    signal,
  );
}
