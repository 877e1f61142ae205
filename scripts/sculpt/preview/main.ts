/**
 * A look at the sculpture without the app: polygonises a head, draws it in a headless browser and
 * writes a contact sheet.
 *   tsx scripts/sculpt/preview/main.ts --shape female --fine 1.2 --sheet front --out /tmp/sheet.png
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { findBrowser } from '../../browser';
import { FORM_NAMES, headForms } from '../head/forms';
import { skinGrid } from '../head/grid';
import { headParts } from '../head/parts';
import { SHAPES } from '../head/shape';
import type { TriangleMesh } from '../mesh';
import { polygonise } from '../nets';
import { simplify } from '../simplify';
import { eyeColours, hairColours, skinColours } from './colour';
import { toMedian } from './median';
import { settleForm } from './settle';
import { SHEETS } from './sheets';

const { values: options } = parseArgs({
  options: {
    shape: { type: 'string', default: 'female' },
    fine: { type: 'string', default: '1.2' },
    sheet: { type: 'string', default: 'turn' },
    hair: { type: 'string', default: '' },
    /** Simplify the skin to this many triangles; 0 keeps them all. */
    triangles: { type: 'string', default: '0' },
    clay: { type: 'boolean', default: false },
    /** Move the landmarks to the median sitter's, as the app does. */
    median: { type: 'boolean', default: false },
    /** A form of head/forms.ts; empty for the head as it is. */
    form: { type: 'string', default: '' },
    out: { type: 'string', default: '/tmp/sculpture.png' },
  },
});

const shape = SHAPES[options.shape === 'male' ? 'male' : 'female'];

/** The skin in the asked form: moved, then set on the form's field. */
function formed(mesh: TriangleMesh): TriangleMesh {
  const name = FORM_NAMES.find((n) => n === options.form);
  return name ? settleForm(mesh, headForms(shape)[name]) : mesh;
}

interface Part extends TriangleMesh {
  readonly name: string;
  readonly substance: 'skin' | 'hair' | 'locks' | 'brows' | 'eye';
  readonly colours: Float32Array;
}

/** The skin as the asset would keep it: colour borders survive like edges do. */
async function simplified(mesh: TriangleMesh, colours: Float32Array): Promise<TriangleMesh> {
  const triangles = Number(options.triangles);
  if (triangles === 0) return mesh;
  const detail = [0, 1, 2].map((j) => colours.filter((_, i) => i % 3 === j));
  return { ...mesh, indices: await simplify(mesh, { triangles, locked: [], detail }) };
}

async function build(): Promise<Part[]> {
  const parts = headParts(shape);
  const started = performance.now();
  const base = polygonise(parts.skin, skinGrid(shape, Number(options.fine)));
  const full = formed(base);
  const colours = skinColours(base, parts, options.hair !== '');
  const skin = await simplified(full, colours);
  console.log(
    `skin: ${skin.indices.length / 3} triangles, ${Math.round(performance.now() - started)} ms`,
  );
  const out: Part[] = [
    {
      name: 'skin',
      substance: 'skin',
      ...skin,
      colours: skin === full ? colours : skinColours(skin, parts, options.hair !== ''),
    },
  ];
  const lines = parts.fringe();
  out.push({
    name: 'fringe',
    substance: 'brows',
    ...lines,
    colours: hairColours(lines, (v) => 0.8 * (lines.shade[v] as number)),
  });
  if (options.hair === 'short' || options.hair === 'tied') {
    const style = parts.hair[options.hair];
    const volume = polygonise(style.volume, style.grid);
    const locks = style.locks();
    console.log(`hair: ${volume.indices.length / 3} + ${locks.indices.length / 3} triangles`);
    out.push({
      name: 'volume',
      substance: 'hair',
      ...volume,
      colours: hairColours(volume, () => 0.62),
    });
    out.push({
      name: 'locks',
      substance: 'locks',
      ...locks,
      colours: hairColours(locks, (v) => locks.shade[v] as number),
    });
  }
  const eye = parts.eyes();
  const eyeTint = eyeColours(eye);
  for (const side of [1, -1]) {
    const positions = eye.positions.slice();
    for (let i = 0; i < positions.length; i += 3)
      (positions[i] as number) += (side * shape.interpupillary) / 2;
    out.push({
      name: side > 0 ? 'eyeLeft' : 'eyeRight',
      substance: 'eye',
      positions,
      normals: eye.normals,
      indices: eye.indices,
      colours: eyeTint,
    });
  }
  return out;
}

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const sheet = SHEETS[options.sheet];
if (!sheet) throw new RangeError(`no sheet "${options.sheet}": ${Object.keys(SHEETS).join(', ')}`);
const built = await build();
const move = toMedian(shape);
const parts = options.median ? built.map((part) => ({ ...part, ...move(part) })) : built;
const files = new Map<string, Buffer>();
for (const part of parts)
  for (const key of ['positions', 'normals', 'colours', 'indices'] as const) {
    const a = part[key];
    files.set(`/data/${part.name}.${key}`, Buffer.from(a.buffer, a.byteOffset, a.byteLength));
  }
files.set(
  '/job.json',
  Buffer.from(
    JSON.stringify({
      ...sheet,
      clay: options.clay,
      parts: parts.map(({ name, substance }) => ({ name, substance })),
    }),
  ),
);
files.set('/page.js', readFileSync(here('./page.js')));
files.set(
  '/',
  Buffer.from(
    '<!doctype html><style>body{margin:0}</style><script type="importmap">{"imports":{"three":"/three/three.module.js"}}</script><script type="module" src="/page.js"></script>',
  ),
);

const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args: [...args], env: { ...env } });
try {
  const page = await browser.newPage({ viewport: { width: sheet.width, height: sheet.height } });
  page.on('console', (m) => console.log(m.text()));
  page.on('pageerror', (e) => console.error(e));
  await page.route('**/*', (route) => {
    const path = new URL(route.request().url()).pathname;
    const three = path.match(/^\/three\/([\w.]+)$/);
    const body = three
      ? readFileSync(here(`../../../node_modules/three/build/${three[1]}`))
      : files.get(path);
    if (!body) return route.fulfill({ status: 404 });
    const contentType =
      path === '/'
        ? 'text/html'
        : path.endsWith('.js')
          ? 'text/javascript'
          : 'application/octet-stream';
    return route.fulfill({ body, contentType });
  });
  await page.goto('http://sculpture.test/');
  await page.waitForFunction('window.done', undefined, { timeout: 120_000 });
  await page.screenshot({ path: options.out, timeout: 180_000 });
} finally {
  await browser.close();
}
