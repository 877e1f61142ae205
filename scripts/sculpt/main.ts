/**
 * Sculpts the figures and writes them to models/sculpture/.
 *   npm run sculpt [-- --only female] [-- --fine 1.1] [-- --out folder]
 * The same sources give the same bytes.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { assemble, type Detail, FULL_DETAIL, SEXES } from './assemble';
import { writeAsset } from './write';

const { values } = parseArgs({
  options: {
    only: { type: 'string' },
    fine: { type: 'string' },
    out: {
      type: 'string',
      default: fileURLToPath(new URL('../../models/sculpture', import.meta.url)),
    },
  },
});
const detail: Detail = values.fine ? { ...FULL_DETAIL, fine: Number(values.fine) } : FULL_DETAIL;
mkdirSync(values.out, { recursive: true });
for (const sex of SEXES.filter((s) => !values.only || s === values.only)) {
  const started = performance.now();
  const asset = await assemble(sex, detail);
  const bytes = await writeAsset(asset);
  writeFileSync(join(values.out, `${sex}.glb`), bytes);
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${sex}.glb: ${(bytes.byteLength / 1000).toFixed(0)} kB in ${seconds} s`);
  for (const mesh of asset.meshes)
    console.log(`  ${mesh.name.padEnd(10)} ${mesh.indices.length / 3} triangles`);
}
