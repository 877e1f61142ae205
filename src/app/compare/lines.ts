import type { Letter } from '../../session/types';

/** How each picture is told apart: class of its accent, its colour and its dash pattern in pixels. */
export const LINES: Readonly<Record<Letter, { css: string; tone: string; dash: string }>> = {
  A: { css: 'lines-a', tone: 'var(--a)', dash: 'none' },
  B: { css: 'lines-b', tone: 'var(--b)', dash: '11 6' },
  C: { css: 'lines-c', tone: 'var(--c)', dash: '2 6' },
  D: { css: 'lines-d', tone: 'var(--d)', dash: '14 5 2 5' },
};
