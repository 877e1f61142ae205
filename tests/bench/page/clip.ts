/** A clip: what layout, captions, encoding and the file cost beside rendering its frames alone. */
import { framePainter } from '../../../src/app/takeaway/clip/frame';
import { SAMPLES } from '../../../src/app/takeaway/clip/makeClip';
import { shownAlong } from '../../../src/app/takeaway/move/along';
import { chooseEncoding } from '../../../src/handout/clip/encoding';
import { frameLayout } from '../../../src/handout/clip/layout';
import { RATE } from '../../../src/handout/clip/plan';
import { writeClip } from '../../../src/handout/clip/write';
import { models } from '../../../src/models/browser';
import type { Line } from '../line';
import { compareCost } from '../pairs';
import type { StageSide } from './stageSide';
import type { Subject } from './subject';

const SIZE = { width: 1280, height: 720 } as const;
const FRAMES = 4;
const PAIRS = 5;

export async function clipLines(
  { session, sitter }: Subject,
  { handle }: StageSide,
): Promise<Line[]> {
  const encoding = await chooseEncoding(SIZE);
  if (!encoding) throw new Error('this browser encodes no video');
  const { signal } = new AbortController();
  const move = { session, models, cast: { '1': sitter }, pace: 'look' } as const;
  const frames = Array.from({ length: FRAMES }, (_, i) => ({
    time: i / RATE,
    at: i / (FRAMES - 1),
  }));
  const options = { samples: SAMPLES, signal };
  const look = { size: SIZE, view: 'one', captioned: true } as const;

  const make = async () => {
    const paint = await framePainter(move, look, handle, options);
    return writeClip({
      ...SIZE,
      frames,
      encoding,
      title: '',
      description: '',
      draw: ({ at }, pen) => paint(at, pen),
      signal,
      onProgress: () => undefined,
    });
  };
  const { sensor } = shownAlong(move, 0).resolved.camera;
  const [box] = frameLayout(SIZE, [sensor.width / sensor.height], true).pictures;
  if (!box) throw new Error('no picture');
  const render = async () => {
    for (const { at } of frames) {
      const { resolved, company } = shownAlong(move, at);
      const bands = handle.renderPicture(resolved.camera, box.width, box.height, {
        ...options,
        sitters: company,
      });
      for await (const band of bands) if (band.length === 0) throw new Error('no pixels');
    }
  };
  return [
    {
      name: 'clip, time a frame',
      ratio: await compareCost(make, render, PAIRS),
      sides: `one picture in ${SIZE.width} x ${SIZE.height}: render, captions, ${encoding.name} / render alone`,
    },
  ];
}
