import type { Asset, AssetMesh } from '../asset';
import { beards, hairStyles } from '../hair';
import type { HairParts } from '../hair/style';
import { SHAPES } from '../head/shape';
import type { TriangleMesh } from '../mesh';
import { polygonise } from '../nets';
import { sourceHash } from '../source';
import { arranged } from '../write';
import type { Detail, Sex } from './detail';
import { halved } from './halves';
import { byte, facingNormals, thinned } from './sampling';

/** Lightness of the volume under the locks, against the hair's own colour. */
const UNDER = 0.32;

/** Hair of one kind; its masks hold half of each vertex' own lightness. */
export function hairMesh(
  name: string,
  substance: 'hair' | 'brows',
  mesh: TriangleMesh & { readonly shade: number | Float32Array; readonly coarse?: Uint32Array },
): AssetMesh {
  const count = mesh.positions.length / 3;
  const { positions, normals, shade, coarse } = mesh;
  return {
    name,
    substance,
    positions,
    normals,
    indices: facingNormals(mesh),
    ...(coarse && { coarse }),
    openness: new Uint8Array(count).fill(255),
    regions: new Uint8Array(count),
    masks: {
      shade: Uint8Array.from({ length: count }, (_, v) =>
        byte((typeof shade === 'number' ? shade : (shade[v] as number)) / 2),
      ),
    },
  };
}

async function worn(id: string, name: string, parts: HairParts, detail: Detail): Promise<Asset> {
  const kind = name.startsWith('beard') ? 'beard' : 'hair';
  const volume = polygonise(parts.volume, thinned(parts.grid, detail.every));
  const { mesh, coarse } = await halved(volume, detail.triangles[kind] ?? detail.other);
  return arranged({
    id,
    source: sourceHash('hair'),
    meshes: [
      hairMesh(name, 'hair', { ...mesh, coarse, shade: UNDER }),
      hairMesh(`${name}-locks`, 'hair', parts.locks()),
    ],
    landmarks: {},
    guides: {},
    anchors: {},
    body: {},
  });
}

/** Every way to wear hair and beard, by file name, made when called. */
export function hairAssets(sex: Sex, detail: Detail): Record<string, () => Promise<Asset>> {
  const shape = SHAPES[sex];
  const kinds = { hair: hairStyles(shape), beard: sex === 'male' ? beards(shape) : {} };
  return Object.fromEntries(
    Object.entries(kinds).flatMap(([kind, styles]) =>
      Object.entries(styles).map(([style, parts]) => {
        const id = `${sex}-${kind}-${style}`;
        return [id, () => worn(id, `${kind}-${style}`, parts, detail)];
      }),
    ),
  );
}
