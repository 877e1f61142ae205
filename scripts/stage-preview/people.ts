/** Sitters for the contact sheets, from the project's own models. */
import { degToRad } from '../../src/optics/units';
import { buildSitter } from '../../src/sitter/build';
import { sculptures } from '../../src/sitter/compose';
import { type Pose, type Sitter, type SitterModel, UPRIGHT } from '../../src/sitter/types';
import type { Cell } from './cell';

const urls = import.meta.glob<string>('../../models/sculpture/*.glb', {
  eager: true,
  query: '?url',
  import: 'default',
});
const models = import.meta.glob<SitterModel>('../../models/sitters/*.json', {
  eager: true,
  import: 'default',
});

const sculptureFor = sculptures(async (name) => {
  const url = urls[`../../models/sculpture/${name}`];
  if (!url) throw new Error(`models/sculpture/${name} is not there`);
  return new Uint8Array(await (await fetch(url)).arrayBuffer());
});

const ANGLES = ['lean', 'bodyTurn', 'headTurn', 'headNod', 'headTilt'] as const;

function poseOf(change: Partial<Pose> = {}): Pose {
  const pose = { ...UPRIGHT, ...change };
  const angles = ANGLES.map((name) => [name, degToRad(pose[name])] as const);
  return { ...pose, ...Object.fromEntries(angles) };
}

const built = new Map<string, Promise<Sitter>>();

/** The sitter of a cell; the last few are kept, since neighbours in a sheet often share one. */
export function personFor(
  cell: Pick<Cell, 'person' | 'looks' | 'changes' | 'pose'>,
): Promise<Sitter> {
  const key = JSON.stringify([cell.person, cell.looks, cell.changes, cell.pose]);
  const known = built.get(key);
  if (known) return known;
  const model = models[`../../models/sitters/${cell.person}.json`];
  if (!model) throw new Error(`models/sitters/${cell.person}.json is not there`);
  const looks = { ...model.looks, ...cell.looks };
  const promise = sculptureFor(model, looks).then((sculpture) =>
    buildSitter(sculpture, { ...model, looks }, cell.changes, poseOf(cell.pose)),
  );
  if (built.size >= 3) built.delete([...built.keys()][0] as string);
  built.set(key, promise);
  return promise;
}
