/** What building a sitter costs, against copying the finished arrays and computing their normals. */
import { BufferAttribute, BufferGeometry } from 'three';
import { buildSitter } from '../../src/sitter/build';
import { type SitterMesh, UPRIGHT } from '../../src/sitter/types';
import { everyone } from '../sitter/people';
import type { Line } from './line';
import { compareCost } from './pairs';

const PLAIN = 'a copy of the same arrays with computeVertexNormals of three.js';

function copyWithNormals({ positions, colours, indices, regions }: SitterMesh): void {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions.slice(), 3));
  geometry.setAttribute('color', new BufferAttribute(colours.slice(), 3, true));
  geometry.setAttribute('region', new BufferAttribute(regions.slice(), 1));
  geometry.setIndex(new BufferAttribute(indices.slice(), 1));
  geometry.computeVertexNormals();
}

export async function sitterLines(): Promise<Line[]> {
  const [someone] = await everyone();
  if (!someone) throw new Error('no sitter');
  const { sculpture, model, sitter } = someone;
  const copy = () => sitter.meshes.forEach(copyWithNormals);
  const own = model.dimensions.nose_protrusion.mm;
  // A step back and forth of a dimension or of the head, as a drag makes it.
  let step = 0;
  const next = () => {
    step = (step + 1) % 2;
    return step;
  };
  return [
    {
      name: 'sitter with a new dimension',
      ratio: await compareCost(
        () => buildSitter(sculpture, model, { nose_protrusion: own + 0.5 * next() }),
        copy,
        9,
      ),
      sides: `landmarks, warp, normals, colours, pose / ${PLAIN}`,
    },
    {
      name: 'sitter with a new pose',
      ratio: await compareCost(
        () => buildSitter(sculpture, model, {}, { ...UPRIGHT, headTurn: 0.3 + 0.02 * next() }),
        copy,
        9,
      ),
      sides: `the upright sitter kept, the head turned / ${PLAIN}`,
    },
  ];
}
