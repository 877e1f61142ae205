/** Encodes one picture off the page's own thread, one call after another. */
import type { RowWriter } from './types';
import { type Encoding, rowWriter } from './writer';

export type Call =
  | { readonly start: Encoding }
  | { readonly rows: Uint8Array<ArrayBuffer> }
  | { readonly finish: true };

/** Each call is answered once; the last one by the file. */
export type Answer = { readonly blob?: Blob } | { readonly failed: string };

let writer: RowWriter | null = null;
let last: Promise<void> = Promise.resolve();

async function answer(call: Call): Promise<Answer> {
  if ('start' in call) {
    writer = rowWriter(call.start);
    return {};
  }
  if (!writer) throw new Error('nothing was started');
  if ('finish' in call) return { blob: await writer.finish() };
  await writer.write(call.rows);
  return {};
}

self.onmessage = ({ data }: MessageEvent<Call>) => {
  last = last.then(async () => {
    try {
      self.postMessage(await answer(data));
    } catch (error) {
      const failed = error instanceof Error ? error.message : String(error);
      self.postMessage({ failed } satisfies Answer);
    }
  });
};
