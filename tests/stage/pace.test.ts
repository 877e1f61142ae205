import { describe, expect, it, vi } from 'vitest';
import { Pace } from '../../src/stage/pace';

/** Does views that take so long each, milliseconds; the pieces it did them in. */
async function pieces(each: number, views: number): Promise<number[]> {
  let now = 0;
  const clock = vi.spyOn(performance, 'now').mockImplementation(() => now);
  const pace = new Pace();
  const done: number[] = [];
  for (let left = views; left > 0; ) {
    pace.begin();
    const piece = Math.min(left, pace.piece);
    now += piece * each;
    await pace.rest(piece);
    done.push(piece);
    left -= piece;
  }
  clock.mockRestore();
  return done;
}

describe('pace', () => {
  it('gives the page its turn every tenth of a second', async () => {
    const done = await pieces(10, 64);
    expect(done.every((piece) => piece * 10 <= 100)).toBe(true);
    expect(Math.max(...done)).toBe(10);
  });

  it('does one thing at a time where each takes longer than that', async () => {
    expect(await pieces(400, 5)).toEqual([1, 1, 1, 1, 1]);
  });

  it('lets the page have a turn: what was set to happen happens', async () => {
    const pace = new Pace();
    let turns = 0;
    const timer = setInterval(() => {
      turns += 1;
    }, 0);
    for (let i = 0; i < 500 && turns === 0; i++) await pace.rest(1);
    clearInterval(timer);
    expect(turns).toBeGreaterThan(0);
  });
});
