/** Large stills: cost and memory by size, the page's heap watched from outside. */
import type { CDPSession, Page } from '@playwright/test';
import { withBenchPage } from './browser';
import type { Line } from './line';

/** Milliseconds between two looks at the heap. */
const LOOK = 100;

const SIZES = [2, 64] as const;

/** JavaScript's heap and the array buffers beside it, bytes. */
async function heap(devtools: CDPSession): Promise<number> {
  const usage = await devtools.send('Runtime.getHeapUsage');
  return usage.usedSize + usage.backingStorageSize;
}

/** The most that the heap grows by, bytes, and the targets' bytes, while a still is made. */
async function memoryOf(page: Page, devtools: CDPSession, megapixels: number) {
  await devtools.send('HeapProfiler.collectGarbage');
  const before = await heap(devtools);
  let [most, done] = [before, false];
  const watching = (async () => {
    while (!done) {
      most = Math.max(most, await heap(devtools));
      await new Promise((resolve) => setTimeout(resolve, LOOK));
    }
  })();
  const targets = await page.evaluate((size) => window.bench.large.targets(size), megapixels);
  done = true;
  await watching;
  return { heap: most - before, peak: most, targets };
}

const mebibytes = (bytes: number): string => `${(bytes / 2 ** 20).toFixed(0)} MiB`;

export const largeLines = (): Promise<Line[]> =>
  withBenchPage(async (page) => {
    const devtools = await page.context().newCDPSession(page);
    const [small, large] = [
      await memoryOf(page, devtools, SIZES[0]),
      await memoryOf(page, devtools, SIZES[1]),
    ];
    const memory = (name: string, of: 'heap' | 'peak' | 'targets', aim?: number): Line => ({
      name,
      ratio: { median: large[of] / small[of] },
      ...(aim !== undefined && { aim }),
      sides: `${mebibytes(large[of])} at ${SIZES[1]} megapixels / ${mebibytes(small[of])} at ${SIZES[0]}`,
    });
    return [
      ...(await page.evaluate(() => window.bench.large.lines())),
      memory('the same, targets on the graphics processor', 'targets', 1),
      memory('the same, the page’s heap at most', 'peak', 1.1),
      memory('the same, by how much the heap grows', 'heap'),
    ];
  });
