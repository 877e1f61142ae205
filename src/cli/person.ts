import { readSculpture } from '../models/node';
import { type BuiltSitter, buildSitter } from '../sitter/build';
import { sculptures } from '../sitter/compose';
import type { Changes } from '../sitter/resolve';
import type { Sculpture } from '../sitter/sculpture';
import { type Pose, type SitterModel, UPRIGHT } from '../sitter/types';

/** Who is asked for, and how. */
export interface Person {
  readonly sitter: SitterModel;
  readonly changes: Changes;
  readonly pose?: Partial<Pose>;
}

/** The sitter asked for, and the sculpture it is made from. @throws ImpossibleDimensions */
export async function personOf({ sitter: model, changes, pose }: Person): Promise<{
  readonly sculpture: Sculpture;
  readonly sitter: BuiltSitter;
}> {
  const sculpture = await sculptures(readSculpture)(model, model.looks);
  return { sculpture, sitter: buildSitter(sculpture, model, changes, { ...UPRIGHT, ...pose }) };
}
