/** From what Compare shows to the still that is saved. */
import { type StillPicture, saveStill } from '../../handout/still';
import { formatFNumber } from '../../readings/format';
import type { Letter, Session } from '../../session/types';
import type { StageHandle } from '../../stage';
import { words } from '../words';
import { captionWords } from './captions';
import type { Shown } from './shown';

/** The light theme's accents and dash patterns (in caption lines): a still is read on white. */
const PRINTED: Readonly<Record<Letter, { accent: string; dashes: readonly number[] }>> = {
  A: { accent: '#85280f', dashes: [] },
  B: { accent: '#17458a', dashes: [0.5, 0.3] },
  C: { accent: '#285519', dashes: [0.15, 0.25] },
  D: { accent: '#64308a', dashes: [0.65, 0.25, 0.15, 0.25] },
};
/**
 * The page answers only between tiles. Eight views of one this large take a software rasteriser some
 * seconds; larger ones would make Stop wait.
 */
const TILE = 768;
const TYPEFACE = '"Literata Variable", Georgia, serif';

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
  const caption = captionWords(shown, session.units);
  const { lens, frame } = words.compare;
  return {
    letter: shown.letter,
    ...PRINTED[shown.letter],
    title: `${caption.distance} ${words.compare.fromEyes}`,
    details: [
      `${caption.who === null ? '' : `${caption.who}, `}${lens(caption.focal)}, ${frame(caption.frame)}, ${formatFNumber(shown.resolved.fNumber)}`,
      ...(caption.angle ? [caption.angle] : []),
    ],
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
  await document.fonts.load(`500 40px ${TYPEFACE}`);
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
