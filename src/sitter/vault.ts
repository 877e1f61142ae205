import type { Vec3 } from '../optics/types';
import { positionAt, type Sculpture } from './sculpture';
import { type LandmarkName, type Landmarks, REGION } from './types';

/**
 * The side of the head over the ears keeps its form: points spread over it are scaled
 * between the landmarks, so that euryon stays where the head is broadest whatever the face, the
 * forehead or the ears do below. Worked out on the left; the right is its mirror image.
 */
export interface Vault {
  readonly points: readonly Vec3[];
  map(landmarks: Landmarks): (from: Vec3) => Vec3;
}

const POINTS = 10;
/** Distance of the points above the ear, from the midline (over half the head's breadth) and from
 * each other and euryon, metres; over the ears, how high (over the vertex's height). */
const OFF_EAR = 0.013;
const SIDE = 0.72;
const APART = 0.012;
const HIGHEST = 0.72;

export function vaultOf(sculpture: Sculpture): Vault {
  const at = (name: LandmarkName): Vec3 => positionAt(sculpture.meshes, sculpture.landmarks[name]);
  const own = {
    euryon: at('euryon_left'),
    temple: at('frontotemporale_left'),
    vertex: at('vertex'),
    front: at('glabella'),
    back: at('opisthocranion'),
  };
  const lowest = at('superaurale_left')[1] + OFF_EAR;
  const skin = sculpture.meshes[sculpture.landmarks.menton[0]] as Sculpture['meshes'][number];
  const candidates: Vec3[] = [];
  skin.regions.forEach((region, v) => {
    if (region !== REGION.scalp && region !== REGION.face) return;
    const p = positionAt([skin], [0, v]);
    const [x, y] = p;
    if (x > SIDE * own.euryon[0] && y > lowest && y < HIGHEST * own.vertex[1]) candidates.push(p);
  });
  return {
    points: spread(candidates, [own.euryon, own.temple], POINTS, APART),
    map: (l) => {
      const [broad, temple] = [l.euryon_left[0], l.frontotemporale_left[0]];
      const out = (broad - temple) / (own.euryon[0] - own.temple[0]);
      const up = l.vertex[1] / own.vertex[1];
      const deep = (l.glabella[2] - l.opisthocranion[2]) / (own.front[2] - own.back[2]);
      return ([x, y, z]) => [
        broad - (own.euryon[0] - x) * out,
        y * up,
        l.opisthocranion[2] + (z - own.back[2]) * deep,
      ];
    },
  };
}

const distance = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Each time the candidate farthest from all that are held already, down to `apart`. */
export function spread(
  candidates: readonly Vec3[],
  held: readonly Vec3[],
  most: number,
  apart: number,
): Vec3[] {
  const chosen: Vec3[] = [];
  const nearest = candidates.map((v) => Math.min(...held.map((p) => distance(v, p))));
  while (chosen.length < most && candidates.length > 0) {
    const far = nearest.reduce((best, d, i) => (d > (nearest[best] as number) ? i : best), 0);
    if ((nearest[far] as number) < apart) break;
    const next = candidates[far] as Vec3;
    chosen.push(next);
    candidates.forEach((v, i) => {
      nearest[i] = Math.min(nearest[i] as number, distance(v, next));
    });
  }
  return chosen;
}
