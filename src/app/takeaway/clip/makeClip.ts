/** From a comparison to a video file. */
import type { StreamTargetChunk } from 'mediabunny';
import type { Encoding } from '../../../handout/clip/encoding';
import { type ClipTiming, clipFrames } from '../../../handout/clip/plan';
import { writeClip } from '../../../handout/clip/write';
import type { Models } from '../../../models/types';
import type { Pace } from '../../../session/play';
import type { Session } from '../../../session/types';
import type { Darkroom } from '../../darkroom/useDarkroom';
import { move as said } from '../../words/move.en';
import { endsOf } from '../move/along';
import { type FrameLook, framePainter } from './frame';

/** All that is chosen of a clip. */
export interface ClipChoice extends FrameLook {
  readonly timing: ClipTiming;
  readonly pace: Pace;
}

interface Request {
  readonly choice: ClipChoice;
  readonly session: Session;
  readonly models: Models;
  readonly darkroom: Darkroom;
  readonly encoding: Encoding;
  readonly into?: WritableStream<StreamTargetChunk>;
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}

/** Views a pixel: frames are many, and in a moving picture their edges are seen for an instant. */
export const SAMPLES = 4;

/**
 * Renders and writes the clip.
 * @returns the file, or null when it was written into the given stream.
 * @throws AbortError when the signal is raised.
 */
export function makeClip(request: Request): Promise<Blob | null> {
  const { choice, session, models, darkroom, signal, ...rest } = request;
  const ends = endsOf(session);
  return darkroom.use(
    session,
    async ({ cast, stage }) => {
      const move = { session, models, cast, pace: choice.pace };
      const paint = await framePainter(move, choice, stage, { samples: SAMPLES, signal });
      return writeClip({
        ...rest,
        ...choice.size,
        frames: clipFrames(choice.timing),
        title: said.title(...ends),
        description: said.description(...ends),
        draw: ({ at }, pen) => paint(at, pen),
        signal,
      });
    },
    signal,
  );
}
