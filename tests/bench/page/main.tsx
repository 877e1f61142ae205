/** The page that draws both sides; `tests/bench/main.ts` asks it for its lines. */
import './targetBytes';
import type { Line } from '../line';
import { bareSide } from './bareSide';
import { clipLines } from './clip';
import { frameLines } from './frame';
import { type LargeStill, largeStill } from './largeStill';
import { mountStage } from './stageSide';
import { stillLines } from './still';
import { loadSubject } from './subject';

export interface Bench {
  readonly frame: () => Promise<Line[]>;
  readonly still: () => Promise<Line[]>;
  readonly clip: () => Promise<Line[]>;
  readonly large: LargeStill;
}

const subject = await loadSubject();
const stage = await mountStage(document.getElementById('stage') as HTMLElement, subject);
const bare = bareSide(document.getElementById('bare') as HTMLCanvasElement, subject);
window.bench = {
  frame: () => frameLines(subject, stage, bare),
  still: () => stillLines(subject, stage, bare),
  clip: () => clipLines(subject, stage),
  large: largeStill(subject, stage, bare),
};
