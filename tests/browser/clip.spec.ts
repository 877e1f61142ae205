/** A clip read back with the library that wrote it: frames, times, size, and its ends against stills. */
import { readFileSync } from 'node:fs';
import { ALL_FORMATS, BufferSource, EncodedPacketSink, Input } from 'mediabunny';
import { frameLayout } from '../../src/handout/clip/layout';
import { clipFrames, RATE } from '../../src/handout/clip/plan';
import { demoSession } from '../../src/session/demo';
import type { Letter } from '../../src/session/types';
import { must } from './expected';
import { type App, expect, test } from './fixture';
import { crop, difference, type Image } from './image';

/** A software rasteriser takes minutes over some frames beside other work; milliseconds. */
const LONGEST = 600_000;
test.setTimeout(LONGEST);

const SIZE = { width: 640, height: 360 } as const;
const TIMING = { seconds: 0.5, rest: 0, way: 'once' } as const;
const ASPECT = 24 / 1000 / (36 / 1000);
/** Root mean square, 0..255: colour at half the resolution and the quantiser's noise. Other standpoints give over 20. */
const LOSSY = 8;
/** The wall's grey, and how far the encoder's own levels may round it. */
const GREY = [201, 3] as const;

interface PixelsRead {
  readonly width: number;
  readonly height: number;
  readonly data: string;
}
const imageOf = ({ width, height, data }: PixelsRead): Image => ({
  width,
  height,
  data: new Uint8Array(Buffer.from(data, 'base64')),
});

/** A picture of Compare rendered as the clip renders it. */
async function still(app: App, letter: Letter, width: number, height: number): Promise<Image> {
  return imageOf(
    await app.page.evaluate(
      async ([wanted, across, down]) => {
        const { stage, pictures } = must(window.standpoint);
        const shown = must(pictures.find((each) => each.letter === wanted));
        let binary = '';
        for await (const band of must(stage).renderPicture(shown.resolved.camera, across, down, {
          sitters: shown.company,
          samples: 4,
        }))
          for (let i = 0; i < band.length; i += 0x8000)
            binary += String.fromCharCode(...band.subarray(i, i + 0x8000));
        return { width: across, height: down, data: btoa(binary) };

        function must<T>(value: T | null | undefined): T {
          if (value === null || value === undefined) throw new Error('nothing there');
          return value;
        }
      },
      [letter, width, height] as const,
    ),
  );
}

/** Frames of a file at given times, decoded in the page. */
async function decode(app: App, bytes: Buffer, times: readonly number[]): Promise<Image[]> {
  await app.page.route('**/reader.mjs', (route) =>
    route.fulfill({ path: 'node_modules/mediabunny/dist/bundles/mediabunny.mjs' }),
  );
  const read = await app.page.evaluate(
    async ([file, wanted]) => {
      const reader: typeof import('mediabunny') = await import(`${location.origin}/reader.mjs`);
      const source = Uint8Array.from(atob(file), (each) => each.charCodeAt(0));
      const input = new reader.Input({
        source: new reader.BufferSource(source.buffer),
        formats: reader.ALL_FORMATS,
      });
      const track = await input.getPrimaryVideoTrack();
      if (!track) throw new Error('no video track');
      const sink = new reader.VideoSampleSink(track);
      const frames: PixelsRead[] = [];
      for (const time of wanted) {
        const sample = await sink.getSample(time);
        if (!sample) throw new Error(`no frame at ${time}`);
        const { displayWidth: width, displayHeight: height } = sample;
        const pen = new OffscreenCanvas(width, height).getContext('2d');
        if (!pen) throw new Error('no canvas');
        sample.draw(pen, 0, 0);
        sample.close();
        const { data } = pen.getImageData(0, 0, width, height);
        let binary = '';
        for (let i = 0; i < data.length; i += 0x8000)
          binary += String.fromCharCode(...data.subarray(i, i + 0x8000));
        frames.push({ width, height, data: btoa(binary) });
      }
      return frames;
    },
    [bytes.toString('base64'), times] as const,
  );
  return read.map(imageOf);
}

async function openSheet(app: App): Promise<void> {
  // Without pages, whose pictures would be rendered first.
  const session = demoSession();
  await app.use({ ...session, handout: { ...session.handout, pages: [] } });
  await app.page.getByRole('link', { name: 'Handout' }).click();
  await app.press('Clip');
  await expect(app.slip().getByText(/frames at 25 a second/)).toBeVisible();
}

async function chooseSmall(app: App, seconds: string): Promise<void> {
  await app.choose('Size', '640 × 360');
  await app.type('Length of the move one way', seconds);
  await app.choose('Pictures', 'the moving picture alone');
  await app.choose('Way', 'once');
  await app.choose('Rest at each end', 'without a rest');
}

test('a short clip: frames, exact times, size, and its ends are the stills', async ({ fresh }) => {
  await fresh.page.addInitScript(() => {
    delete (window as Partial<Window>).showSaveFilePicker;
  });
  await fresh.goto();
  const layout = frameLayout(SIZE, [ASPECT], true);
  const box = must(layout.pictures[0]);
  const stills = {
    A: await still(fresh, 'A', box.width, box.height),
    B: await still(fresh, 'B', box.width, box.height),
  };
  await openSheet(fresh);
  await chooseSmall(fresh, '0.5');
  const frames = clipFrames(TIMING);
  await expect(fresh.slip()).toContainText(`${frames.length} frames at 25 a second`);
  const downloading = fresh.page.waitForEvent('download', { timeout: LONGEST });
  await fresh.press('Make the clip');
  const download = await downloading;
  expect(download.suggestedFilename()).toBe('move-0-40-m-to-2-40-m.mp4');
  const bytes = readFileSync(await download.path());

  const input = new Input({ source: new BufferSource(bytes), formats: ALL_FORMATS });
  const track = must(await input.getPrimaryVideoTrack());
  expect([await track.getDisplayWidth(), await track.getDisplayHeight()]).toEqual([640, 360]);
  expect(await track.getCodec()).toBe('avc');
  expect((await input.getMetadataTags()).comment).toContain('not a photograph');
  const times: number[] = [];
  for await (const packet of new EncodedPacketSink(track).packets()) times.push(packet.timestamp);
  times.sort((a, b) => a - b);
  expect(times).toHaveLength(frames.length);
  for (const [i, time] of times.entries()) expect(time).toBeCloseTo(i / RATE, 9);
  expect(await track.computeDuration()).toBeCloseTo(frames.length / RATE, 9);

  const [first, last] = await decode(fresh, bytes, [0, must(frames.at(-1)).time]);
  for (const [frame, own, other] of [
    [must(first), stills.A, stills.B],
    [must(last), stills.B, stills.A],
  ] as const) {
    const picture = crop(frame, box);
    expect(difference(picture, own)).toBeLessThan(LOSSY);
    expect(difference(picture, other)).toBeGreaterThan(2 * LOSSY);
    for (const channel of [0, 1, 2])
      expect(Math.abs((frame.data[channel] ?? 0) - GREY[0])).toBeLessThanOrEqual(GREY[1]);
  }
});

/** The picker cannot be worked from outside the page; files of the page's own stand in for the person's. */
const pickOwnFile = () => {
  window.showSaveFilePicker = async () =>
    (await navigator.storage.getDirectory()).getFileHandle('clip.mp4', { create: true });
};
const ownFiles = (app: App): Promise<Record<string, number>> =>
  app.page.evaluate(async () => {
    const found: Record<string, number> = {};
    const folder = (await navigator.storage.getDirectory()) as unknown as AsyncIterable<
      [string, FileSystemFileHandle]
    >;
    for await (const [name, handle] of folder) found[name] = (await handle.getFile()).size;
    return found;
  });

test('a file written as it grows: stopped it leaves nothing, finished it is there', async ({
  fresh,
}) => {
  await fresh.page.addInitScript(pickOwnFile);
  await fresh.goto();
  await openSheet(fresh);
  await chooseSmall(fresh, '4');
  await fresh.press('Make the clip');
  const progress = fresh.slip().getByRole('progressbar');
  await expect
    .poll(async () => Number(await progress.getAttribute('aria-valuenow')), {
      timeout: LONGEST / 2,
    })
    .toBeGreaterThan(0);
  await fresh.press('Stop');
  await expect(fresh.slip()).toContainText('Stopped. Nothing was saved.');
  expect(await ownFiles(fresh)).toEqual({});
  await fresh.type('Length of the move one way', '0.5');
  await fresh.press('Make the clip');
  await expect(fresh.slip()).toContainText('Saved as clip.mp4', { timeout: LONGEST / 2 });
  expect((await ownFiles(fresh))['clip.mp4']).toBeGreaterThan(1000);
});

test('without WebCodecs it says so', async ({ fresh }) => {
  await fresh.page.addInitScript(() => {
    delete (window as { VideoEncoder?: unknown }).VideoEncoder;
  });
  await fresh.page.goto('?test=landmarks#handout');
  await fresh.press('Clip');
  await expect(fresh.slip()).toContainText('This browser has no way to make a video.');
  await expect(fresh.slip().getByRole('button', { name: 'Make the clip' })).toHaveCount(0);
  await fresh.press('Take the stills instead');
  await expect(fresh.slip().getByRole('heading', { level: 2 })).not.toHaveText('Clip of the move');
  await expect(fresh.slip()).toContainText('a strip of standpoints');
});
