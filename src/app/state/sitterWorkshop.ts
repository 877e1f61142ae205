/** The worker that builds sitters, from the page's side. It starts with the page's own code. */
import type { Sitter } from '../../sitter/types';
import type { Answer, Ask, Wanted } from './sitter.worker';

export type Built =
  | { readonly sitter: Sitter }
  | { readonly failed: string; readonly impossible: boolean };

export class SitterWorkshop {
  private readonly worker = new Worker(new URL('./sitter.worker.ts', import.meta.url), {
    type: 'module',
  });
  private readonly waiting = new Map<number, (built: Built) => void>();
  private count = 0;

  constructor() {
    this.worker.onmessage = ({ data: { id, ...built } }: MessageEvent<Answer>) => {
      this.waiting.get(id)?.(built as Built);
      this.waiting.delete(id);
    };
    this.worker.onerror = ({ message }) => {
      const failed = message || 'the worker could not be started';
      for (const tell of this.waiting.values()) tell({ failed, impossible: false });
      this.waiting.clear();
    };
  }

  build(wanted: Wanted): Promise<Built> {
    this.count += 1;
    const id = this.count;
    this.worker.postMessage({ id, ...wanted } satisfies Ask);
    return new Promise((resolve) => this.waiting.set(id, resolve));
  }
}
