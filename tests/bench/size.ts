/** Compressed size of the JavaScript that stands between the address and the first picture. */
import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';
import type { Line } from './line';

/** 400 kB, compressed. */
const AIM = 400_000;

export interface PackageSize {
  readonly name: string;
  readonly bytes: number;
}

export interface Size {
  readonly line: Line;
  readonly packages: readonly PackageSize[];
}

type Chunk = Rolldown.OutputChunk;

/** The entry and all that it imports statically, however far. */
function loadedFirst(chunks: readonly Chunk[]): Chunk[] {
  const byName = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  const found = new Set<Chunk>();
  const visit = (chunk: Chunk | undefined): void => {
    if (!chunk || found.has(chunk)) return;
    found.add(chunk);
    for (const name of chunk.imports) visit(byName.get(name));
  };
  for (const chunk of chunks) if (chunk.isEntry) visit(chunk);
  return [...found];
}

const compressed = (code: string): number => gzipSync(code).length;

/** `src/<folder>` for the project's own modules, the package's name for others. */
function ownerOf(id: string): string {
  const inPackage = id.split('/node_modules/').at(-1);
  if (inPackage !== id) return /^(@[^/]+\/)?[^/]+/.exec(inPackage ?? '')?.[0] ?? id;
  return /\/((?:src|models)(?:\/[^/.]+(?=\/))?)/.exec(id)?.[1] ?? 'bundler';
}

/** Each package's modules compressed by themselves, scaled so that all make up the whole. */
function byPackage(chunks: readonly Chunk[], whole: number): PackageSize[] {
  const code = new Map<string, string>();
  for (const chunk of chunks)
    for (const [id, module] of Object.entries(chunk.modules))
      code.set(ownerOf(id), (code.get(ownerOf(id)) ?? '') + (module.code ?? ''));
  const alone = [...code].map(([name, text]) => ({ name, bytes: text ? compressed(text) : 0 }));
  const sum = alone.reduce((total, { bytes }) => total + bytes, 0);
  return alone
    .map(({ name, bytes }) => ({ name, bytes: (bytes * whole) / sum }))
    .filter(({ bytes }) => bytes > 0)
    .sort((a, b) => b.bytes - a.bytes);
}

export async function firstLoad(): Promise<Size> {
  const built = await build({ logLevel: 'error', build: { write: false } });
  const { output } = (Array.isArray(built) ? built[0] : built) as Rolldown.RolldownOutput;
  const chunks = loadedFirst(output.filter((file): file is Chunk => file.type === 'chunk'));
  const whole = chunks.reduce((sum, { code }) => sum + compressed(code), 0);
  const kB = (whole / 1000).toFixed(0);
  return {
    line: {
      name: 'JavaScript before the first picture',
      ratio: { median: whole / AIM },
      aim: 1,
      sides: `entry and its static imports, gzip: ${kB} kB / ${AIM / 1000} kB`,
    },
    packages: byPackage(chunks, whole),
  };
}
