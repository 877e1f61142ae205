import { closedBelow } from './caps';
import { filesFor, formFile } from './files';
import { carry, shaped } from './forms';
import { BadSculpture } from './glb';
import { loadSculptureFile } from './load';
import type { Place, Sculpture, SculptureFile, SculptureMesh } from './sculpture';
import {
  type Clothes,
  type FormName,
  LANDMARKS,
  type LandmarkName,
  type Looks,
  type SitterModel,
} from './types';

/** Everything one person is put together from. */
export interface Ingredients {
  readonly figure: SculptureFile;
  readonly worn: readonly SculptureFile[];
  readonly clothes: Clothes;
  readonly forms: readonly {
    readonly file: SculptureFile;
    readonly name: FormName;
    readonly share: number;
  }[];
}

/** Skin whose mask for the clothes worn is at least this lies safely under cloth. */
const COVERED = 128;

/** The triangles that are not wholly under cloth. */
const bare = (indices: Uint32Array, under: Uint8Array): Uint32Array => {
  const kept: number[] = [];
  for (let t = 0; t < indices.length; t += 3) {
    const triangle = [indices[t], indices[t + 1], indices[t + 2]] as [number, number, number];
    if (triangle.some((v) => (under[v] as number) < COVERED)) kept.push(...triangle);
  }
  return Uint32Array.from(kept);
};

function withoutCovered(mesh: SculptureMesh, clothes: Clothes): SculptureMesh {
  const under = mesh.masks[`under-${clothes}`];
  if (!under) return mesh;
  return {
    ...mesh,
    indices: bare(mesh.indices, under),
    ...(mesh.coarse && { coarse: bare(mesh.coarse, under) }),
  };
}

/**
 * Puts a figure and what it wears together.
 * @throws BadSculpture when a landmark has no place, or a form does not fit the figure.
 */
export function compose({ figure, worn, clothes, forms }: Ingredients): Sculpture {
  const skin = figure.landmarks.menton?.[0];
  if (skin === undefined) throw new BadSculpture(`${figure.id} has no chin`);
  const meshes: SculptureMesh[] = [];
  const landmarks: Partial<Record<LandmarkName, Place>> = {};
  const guides: Record<string, Place> = {};
  for (const file of [figure, ...worn]) {
    const first = meshes.length;
    const placed = ([m, v]: Place): Place => [m + first, v];
    for (const [name, place] of Object.entries(file.landmarks))
      landmarks[name as LandmarkName] = placed(place);
    for (const [name, place] of Object.entries(file.guides)) guides[name] = placed(place);
    meshes.push(...file.meshes.map((mesh) => withoutCovered(mesh, clothes)));
  }
  const missing = LANDMARKS.find((name) => !landmarks[name]);
  if (missing) throw new BadSculpture(`${figure.id} has no place for ${missing}`);
  const displacement = (file: SculptureFile): SculptureMesh => {
    const mesh = file.meshes[0];
    if (mesh?.positions.length !== meshes[skin]?.positions.length)
      throw new BadSculpture(`${file.id} was made for another ${figure.id}: run npm run sculpt`);
    return mesh as SculptureMesh;
  };
  for (const { file, name, share } of forms)
    if (name !== 'smile') shaped(meshes, skin, displacement(file), share);
  const smile = forms.find(({ name }) => name === 'smile');
  const smiling = smile ? carry(meshes, skin, displacement(smile.file).positions) : new Map();
  return {
    ...figure,
    meshes: meshes.map((mesh, m) => (m === skin ? closedBelow(mesh) : mesh)),
    landmarks: landmarks as Sculpture['landmarks'],
    guides,
    smile: smiling,
  };
}

/** Gives the bytes of a file of models/sculpture/. */
export type ReadFile = (name: string) => Promise<Uint8Array>;

/**
 * Fetches files once each and composes people from them.
 * A failed fetch is forgotten, so that it can be tried again.
 */
export function sculptures(read: ReadFile) {
  const files = new Map<string, Promise<SculptureFile>>();
  const composed = new Map<string, Sculpture>();
  const file = (name: string): Promise<SculptureFile> => {
    const known = files.get(name);
    if (known) return known;
    const promise = read(name).then(loadSculptureFile);
    promise.catch(() => files.delete(name));
    files.set(name, promise);
    return promise;
  };
  return async (
    model: Pick<SitterModel, 'sculpture' | 'forms'>,
    looks: Looks,
  ): Promise<Sculpture> => {
    const names = filesFor(model, looks);
    const shares = names.forms.map((name) => (name === 'smile' ? 1 : (model.forms[name] ?? 0)));
    const key = JSON.stringify([names, shares]);
    const known = composed.get(key);
    if (known) return known;
    const [figure, worn, forms] = await Promise.all([
      file(names.figure),
      Promise.all(names.worn.map(file)),
      Promise.all(names.forms.map((name) => file(formFile(model.sculpture, name)))),
    ]);
    const sculpture = compose({
      figure,
      worn,
      clothes: looks.clothes,
      forms: names.forms.map((name, i) => ({
        name,
        share: shares[i] as number,
        file: forms[i] as SculptureFile,
      })),
    });
    composed.set(key, sculpture);
    return sculpture;
  };
}
