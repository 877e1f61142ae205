import { unitAreaNormals } from '../../../src/sitter/normals';
import type { Asset, AssetMesh } from '../asset';
import type { Field } from '../field';
import { beards, hairStyles } from '../hair';
import { hanging } from '../hair/hanging';
import type { HairParts } from '../hair/style';
import { type HeadShape, SHAPES } from '../head/shape';
import type { TriangleMesh } from '../mesh';
import { polygonise } from '../nets';
import type { Ribbons } from '../ribbons';
import { sourceHash } from '../source';
import { arranged } from '../write';
import type { Detail, Sex } from './detail';
import { halved } from './halves';
import { byte, facing, sample, thinned } from './sampling';

type Hair = TriangleMesh & Omit<Ribbons, keyof TriangleMesh> & { readonly coarse?: Uint32Array };

/**
 * Hair of one kind; its mask `shade` holds half of each vertex' own lightness.
 * @param hang how free of the skin it hangs, 0..1, where it does
 */
export function hairMesh(
  name: string,
  substance: 'hair' | 'brows',
  mesh: Hair,
  hang?: Field,
): AssetMesh {
  const count = mesh.positions.length / 3;
  const { positions, normals, indices, shade, strand, sheer, coarse } = mesh;
  return {
    name,
    substance,
    positions,
    normals,
    indices,
    ...(coarse && { coarse }),
    openness: new Uint8Array(count).fill(255),
    regions: new Uint8Array(count),
    masks: {
      shade: Uint8Array.from(shade, (s) => byte(s / 2)),
      strand,
      sheer,
      ...(hang && { hang: sample(mesh, (p) => byte(hang(...p))) }),
    },
  };
}

/**
 * The mesh with normals on the side that its triangles face: where a thin border is simplified, the
 * field's own normal may point through it.
 */
function sided(mesh: TriangleMesh): TriangleMesh {
  const { positions, normals, indices } = mesh;
  const faced = unitAreaNormals(positions, indices, normals);
  const out = normals.slice();
  for (let o = 0; o < out.length; o += 3) {
    const along = [0, 1, 2].reduce(
      (sum, j) => sum + (normals[o + j] as number) * (faced[o + j] as number),
      0,
    );
    if (along < 0) out.set(faced.subarray(o, o + 3), o);
  }
  return { ...mesh, normals: out };
}

/** A volume with what its style says of each vertex. */
function painted(mesh: TriangleMesh, paint: HairParts['paint']): Hair {
  const { positions: P } = mesh;
  const each = Array.from({ length: P.length / 3 }, (_, v) =>
    paint(P[3 * v] as number, P[3 * v + 1] as number, P[3 * v + 2] as number),
  );
  return {
    ...mesh,
    shade: Float32Array.from(each, (p) => p.shade),
    strand: Uint8Array.from(each, (p) => byte(p.strand)),
    sheer: Uint8Array.from(each, (p) => byte(p.sheer)),
  };
}

async function worn(
  shape: HeadShape,
  kind: 'hair' | 'beard',
  style: string,
  parts: HairParts,
  detail: Detail,
): Promise<Asset> {
  const name = `${kind}-${style}`;
  // A beard grows on the skin that bends under it.
  const hang = kind === 'hair' ? hanging(shape) : undefined;
  const volume = polygonise(parts.volume, thinned(parts.grid, detail.every));
  const { mesh, coarse } = await halved(volume, detail.triangles[kind] ?? detail.other);
  return arranged({
    id: `${shape.id}-${name}`,
    source: sourceHash('hair'),
    meshes: [
      hairMesh(name, 'hair', { ...painted(sided(mesh), parts.paint), coarse }, hang),
      hairMesh(`${name}-locks`, 'hair', facing(parts.locks()), hang),
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
    (['hair', 'beard'] as const).flatMap((kind) =>
      Object.entries<HairParts>(kinds[kind]).map(([style, parts]) => [
        `${sex}-${kind}-${style}`,
        () => worn(shape, kind, style, parts, detail),
      ]),
    ),
  );
}
