import { readFileSync } from 'node:fs';
import { readSculpture } from '../../src/models/node';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { sculptures } from '../../src/sitter/compose';
import type { Sculpture } from '../../src/sitter/sculpture';
import { DIMENSIONS, type Dimensions, type SitterModel } from '../../src/sitter/types';

const read = (path: string): Buffer =>
  readFileSync(new URL(`../../models/${path}`, import.meta.url));

export const sculptureBytes = (id: SitterModel['sculpture']): Uint8Array =>
  read(`sculpture/${id}.glb`);

export const IDS = ['adult-woman', 'adult-man'] as const;

export const modelOf = (id: (typeof IDS)[number]): SitterModel =>
  JSON.parse(read(`sitters/${id}.json`).toString());

export const dimensionsOf = (model: SitterModel): Dimensions =>
  Object.fromEntries(DIMENSIONS.map((name) => [name, model.dimensions[name].mm])) as Dimensions;

export interface Someone {
  readonly id: (typeof IDS)[number];
  readonly model: SitterModel;
  readonly sculpture: Sculpture;
  readonly sitter: BuiltSitter;
}

export const sculptureOf = sculptures(readSculpture);

/** The sitters of models/, built upright from the committed sculptures. */
export const everyone = (): Promise<Someone[]> =>
  Promise.all(
    IDS.map(async (id) => {
      const model = modelOf(id);
      const sculpture = await sculptureOf(model, model.looks);
      return { id, model, sculpture, sitter: buildSitter(sculpture, model) };
    }),
  );
