/** The people of a session as built, and how two of them stand in one picture. */
import type { Vec3 } from '../optics/types';
import { landmarksFor } from '../sitter/landmarks';
import { type Dimensions, LANDMARKS, type Sitter } from '../sitter/types';
import type { Beside, Company, Picture } from './types';

/** On no mesh. */
const NOWHERE = [-1, -1] as const;

/** A sitter before its sculpture is there: landmarks alone; the head runs from vertex to menton. */
export const unsculpted = (dimensions: Dimensions): Sitter => ({
  dimensions,
  landmarks: landmarksFor(dimensions),
  meshes: [],
  landmarkVertices: Object.fromEntries(
    LANDMARKS.map((name) => [name, NOWHERE]),
  ) as unknown as Sitter['landmarkVertices'],
});

/** By person; the second is there when the session has one and it is built. */
export interface Cast<S = Sitter> {
  readonly '1': S;
  readonly '2'?: S;
}

/** The sitter that a picture's distances are taken to. */
export const leadOf = <S>(cast: Cast<S>, { of }: Pick<Picture, 'of'>): S =>
  cast[of[0]] ?? cast['1'];

const floors = new WeakMap<Sitter, number>();

/** Height of the floor in a sitter's own frame: under the soles, or where the stature puts it for a bust. */
export function floorOf(sitter: Sitter): number {
  const found = floors.get(sitter);
  if (found !== undefined) return found;
  const floor = lowest(sitter);
  floors.set(sitter, floor);
  return floor;
}

function lowest({ dimensions, meshes }: Sitter): number {
  const standing = (dimensions.vertex_above_eyes - dimensions.stature) / 1000;
  if (!meshes.some(({ substance }) => substance === 'shoes')) return standing;
  let least = Number.POSITIVE_INFINITY;
  for (const { positions } of meshes)
    for (let i = 1; i < positions.length; i += 3) least = Math.min(least, positions[i] as number);
  return least;
}

/** A sitter and where the origin of its frame is, in the frame of the picture's first. */
export interface Placed<S = Sitter> {
  readonly sitter: S;
  readonly at: Vec3;
}

/**
 * Who is in a picture, the first at the origin. Both stand or sit on one floor, so the second's eyes are
 * higher or lower as their statures and poses have it.
 */
export function placeCompany(
  cast: Cast,
  of: Company,
  beside: Beside,
): readonly [Placed, ...Placed[]] {
  const [lead, ...others] = of;
  const first = cast[lead] ?? cast['1'];
  // `beside` tells where person 2 is against person 1.
  const way = lead === '1' ? 1 : -1;
  return [
    { sitter: first, at: [0, 0, 0] },
    ...others.flatMap((id): Placed[] => {
      const sitter = cast[id];
      if (!sitter || sitter === first) return [];
      const up = floorOf(first) - floorOf(sitter);
      return [{ sitter, at: [way * beside.right, up, way * beside.forward] }];
    }),
  ];
}
