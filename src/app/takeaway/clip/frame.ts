/** Draws frames of a clip on a canvas. */
import { drawCaption, MAT, WALL } from '../../../handout/caption';
import { type FrameLayout, type FrameSize, frameLayout } from '../../../handout/clip/layout';
import type { Box } from '../../../handout/sheet';
import type { StageHandle } from '../../../stage';
import { fetchTypeface, TYPEFACE } from '../../compare/printed';
import type { Shown } from '../../compare/shown';
import { paintPicture } from '../../darkroom/paint';
import { type Move, type MoveView, moveCaption, shownAlong } from '../move/along';

/** What of a clip is seen in one frame. */
export interface FrameLook {
  readonly size: FrameSize;
  readonly view: MoveView;
  readonly captioned: boolean;
}

interface DrawOptions {
  /** Views a pixel. */
  readonly samples: number;
  readonly signal: AbortSignal;
}

type Pen = OffscreenCanvasRenderingContext2D;

/** The page answers only between tiles, pixels a side. */
const TILE = 768;

const css = ([r, g, b]: readonly [number, number, number, number]): string => `rgb(${r} ${g} ${b})`;

function drawWall(pen: Pen, layout: FrameLayout): void {
  pen.fillStyle = css(WALL);
  pen.fillRect(0, 0, layout.width, layout.height);
  pen.fillStyle = css(MAT);
  const { mat } = layout;
  for (const { x, y, width, height } of layout.pictures)
    pen.fillRect(x - mat, y - mat, width + 2 * mat, height + 2 * mat);
}

/**
 * A painter of one clip's frames: what stays is drawn on the first, what moves on every one, so that a frame
 * must be drawn on the canvas of the one before.
 */
export async function framePainter(
  move: Move,
  look: FrameLook,
  stage: StageHandle,
  options: DrawOptions,
): Promise<(at: number, pen: Pen) => Promise<void>> {
  if (look.captioned) await fetchTypeface();
  const start = shownAlong(move, 0);
  const { sensor } = start.resolved.camera;
  const aspects = (look.view === 'two' ? [0, 1] : [0]).map(() => sensor.width / sensor.height);
  const layout = frameLayout(look.size, aspects, look.captioned);
  const caption = (pen: Pen, shown: Shown, place: number, moving: boolean) => {
    const box = layout.captions[place];
    if (box) drawCaption(pen, moveCaption(shown, move.session, moving), box, layout.line, TYPEFACE);
  };
  const drawn = { tileSide: TILE, ...options };
  let isHung = false;
  return async (at, pen) => {
    if (!isHung) {
      drawWall(pen, layout);
      if (look.view === 'two') {
        await paintPicture(pen, stage, start, layout.pictures[0] as Box, drawn);
        caption(pen, start, 0, false);
      }
      isHung = true;
    }
    const shown = shownAlong(move, at);
    const place = layout.pictures.length - 1;
    await paintPicture(pen, stage, shown, layout.pictures[place] as Box, drawn);
    caption(pen, shown, place, true);
  };
}
