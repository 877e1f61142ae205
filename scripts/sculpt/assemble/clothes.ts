import { REGION } from '../../../src/sitter/types';
import type { Asset, AssetMesh } from '../asset';
import { clothes } from '../body/clothes';
import { type BodyPart, wholeBody } from '../body/parts';
import { BODY_SHAPES } from '../body/shape';
import { isSkirt } from '../body/weights';
import { polygonise } from '../nets';
import { openness } from '../occlusion';
import { bodyPlaces } from '../places';
import { sourceHash } from '../source';
import { arranged } from '../write';
import { bends, bound } from './bones';
import type { Detail, Sex } from './detail';
import { halved } from './halves';
import { byte, sample, thinned } from './sampling';

/** How much a bone's share counts against a move of the surface, when parts are simplified. */
const BEND_WEIGHT = 0.25;
/** Skirts fall straight as sculpted and are bent far over the knees; they have few seams to lose. */
const SKIRT_BEND_WEIGHT = 1.2;

/**
 * Parts of a body as meshes with what stands on them.
 * @param air everything that shades them
 */
export async function bodyMeshes(
  sex: Sex,
  parts: readonly BodyPart[],
  air: ReturnType<typeof wholeBody>,
  detail: Detail,
): Promise<Pick<Asset, 'meshes' | 'guides'>> {
  const found = bodyPlaces(BODY_SHAPES[sex]);
  const open = openness(air, 1);
  const meshes: AssetMesh[] = [];
  const guides: Record<string, readonly [number, number]> = {};
  for (const part of parts) {
    const whole = polygonise(part.field, thinned(part.grid, detail.every));
    const { mesh, coarse, places } = await halved(
      whole,
      detail.triangles[part.name] ?? detail.other,
      (half) => found.on(part.name, half),
      (half) => bends(BODY_SHAPES[sex], part.name, half),
      isSkirt(part.name) ? SKIRT_BEND_WEIGHT : BEND_WEIGHT,
    );
    for (const [name, vertex] of Object.entries(places)) guides[name] = [meshes.length, vertex];
    meshes.push({
      ...mesh,
      coarse,
      name: part.name,
      substance: part.substance,
      openness: sample(mesh, ([x, y, z], [nx, ny, nz]) => byte(open(x, y, z, nx, ny, nz))),
      regions: sample(mesh, (p) => (found.onArm(p) ? REGION.arm : REGION.body)),
      masks: {},
      ...bound(BODY_SHAPES[sex], part.name, mesh),
    });
  }
  return { meshes, guides };
}

/** Every set of clothes, by file name, made when called. */
export function clothesAssets(sex: Sex, detail: Detail): Record<string, () => Promise<Asset>> {
  const shape = BODY_SHAPES[sex];
  return Object.fromEntries(
    Object.entries(clothes(shape)).map(([set, parts]) => {
      const id = `${sex}-clothes-${set}`;
      const make = async (): Promise<Asset> => {
        const { meshes, guides: places } = await bodyMeshes(sex, parts, wholeBody(parts), detail);
        const { landmarks, guides } = bodyPlaces(shape).sort(places);
        return arranged({
          id,
          source: sourceHash('clothes'),
          meshes,
          landmarks,
          guides,
          anchors: {},
          body: {},
        });
      };
      return [id, make];
    }),
  );
}
