import { NodeIO } from '@gltf-transform/core';
import { EXTMeshoptCompression, KHRMeshQuantization } from '@gltf-transform/extensions';
import { MeshoptDecoder } from 'meshoptimizer/decoder';
import { describe, expect, it } from 'vitest';
import { loadModels, readSculpture } from '../../src/models/node';
import { filesFor, formFile } from '../../src/sitter/files';
import { BadSculpture, readGlb } from '../../src/sitter/glb';
import { loadSculptureFile } from '../../src/sitter/load';
import { sculptureBytes } from './people';

const same = (a: ArrayLike<number> | null | undefined, b: ArrayLike<number>): boolean =>
  a?.length === b.length && Array.prototype.every.call(a, (value, i) => value === b[i]);

describe('everybody of models/', () => {
  const { sitters } = loadModels();
  it.each([...sitters.values()])('$id costs at most 2 MB to fetch', async (model) => {
    const names = filesFor(model, model.looks);
    const forms = names.forms.map((name) => formFile(model.sculpture, name));
    const files = await Promise.all([names.figure, ...names.worn, ...forms].map(readSculpture));
    const bytes = files.reduce((sum, { byteLength }) => sum + byteLength, 0);
    expect(bytes).toBeLessThanOrEqual(2_000_000);
  });
});

// Checked against: glTF-Transform, a general glTF 2.0 library, with its own dequantisation.
describe.each(['female', 'male'] as const)('the %s sculpture file', (id) => {
  const bytes = sculptureBytes(id);

  it('holds for a general reader what it holds for ours', async () => {
    const io = new NodeIO()
      .registerExtensions([EXTMeshoptCompression, KHRMeshQuantization])
      .registerDependencies({ 'meshopt.decoder': MeshoptDecoder });
    const document = await io.readBinary(bytes);
    const ours = await readGlb(bytes);
    const nodes = document.getRoot().listNodes();
    expect(nodes).toHaveLength(ours.meshes.length);
    nodes.forEach((node, k) => {
      const mesh = ours.meshes[k];
      const primitive = node.getMesh()?.listPrimitives()[0];
      if (!mesh || !primitive) throw new Error('no mesh');
      expect(node.getMesh()?.getName()).toBe(mesh.name);
      expect(same(primitive.getIndices()?.getArray(), mesh.indices)).toBe(true);
      const position = primitive.getAttribute('POSITION');
      const normal = primitive.getAttribute('NORMAL');
      const [scale, translation] = [node.getScale(), node.getTranslation()];
      let worst = 0;
      let worstNormal = 0;
      for (let v = 0; v < (position?.getCount() ?? 0); v++) {
        const p = position?.getElement(v, []) as number[];
        const n = normal?.getElement(v, []) as number[];
        const l = Math.hypot(...n);
        for (const j of [0, 1, 2] as const) {
          const there = (p[j] as number) * scale[j] + translation[j];
          worst = Math.max(worst, Math.abs(there - (mesh.positions[3 * v + j] as number)));
          worstNormal = Math.max(
            worstNormal,
            Math.abs((n[j] as number) / l - (mesh.normals[3 * v + j] as number)),
          );
        }
      }
      expect(position?.getCount()).toBe(mesh.positions.length / 3);
      expect(worst).toBeLessThan(1e-6);
      expect(worstNormal).toBeLessThan(1e-6);
      for (const [name, channels] of Object.entries(mesh.channels))
        expect(same(primitive.getAttribute(name)?.getArray(), channels), name).toBe(true);
    });
  });

  it('is refused with a reason when it is damaged', async () => {
    await expect(loadSculptureFile(new Uint8Array(8))).rejects.toThrow(BadSculpture);
    await expect(loadSculptureFile(bytes.slice(0, 5000))).rejects.toThrow(/expected \d+ bytes/);
    const other = bytes.slice();
    other.set(new TextEncoder().encode('"VEC9"'), Buffer.from(bytes).indexOf('"VEC3"'));
    await expect(loadSculptureFile(other)).rejects.toThrow(/type/);
  });
});
