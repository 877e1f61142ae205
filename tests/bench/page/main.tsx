/** The page that draws both sides; `tests/bench/main.ts` asks it for its lines. */
import type { Line } from '../line';
import { bareSide } from './bareSide';
import { frameLines } from './frame';
import { mountStage } from './stageSide';
import { stillLines } from './still';
import { loadSubject } from './subject';

export interface Bench {
  readonly frame: () => Promise<Line[]>;
  readonly still: () => Promise<Line[]>;
}

const subject = await loadSubject();
const stage = await mountStage(document.getElementById('stage') as HTMLElement, subject);
const bare = bareSide(document.getElementById('bare') as HTMLCanvasElement, subject);
window.bench = {
  frame: () => frameLines(subject, stage, bare),
  still: () => stillLines(subject, stage, bare),
};
