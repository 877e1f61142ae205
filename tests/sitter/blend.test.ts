import { describe, expect, it } from 'vitest';
import type { Percentiles } from '../../src/models/types';
import { blend } from '../../src/sitter/blend';
import { type BuiltSitter, buildSitter } from '../../src/sitter/build';
import { DIMENSIONS, type DimensionName, LANDMARKS } from '../../src/sitter/types';
import { percentilesOf } from './drawn';
import { modelOf, sculptureOf } from './people';

/**
 * How far a blend may be from the exact build, mm: face and head, as near as a dimension must be
 * that is measured on the mesh; cloth, which is fitted in steps.
 */
const HEAD = 0.5;
const CLOTH = 1.5;

const model = modelOf('adult-woman');
const sculpture = sculptureOf(model, { ...model.looks, hair: 'bald' });

/** The greatest distance between vertices of two sitters, mm, by mesh. */
const apart = (a: BuiltSitter, b: BuiltSitter): Map<string, number> =>
  new Map(
    a.meshes.map(({ name, positions: P }, m) => {
      const Q = b.meshes[m]?.positions as Float32Array;
      let most = 0;
      for (let o = 0; o < P.length; o += 3) {
        const by = [0, 1, 2].map((j) => (P[o + j] as number) - (Q[o + j] as number));
        most = Math.max(most, Math.hypot(...by));
      }
      return [name, 1000 * most];
    }),
  );

describe('a blend of sitters', () => {
  it.each([
    'nose_breadth',
    'head_breadth',
    'bizygomatic_breadth',
    'face_length_menton_sellion',
    'ear_protrusion',
    'neck_circumference',
    'stature',
  ] as const satisfies readonly DimensionName[])(
    'is the exact build at its nodes and nearly so between them: %s',
    async (name) => {
      const { p1, p50, p99 } = percentilesOf(name, 'female') as Percentiles;
      const made = await sculpture;
      const exact = (value: number) => buildSitter(made, model, { [name]: value });
      const values = [p1, (p1 + p50) / 2, p50, (p50 + p99) / 2, p99];
      const nodes = values.map((value) => ({ value, sitter: exact(value) }));
      expect(blend(nodes, p1)).toBe(nodes[0]?.sitter);
      expect(blend(nodes, p99 + 5)).toBe(nodes[4]?.sitter);
      const between = 0.35 * p50 + 0.65 * p99;
      const [mixed, wanted] = [blend(nodes, between), exact(between)];
      for (const [mesh, by] of apart(mixed, wanted))
        expect(by, mesh).toBeLessThan(['skin', 'eyes', 'fringe'].includes(mesh) ? HEAD : CLOTH);
      for (const each of DIMENSIONS)
        expect(Math.abs(mixed.dimensions[each] - wanted.dimensions[each]), each).toBeLessThan(0.05);
      for (const each of LANDMARKS)
        expect(
          Math.hypot(
            ...mixed.landmarks[each].map((c, j) => c - (wanted.landmarks[each][j] as number)),
          ),
          each,
        ).toBeLessThan(HEAD / 1000);
    },
    120_000,
  );
});
