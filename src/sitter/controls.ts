import type { Vec3 } from '../optics/types';
import { minus, plus } from '../optics/vector';
import { earOf } from './ears';
import { fromFloor, slightness } from './landmarks-body';
import { type Place, positionAt, type Sculpture } from './sculpture';
import type { Dimensions, LandmarkName, Landmarks } from './types';
import { vaultOf } from './vault';

/** A point that the warp takes exactly to where the dimensions put it. */
export interface Control {
  readonly name: string;
  readonly from: Vec3;
  /** Metres, for a person's dimensions (mm) and landmarks (m). */
  readonly to: (person: Person) => Vec3;
}

export interface Person {
  readonly dimensions: Dimensions;
  readonly landmarks: Landmarks;
  /** What guides must give more than asked (mm), so that the mesh measures right. */
  readonly more?: Readonly<Partial<Record<keyof Dimensions, number>>>;
}

/**
 * Points around each eyeball, metres from its pupil (x away from the midline): they move with the
 * pupil, so that the lids go on lying on a ball that keeps its size.
 */
const GLOBE: readonly Vec3[] = [
  [0, 0.012, -0.0129],
  [0, -0.012, -0.0129],
  [0.012, 0, -0.0129],
  [-0.012, 0, -0.0129],
  [0, 0, -0.0249],
];

const signOf = (name: string): number => (name.endsWith('_right') ? -1 : 1);
const sideOf = (name: string): 'left' | 'right' => (name.endsWith('_right') ? 'right' : 'left');

/** Every control of a sculpture whose own body has `sculpted` dimensions and landmarks. */
export function controlsOf(sculpture: Sculpture, sculpted: Person): readonly Control[] {
  const at = (name: LandmarkName): Vec3 => positionAt(sculpture.meshes, sculpture.landmarks[name]);
  const controls: Control[] = [];
  for (const name of Object.keys(sculpture.landmarks) as LandmarkName[])
    controls.push({ name, from: at(name), to: ({ landmarks }) => landmarks[name] });
  controls.push(...earControls(sculpture), ...vaultControls(sculpture));
  for (const side of ['left', 'right'] as const)
    for (const [k, offset] of GLOBE.entries()) {
      const pupil = `pupil_${side}` as const;
      const out: Vec3 = [side === 'left' ? offset[0] : -offset[0], offset[1], offset[2]];
      controls.push({
        name: `globe_${k}_${side}`,
        from: plus(at(pupil), out),
        to: ({ landmarks }) => plus(landmarks[pupil], out),
      });
    }
  const guide = (name: string): Vec3 => {
    const place = sculpture.guides[name];
    if (!place) throw new RangeError(`the sculpture has no guide "${name}"`);
    return positionAt(sculpture.meshes, place);
  };
  const across = minus(guide('knuckle_front_left'), guide('knuckle_back_left'));
  const follow = follower(sculpted, Math.hypot(...across));
  for (const [name, place] of steering(sculpture)) {
    const from = positionAt(sculpture.meshes, place);
    const to = headGuide(sculpture, name, from) ?? follow(name, from);
    controls.push({ name, from, to });
  }
  for (const [name, from] of Object.entries(sculpture.anchors))
    controls.push({ name: `joint ${name}`, from, to: follow(name, from) });
  return controls;
}

/** The guides that steer the warp: not those of the temple, which lie among the vault's points. */
export const steering = ({ guides }: Pick<Sculpture, 'guides'>): [string, Place][] =>
  Object.entries(guides).filter(([name]) => !name.startsWith('temporale'));

/** Points over both ears that keep the ears' form. */
function earControls(sculpture: Sculpture): Control[] {
  const ear = earOf(sculpture);
  return [...ear.points, ear.foremost].flatMap((from, k) =>
    [1, -1].map(
      (side): Control => ({
        name: `ear ${k} ${side > 0 ? 'left' : 'right'}`,
        from: [side * from[0], from[1], from[2]],
        to: ({ landmarks, more }) => {
          const [x, y, z] = ear.map(landmarks, more?.ear_breadth)(from);
          return [side * x, y, z];
        },
      }),
    ),
  );
}

/** Points over both sides of the vault that keep its form. */
function vaultControls(sculpture: Sculpture): Control[] {
  const { points, map } = vaultOf(sculpture);
  return points.flatMap((from, k) =>
    [1, -1].map(
      (side): Control => ({
        name: `vault ${k} ${side > 0 ? 'left' : 'right'}`,
        from: [side * from[0], from[1], from[2]],
        to: ({ landmarks }) => {
          const [x, y, z] = map(landmarks)(from);
          return [side * x, y, z];
        },
      }),
    ),
  );
}

/** Guides on the head whose place is a dimension's definition. */
function headGuide(sculpture: Sculpture, name: string, from: Vec3): Control['to'] | undefined {
  const at = (landmark: LandmarkName): Vec3 =>
    positionAt(sculpture.meshes, sculpture.landmarks[landmark]);
  const sign = signOf(name);
  const side = sideOf(name);
  if (name.startsWith('retroauriculare')) {
    // Where ear protrusion is measured from; it keeps its place behind the tragion.
    const behind = minus(from, at(`tragion_${side}`));
    const ear = earOf(sculpture);
    return ({ dimensions: d, landmarks: l, more }) => {
      const [, y, z] = plus(l[`tragion_${side}`], behind);
      const protrusion = (d.ear_protrusion + (more?.ear_protrusion ?? 0)) / 1000;
      return [sign * (ear.map(l)(ear.outermost)[0] - protrusion), y, z];
    };
  }
  if (name === 'inion') {
    const below = minus(from, at('opisthocranion'));
    return ({ landmarks: l }) => plus(l.opisthocranion, below);
  }
  if (name.startsWith('nasal_root'))
    return ({ dimensions: d, landmarks: l }) => [
      (sign * d.nasal_root_breadth) / 2000,
      l.sellion[1],
      (l.sellion[2] + l[`endocanthion_${side}`][2]) / 2,
    ];
  return undefined;
}

/** Heights that divide a standing body, from the floor up. */
const LEVELS = [
  'knee_height_standing',
  'crotch_height',
  'waist_height_navel',
  'chest_height',
  'acromial_height',
] as const;

/** Growth of a point half-way round between side and front, over that of either. */
const QUARTER = 0.74;

/** Takes a height of one body to the same place of another, piecewise linear between the levels. */
function levelMap(from: Dimensions, to: Dimensions): (y: number) => number {
  const knots = (d: Dimensions) =>
    [0, ...LEVELS.map((name) => d[name]), d.stature].map((h) => fromFloor(d, h) / 1000);
  const a = knots(from);
  const b = knots(to);
  return (y) => {
    let i = 0;
    while (i < a.length - 2 && y > (a[i + 1] as number)) i++;
    const t = (y - (a[i] as number)) / ((a[i + 1] as number) - (a[i] as number));
    return (b[i] as number) + t * ((b[i + 1] as number) - (b[i] as number));
  };
}

/**
 * How a point of the body follows: heights between the body's levels, breadths and depths by half
 * of what the dimension grew, so that cloth keeps its ease over the body; limbs with their joints.
 */
function follower(sculpted: Person, knuckles: number): (name: string, from: Vec3) => Control['to'] {
  const { dimensions: own, landmarks: b } = sculpted;
  return (name, from) => {
    const sign = signOf(name);
    const side = sideOf(name);
    const with_ = (landmark: 'acromion' | 'elbow' | 'wrist' | 'knee'): Control['to'] => {
      const [x, y, z] = minus(from, b[`${landmark}_${side}`]);
      return ({ dimensions: d, landmarks: l }) => {
        const k = slightness(d) / slightness(own);
        return plus(l[`${landmark}_${side}`], [k * x, k * y, k * z]);
      };
    };
    const part = name.replace(/_(left|right)$/, '');
    switch (part) {
      case 'shoulder':
        return with_('acromion');
      case 'elbow':
      case 'wrist':
        return with_(part);
      case 'knee':
        return with_('knee');
      case 'knuckle_front':
      case 'knuckle_back':
        return hand(from, sculpted, side, knuckles);
    }
    return ({ dimensions: d, landmarks: l, more }) => {
      const half = (dimension: keyof Dimensions): number =>
        (d[dimension] + (more?.[dimension] ?? 0) - own[dimension]) / 2000;
      /** How far a point moves out that keeps its share of a breadth. */
      const spread = (dimension: keyof Dimensions): number =>
        Math.abs(from[0]) * (d[dimension] / own[dimension] - 1);
      const shift = l.acromion_left[2] - b.acromion_left[2];
      const legs = l.knee_left[0] - b.knee_left[0];
      const level = levelMap(own, d);
      const grow = (out: number, forward: number, y = level(from[1])): Vec3 => [
        from[0] + sign * out,
        y,
        from[2] + shift + forward,
      ];
      /** A point that keeps its distance from one of the body's levels. */
      const beside = (level: keyof Dimensions): number =>
        from[1] + (fromFloor(d, d[level]) - fromFloor(own, own[level])) / 1000;
      const chest = beside('chest_height');
      const waist = beside('waist_height_navel');
      switch (part) {
        case 'chest_side':
          return grow(half('chest_breadth'), 0, chest);
        case 'chest_front':
          return grow(0, half('chest_depth'), chest);
        case 'bust':
          return grow(spread('chest_breadth'), half('chest_depth'), chest);
        case 'chest_back':
          return grow(0, -half('chest_depth'), chest);
        case 'chest_fore':
          return grow(QUARTER * half('chest_breadth'), QUARTER * half('chest_depth'), chest);
        case 'chest_aft':
          return grow(QUARTER * half('chest_breadth'), -QUARTER * half('chest_depth'), chest);
        case 'waist_side':
          return grow(half('waist_breadth'), 0, waist);
        case 'waist_front':
          return grow(0, half('waist_depth'), waist);
        case 'waist_back':
          return grow(0, -half('waist_depth'), waist);
        case 'waist_fore':
          return grow(QUARTER * half('waist_breadth'), QUARTER * half('waist_depth'), waist);
        case 'waist_aft':
          return grow(QUARTER * half('waist_breadth'), -QUARTER * half('waist_depth'), waist);
        case 'hip_side':
          return grow(half('hip_breadth_standing'), 0);
        case 'hip_front':
          return grow(spread('hip_breadth_standing'), half('buttock_depth'));
        case 'buttock':
          return grow(spread('hip_breadth_standing'), -half('buttock_depth'));
        case 'hip_fore':
          return grow(QUARTER * half('hip_breadth_standing'), QUARTER * half('buttock_depth'));
        case 'hip_aft':
          return grow(QUARTER * half('hip_breadth_standing'), -QUARTER * half('buttock_depth'));
        case 'hip':
          return grow(half('hip_breadth_standing') / 2, 0);
        case 'crotch':
          return grow(0, 0, beside('crotch_height'));
        case 'toe':
          return grow(legs, half('foot_length'));
        case 'heel':
          return grow(legs, -half('foot_length'));
        case 'sole':
        case 'ankle':
          return grow(legs, 0);
        default:
          throw new Error(`nothing says how "${name}" moves`);
      }
    };
  };
}

/** Knuckles, sculpted `knuckles` metres apart: along the hand with its length, across with its breadth. */
function hand(
  from: Vec3,
  sculpted: Person,
  side: 'left' | 'right',
  knuckles: number,
): Control['to'] {
  const { dimensions: own, landmarks: b } = sculpted;
  const wrist = b[`wrist_${side}`];
  const way = minus(b[`fingertip_${side}`], wrist);
  const offset = minus(from, wrist);
  const share =
    (offset[0] * way[0] + offset[1] * way[1] + offset[2] * way[2]) /
    (way[0] ** 2 + way[1] ** 2 + way[2] ** 2);
  const across = minus(offset, [way[0] * share, way[1] * share, way[2] * share]);
  return ({ dimensions: d, landmarks: l }) => {
    const k = 1 + (d.hand_breadth - own.hand_breadth) / (1000 * knuckles);
    const start = l[`wrist_${side}`];
    const now = minus(l[`fingertip_${side}`], start);
    return plus(start, [
      now[0] * share + across[0] * k,
      now[1] * share + across[1] * k,
      now[2] * share + across[2] * k,
    ]);
  };
}
