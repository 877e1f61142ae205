/** A frame in which both pictures change, from the page's state to finished pixels. */
import type { Line } from '../line';
import { compareCost } from '../pairs';
import type { BareSide } from './bareSide';
import { meanDifference, pixelsOf } from './pixels';
import type { StageSide } from './stageSide';
import type { Subject } from './subject';

const PAIRS = 12;
const AIM = 1.1;
/** Mean difference, 0..255, up to which both sides show the same picture: rounding and dither. */
const SAME = 0.5;
/** Other shaders, the same light: the pictures are alike. */
const ALIKE = 16;

/** @throws Error when the two sides do not draw the same: then they cannot be compared. */
function mustAgree(stage: StageSide, bare: BareSide, most: number): void {
  const off = meanDifference(pixelsOf(stage.canvas), pixelsOf(bare.renderer.domElement));
  if (!(off <= most)) throw new Error(`the two sides differ by ${off.toFixed(2)} of 255`);
}

/** Draws the other state than the last time, so that every picture is new; returns which. */
function turning(states: Subject['states'], draw: StageSide['draw']): () => number {
  let step: 0 | 1 = 1;
  return () => {
    step = step === 0 ? 1 : 0;
    draw(states[step]);
    return step;
  };
}

export async function frameLines(
  { states }: Subject,
  stage: StageSide,
  bare: BareSide,
): Promise<Line[]> {
  const [ours, plain] = [turning(states, stage.draw), turning(states, bare.draw)];
  const against = async (whose: 'studio' | 'stock', most: number) => {
    bare.wear(whose);
    const shown = ours();
    while (plain() !== shown);
    mustAgree(stage, bare, most);
    return compareCost(ours, plain, PAIRS);
  };
  return [
    {
      name: 'frame of two pictures',
      ratio: await against('studio', SAME),
      aim: AIM,
      sides:
        'the stage, React included / three.js drawing the same meshes, lamps and materials twice',
    },
    {
      name: 'frame of two pictures, three.js’s own shaders',
      ratio: await against('stock', ALIKE),
      sides:
        'the stage / physical materials, the fill as an environment map, PCF shadows of fixed width',
    },
  ];
}
