/** From what Compare shows to the still that is saved. */
import { type StillPicture, saveStill } from '../../handout/still';
import type { Session } from '../../session/types';
import type { StageHandle } from '../../stage';
import { words } from '../words';
import { captionWords } from './captions';
import { fetchTypeface, printedCaption, TYPEFACE } from './printed';
import type { Shown } from './shown';

/**
 * The page answers only between tiles. Eight views of one this large take a software rasteriser some
 * seconds; larger ones would make Stop wait.
 */
const TILE = 768;

interface Request {
  readonly session: Session;
  readonly pictures: readonly Shown[];
  readonly stage: StageHandle;
  readonly width: number;
  readonly captioned: boolean;
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}

function stillPicture(shown: Shown, session: Session, stage: StageHandle): StillPicture {
  const { camera } = shown.resolved;
  const sitters = shown.company;
  return {
    ...printedCaption(shown, session),
    aspect: camera.sensor.width / camera.sensor.height,
    render: (width, height, bandHeight, signal) =>
      stage.renderPicture(camera, width, height, {
        bandHeight,
        signal,
        tileSide: TILE,
        sitters,
      }),
  };
}

/** Renders the pictures side by side. The letters' typeface is fetched first. */
export async function makeStill(request: Request): Promise<Blob> {
  const { session, pictures, stage, ...rest } = request;
  await fetchTypeface();
  const stillPictures = pictures.map((shown) => stillPicture(shown, session, stage));
  const list = stillPictures.map(
    ({ letter, title, details }) => `${letter}: ${title}, ${details[0]}.`,
  );
  return saveStill({
    ...rest,
    pictures: stillPictures,
    typeface: TYPEFACE,
    description: words.still.description(list.join(' ')),
  });
}

/** A file name that tells the pictures apart: "standpoint-a-0.40m-b-2.40m.png". */
export function stillName({ units }: Session, pictures: readonly Shown[]): string {
  const parts = pictures.map((shown) => {
    const distance = captionWords(shown, units).distance.replaceAll(' ', '');
    return `${shown.letter.toLowerCase()}-${distance}`;
  });
  return `standpoint-${parts.join('-')}.png`;
}
