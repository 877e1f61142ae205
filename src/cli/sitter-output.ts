/** A built sitter -> a JSON object, or tables to read. */
import type { Models } from '../models/types';
import type { BuiltSitter } from '../sitter/build';
import { measure, measureSeated } from '../sitter/measure';
import type { Sculpture } from '../sitter/sculpture';
import { type Soundness, soundnessOf } from '../sitter/soundness';
import { DIMENSIONS, type DimensionName } from '../sitter/types';
import { columns } from './columns';
import { LANDMARKS } from './landmarks';
import type { Json } from './output';

interface Told {
  readonly name: DimensionName;
  readonly asked: number;
  readonly measured: number;
}

/** A person's dimensions as asked and as measured on the mesh, mm. */
export function dimensionsOf(sitter: BuiltSitter, seated: BuiltSitter): Told[] {
  const measured = { ...measure(sitter), ...measureSeated(seated) };
  return DIMENSIONS.map((name) => ({
    name,
    asked: sitter.dimensions[name],
    measured: measured[name],
  }));
}

/** Dimensions that the mesh misses by more than this are not met, mm. */
const TOLERANCE = 0.5;

/** The dimension farthest from what was asked, when any is off by more than the tolerance. */
export function missed(told: readonly Told[]): Told | null {
  const off = ({ asked, measured }: Told): number => Math.abs(measured - asked);
  const [worst] = [...told].sort((a, b) => off(b) - off(a));
  return worst && off(worst) > TOLERANCE ? worst : null;
}

const rounded = (mm: number): number => Math.round(mm * 1000) / 1000;

type Counted = 'triangles' | 'openEdges' | 'intended' | 'flipped';

const total = (meshes: readonly Soundness[], part: Counted): number =>
  meshes.reduce((sum, mesh) => sum + mesh[part], 0);

const solid = ({ ribbon }: Soundness): boolean => !ribbon;

/** Millimetres to the micrometre. Open edges of ribbons are told by mesh alone, and those that are meant apart. */
export function sitterJson(
  sculpture: Sculpture,
  sitter: BuiltSitter,
  told: readonly Told[],
): Record<string, Json> {
  const meshes = soundnessOf(sculpture, sitter);
  const solids = meshes.filter(solid);
  return {
    dimensions: Object.fromEntries(
      told.map(({ name, asked, measured }) => [
        name,
        { asked_mm: rounded(asked), measured_mm: rounded(measured) },
      ]),
    ),
    landmarks: Object.fromEntries(
      LANDMARKS.map((name) => [name, sitter.landmarks[name].map((part) => rounded(1000 * part))]),
    ),
    triangles: total(meshes, 'triangles'),
    open_edges: total(solids, 'openEdges') - total(solids, 'intended'),
    intended_open_edges: total(solids, 'intended'),
    flipped_triangles: total(meshes, 'flipped'),
    meshes: Object.fromEntries(
      meshes.map(({ name, ribbon, triangles, openEdges, intended, flipped }) => [
        name,
        {
          triangles,
          open_edges: openEdges - intended,
          intended_open_edges: intended,
          flipped_triangles: flipped,
          ribbon,
        },
      ]),
    ),
  };
}

export function sitterTable(
  models: Models,
  sculpture: Sculpture,
  sitter: BuiltSitter,
  told: readonly Told[],
): string {
  const meshes = soundnessOf(sculpture, sitter);
  return [
    ...columns([
      ['', 'asked mm', 'measured mm'],
      ...told.map(({ name, asked, measured }) => [
        models.dimensions[name].name,
        asked.toFixed(1),
        measured.toFixed(1),
      ]),
    ]),
    '',
    ...columns([
      ['', 'triangles', 'open edges', 'open as meant', 'turned over'],
      ...meshes.map(({ name, triangles, openEdges, intended, flipped }) => [
        name,
        String(triangles),
        String(openEdges - intended),
        String(intended),
        String(flipped),
      ]),
    ]),
  ].join('\n');
}

/** The text of `--list`. */
export function sitterList({ sitters, dimensions }: Models): string {
  const percentiles = ['p1', 'p5', 'p50', 'p95', 'p99'] as const;
  const rows = (sex: 'female' | 'male') => [
    [`Dimensions, ${sex} (mm)`, ...percentiles, 'source'],
    ...DIMENSIONS.map((name) => [
      `  ${name}_mm`,
      ...percentiles.map((p) => dimensions[name][sex]?.[p].toString() ?? '-'),
      dimensions[name].survey ?? "no survey; the sitter's file says how it is known",
    ]),
  ];
  return [
    'Sitters',
    ...[...sitters].map(([id, { name }]) => `  ${id.padEnd(30)}${name}`),
    ...columns(rows('female')),
    ...columns(rows('male')),
    'Definitions',
    ...DIMENSIONS.map((name) => `  ${`${name}_mm`.padEnd(36)}${dimensions[name].definition}`),
  ].join('\n');
}
