import { dimensionsOf } from '../../../src/models/framing';
import { loadModels } from '../../../src/models/node';
import type { Dimensions, SitterModel } from '../../../src/sitter/types';

/** What the body is built from: sex, and dimensions in millimetres. */
export interface BodyShape {
  readonly sex: SitterModel['sculpture'];
  readonly mm: Dimensions;
}

function median(id: string): BodyShape {
  const sitter = loadModels().sitters.get(id);
  if (!sitter) throw new Error(`models/sitters has no "${id}", whose dimensions shape the body`);
  return { sex: sitter.sculpture, mm: dimensionsOf(sitter) };
}

/** The sculpted bodies: the adults at the 50th percentile, from models/sitters. */
export const BODY_SHAPES: Readonly<Record<BodyShape['sex'], BodyShape>> = {
  female: median('adult-woman'),
  male: median('adult-man'),
};
