/** A writer of rows whose work is done in a worker, so that the page answers meanwhile. */
import type { Answer, Call } from './encode.worker';
import type { RowWriter } from './types';
import type { Encoding } from './writer';

/** Bands that wait to be encoded while the next is rendered. */
const WAITING = 2;

export function writerInWorker(encoding: Encoding): RowWriter {
  const worker = new Worker(new URL('./encode.worker.ts', import.meta.url), { type: 'module' });
  const waiting: { resolve: (answer: Blob | undefined) => void; reject: (why: Error) => void }[] =
    [];
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    const asked = waiting.shift();
    if ('failed' in data) asked?.reject(new Error(data.failed));
    else asked?.resolve(data.blob);
  };
  worker.onerror = ({ message }) => {
    for (const { reject } of waiting.splice(0))
      reject(new Error(message || 'the worker could not be started'));
  };
  const call = (asked: Call, transfer: Transferable[] = []): Promise<Blob | undefined> => {
    const answered = new Promise<Blob | undefined>((resolve, reject) =>
      waiting.push({ resolve, reject }),
    );
    answered.catch(() => undefined); // whoever awaits it is told; nobody may, once it is given up
    worker.postMessage(asked, transfer);
    return answered;
  };
  let pending: Promise<unknown>[] = [call({ start: encoding })];
  return {
    async write(rgba) {
      pending.push(call({ rows: rgba }, [rgba.buffer]));
      if (pending.length > WAITING) await pending.shift();
    },
    async finish() {
      await Promise.all(pending);
      pending = [];
      const blob = await call({ finish: true });
      worker.terminate();
      if (!blob) throw new Error('no file was made');
      return blob;
    },
    async abort() {
      worker.terminate();
    },
  };
}
