import { describe, expect, it } from 'vitest';
import { shareMeshes } from '../../src/app/state/shareMeshes';
import { dimensionsOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import { unsculpted } from '../../src/session/cast';
import { blend } from '../../src/sitter/blend';
import type { Sitter, SitterMesh } from '../../src/sitter/types';

const mesh = (name: string, x: number): SitterMesh => ({
  name,
  substance: 'skin',
  positions: Float32Array.of(x, 0, 0, 0, 1, 0, 0, 0, 1),
  normals: Float32Array.of(1, 0, 0, 1, 0, 0, 1, 0, 0),
  colours: new Uint8Array(9),
  openness: new Uint8Array(3),
  indices: Uint32Array.of(0, 1, 2),
  regions: new Uint8Array(3),
});
const woman = loadModels().sitters.get('adult-woman');
if (!woman) throw new Error('no woman');
const bare = unsculpted(dimensionsOf(woman));
const sitter = (x: number): Sitter => ({ ...bare, meshes: [mesh('still', 1), mesh('moved', x)] });

describe('meshes that come out as they were', () => {
  it('stay the same objects, the others are the new ones', () => {
    const [before, after] = [sitter(1), sitter(2)];
    const shared = shareMeshes(before, after);
    expect(shared.meshes[0]).toBe(before.meshes[0]);
    expect(shared.meshes[1]).toBe(after.meshes[1]);
    expect(shareMeshes(undefined, after)).toBe(after);
    expect(shareMeshes({ ...before, meshes: [] }, after).meshes).toEqual(after.meshes);
  });

  it('are not mixed anew while a slider moves', () => {
    const least = sitter(1);
    const nodes = [
      { value: 0, sitter: least },
      { value: 10, sitter: shareMeshes(least, sitter(2)) },
    ];
    const between = blend(nodes, 5);
    expect(between.meshes[0]).toBe(least.meshes[0]);
    expect(between.meshes[1]?.positions[0]).toBe(1.5);
  });
});
