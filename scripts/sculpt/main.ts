/**
 * Sculpts the figures and what they wear and writes them to models/sculpture/.
 *   npm run sculpt [-- --only female-hair] [-- --fine 1.1] [-- --out folder]
 * The same sources give the same bytes. `--only` names the beginning of the files wanted.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { assets, type Detail, FULL_DETAIL, SEXES } from './assemble';
import { writeAsset } from './write';

const { values } = parseArgs({
  options: {
    only: { type: 'string', default: '' },
    fine: { type: 'string' },
    out: {
      type: 'string',
      default: fileURLToPath(new URL('../../models/sculpture', import.meta.url)),
    },
  },
});
const detail: Detail = values.fine ? { ...FULL_DETAIL, fine: Number(values.fine) } : FULL_DETAIL;
mkdirSync(values.out, { recursive: true });
for (const sex of SEXES)
  for (const [id, make] of Object.entries(assets(sex, detail))) {
    if (!id.startsWith(values.only)) continue;
    const started = performance.now();
    const asset = await make();
    const bytes = await writeAsset(asset);
    writeFileSync(join(values.out, `${id}.glb`), bytes);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    console.log(`${id}.glb: ${(bytes.byteLength / 1000).toFixed(0)} kB in ${seconds} s`);
    for (const mesh of asset.meshes)
      console.log(`  ${mesh.name.padEnd(18)} ${mesh.indices.length / 3} triangles`);
  }
