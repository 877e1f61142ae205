import { describe, expect, it } from 'vitest';
import type { Sitter, SitterMesh } from '../../src/sitter/types';
import { Companies, companyOf, type PlacedSitter, placed } from '../../src/stage/company';
import { hold, letGo } from '../../src/stage/geometries';

const mesh = (name: string, substance: SitterMesh['substance'] = 'top'): SitterMesh => ({
  name,
  substance,
  positions: Float32Array.of(0, -1, 0, 0.2, 0.1, 0, 0, 0, 0.1),
  normals: Float32Array.of(0, 0, 1, 0, 0, 1, 0, 0, 1),
  colours: new Uint8Array(9),
  openness: new Uint8Array(3),
  indices: Uint32Array.of(0, 1, 2),
  regions: new Uint8Array(3),
});
const sitter = (...meshes: readonly SitterMesh[]) =>
  ({ dimensions: { stature: 1700, vertex_above_eyes: 110 }, meshes }) as unknown as Sitter;
const alone = (one: Sitter): PlacedSitter[] => [{ sitter: one, at: [0, 0, 0] }];

describe('who is in a picture', () => {
  it('is one company for equal lists, from one call to the next', () => {
    const [one, other] = [sitter(mesh('a')), sitter(mesh('b'))];
    const companies = new Companies();
    const [first, second, third] = companies.of([alone(one), alone(other), alone(one)]);
    expect(third).toBe(first);
    expect(second).not.toBe(first);
    expect(companies.of([alone(one)])[0]).toBe(first);
    const aside: PlacedSitter[] = [{ sitter: one, at: [0.1, 0, 0] }];
    expect(companies.of([aside])[0]).not.toBe(first);
  });

  it('is asked to stay for a while when it hangs nowhere', () => {
    const companies = new Companies();
    const [hung] = companies.of([alone(sitter(mesh('a')))]);
    const lists = Array.from({ length: 6 }, (_, i) => alone(sitter(mesh(`guest ${i}`))));
    const guests = lists.map((list) => companies.invite(list));
    // The frames of a clip come and go: no more than four at a time.
    expect(companies.present).toEqual([hung, ...guests.slice(2).reverse()]);
    expect(companies.invite(lists[5] as PlacedSitter[])).toBe(guests[5]);
    expect(companies.invite(hung?.sitters as PlacedSitter[])).toBe(hung);
    expect(companies.present).toHaveLength(5);
    // A guest that is hung stays the same; the others go.
    expect(companies.of([lists[4] as PlacedSitter[]])).toEqual([guests[4]]);
    expect(companies.present).toEqual([guests[4]]);
  });

  it('casts the same shadows when only the eyes differ, others when anything else or a place does', () => {
    const head = mesh('head');
    const look = () => sitter(head, mesh('eyes', 'eye'));
    const [here, there] = [companyOf(alone(look())), companyOf(alone(look()))];
    expect(here.shades).toBe(there.shades);
    expect(companyOf([{ sitter: look(), at: [0, 0, 0.1] }]).shades).not.toBe(here.shades);
    expect(companyOf([{ sitter: look(), at: [0, 0, 0], turn: 1 }]).shades).not.toBe(here.shades);
    expect(companyOf(alone(sitter(mesh('head')))).shades).not.toBe(here.shades);
  });

  it('turns a sitter to its left and stands it at its place', () => {
    const front = placed([0, 0, 0.1], { at: [1, 2, 3], turn: Math.PI / 2 });
    [1.1, 2, 3].forEach((value, i) => {
      expect(front[i]).toBeCloseTo(value, 12);
    });
  });

  it('spans all its sitters, on the floor of the first', () => {
    const one = sitter(mesh('a'));
    const { bounds, floor } = companyOf([
      { sitter: one, at: [0, 0, 0] },
      { sitter: one, at: [0.5, -0.3, 0] },
    ]);
    expect(bounds.max[0]).toBeCloseTo(0.7, 6);
    expect(bounds.min[1]).toBeCloseTo(-1.3, 6);
    expect(floor).toBeCloseTo(-1.59, 6);
  });
});

describe('geometries', () => {
  it('are one for each mesh, given up with the last holder', () => {
    const shared = mesh('a');
    const given = hold(shared);
    let gone = 0;
    given.fine.addEventListener('dispose', () => {
      gone += 1;
    });
    expect(hold(shared)).toBe(given);
    letGo(shared);
    expect(gone).toBe(0);
    letGo(shared);
    expect(gone).toBeGreaterThan(0);
    expect(hold(shared)).not.toBe(given);
    letGo(shared);
  });

  it('share their vertices between the levels of detail', () => {
    const two = { ...mesh('a'), coarse: Uint32Array.of(0, 1, 2) };
    const { fine, coarse } = hold(two);
    expect(coarse).not.toBe(fine);
    expect(coarse.getAttribute('position')).toBe(fine.getAttribute('position'));
    expect(coarse.getIndex()?.array).toBe(two.coarse);
    letGo(two);
  });
});
