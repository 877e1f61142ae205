/** From a comparison to one HTML file. */
import regular from '@fontsource/literata/files/literata-latin-400-normal.woff2?url';
import bold from '@fontsource/literata/files/literata-latin-600-normal.woff2?url';
import { movingPage } from '../../../handout/moving/page';
import type { Models } from '../../../models/types';
import { randomHex } from '../../../session/random';
import type { Session } from '../../../session/types';
import type { Shown } from '../../compare/shown';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { photograph } from '../../handout/photographs';
import { dataAddress } from '../../state/dataAddress';
import { framesOf, type MovingChoice, movingContent } from './content';

/** Views a pixel: these pictures are looked at one by one. */
const SAMPLES = 8;
const QUALITY = 0.85;
/** Bytes of the number that lets the page's own script run and no other. */
const NONCE = 16;

interface Request {
  readonly choice: MovingChoice;
  readonly session: Session;
  readonly models: Models;
  readonly darkroom: Darkroom;
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}

/** WebP where the browser writes it, else JPEG: asked for a kind they cannot write, browsers give PNG. */
async function packed(canvas: OffscreenCanvas): Promise<Blob> {
  const webp = await canvas.convertToBlob({ type: 'image/webp', quality: QUALITY });
  return webp.type === 'image/webp'
    ? webp
    : canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
}

/** The app's own typeface, Latin letters alone: some 40 kB. */
const FACES = [
  { weight: 400, from: regular },
  { weight: 600, from: bold },
] as const;

const fetchFonts = (signal: AbortSignal) =>
  Promise.all(
    FACES.map(async ({ weight, from }) => ({
      weight,
      address: await dataAddress(await (await fetch(from, { signal })).blob()),
    })),
  );

/** @throws AbortError when the signal is raised. */
export async function makeMoving(request: Request): Promise<Blob> {
  const { choice, session, models, darkroom, signal, onProgress } = request;
  const cast = await darkroom.cast(session);
  const move = { session, models, cast, pace: 'look' } as const;
  const shown = framesOf(move, choice.steps);
  const { sensor } = (shown[0] as Shown).resolved.camera;
  const scale = choice.side / Math.max(sensor.width, sensor.height);
  const width = Math.round(sensor.width * scale);
  const size = { width, height: Math.round((width * sensor.height) / sensor.width) };
  const images = new Map<Shown, string>();
  for (const each of shown) {
    const canvas = await photograph(darkroom, {
      session,
      shown: each,
      width,
      samples: SAMPLES,
      signal,
    });
    images.set(each, await dataAddress(await packed(canvas)));
    onProgress(images.size / shown.length);
  }
  const fonts = await fetchFonts(signal);
  const content = movingContent(
    move,
    choice,
    shown,
    { size, fonts },
    (each) => images.get(each) ?? '',
  );
  return new Blob([movingPage(content, randomHex(NONCE))], { type: 'text/html' });
}
