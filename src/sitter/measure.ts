import type { Vec3 } from '../optics/types';
import { plus, scaled } from '../optics/vector';
import type { BuiltSitter } from './build';
import {
  type ClothedDimension,
  clothedExtents,
  crossing,
  earExtents,
  type Figure,
  headExtents,
  wingBreadth,
} from './extents';
import { neckGirth, neckTube } from './girth';
import { ELBOW_POINT, ELBOW_SURFACE, STANCE, slightness, WRIST_SURFACE } from './landmarks-body';
import { lowestOn } from './seat';
import { type DimensionName, type LandmarkName, type Pose, UPRIGHT } from './types';

/** Every dimension that a standing mesh has. */
export type Measured = Readonly<Record<Exclude<DimensionName, 'sitting_height'>, number>>;

/** The pose in which sitting height is measured. */
export const SITTING_UPRIGHT: Pose = { ...UPRIGHT, stance: 'seated' };

const gap = (a: Vec3, b: Vec3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The figure whose measures are taken: landmarks are the mesh's own vertices. */
export function figureOf(sitter: BuiltSitter): Figure {
  const at = (place: readonly [number, number]): Vec3 => {
    const P = sitter.meshes[place[0]]?.positions as Float32Array;
    const o = 3 * place[1];
    return [P[o] as number, P[o + 1] as number, P[o + 2] as number];
  };
  return {
    meshes: sitter.meshes,
    landmark: (name) => at(sitter.landmarkVertices[name]),
    guide: (name) => {
      const place = sitter.guideVertices[name];
      if (!place) throw new RangeError(`the sculpture has no guide "${name}"`);
      return at(place);
    },
  };
}

/**
 * Measures a sitter's meshes by the definitions of models/dimensions.json, millimetres. Trunk,
 * hips and feet are clothed: the cloth's ease, known from the sculpture, is taken off.
 * @param sitter built upright; a posed head would be measured as it leans.
 */
export function measure(sitter: BuiltSitter): Measured {
  const figure = figureOf(sitter);
  const at = figure.landmark;
  const head = headExtents(figure);
  const pupils = (at('pupil_left')[1] + at('pupil_right')[1]) / 2;
  const eyePlane = (at('pupil_left')[2] + at('pupil_right')[2]) / 2;
  const across = (name: string): number =>
    at(`${name}_left` as LandmarkName)[0] - at(`${name}_right` as LandmarkName)[0];
  const behindTip = (name: LandmarkName): number => head.tip - at(name)[2];
  const sellion = at('sellion');
  const floor = floorOf(figure);
  const height = (y: number): number => y - floor;
  const clothed = clothedExtents(figure);
  const body = (name: ClothedDimension): number => clothed[name] - sitter.ease[name];
  const skin = figure.meshes.find((m) => m.substance === 'skin') as Figure['meshes'][number];
  const arm = armOf(figure, slightness(sitter.dimensions));
  const metres: Measured = {
    head_breadth: head.headBreadth,
    head_length: head.headLength,
    head_height_vertex_to_menton: head.top - at('menton')[1],
    face_length_menton_sellion: gap(at('menton'), sellion),
    bizygomatic_breadth: head.bizygomatic,
    bigonial_breadth: across('gonion'),
    minimum_frontal_breadth: across('frontotemporale'),
    bitragion_breadth: across('tragion'),
    nose_length_subnasale_sellion: gap(at('subnasale'), sellion),
    nose_breadth: wingBreadth(figure),
    nose_protrusion: gap(at('pronasale'), at('subnasale')),
    nasal_root_breadth: crossing(figure, sellion[1], (sellion[2] + at('endocanthion_left')[2]) / 2),
    lip_length: across('cheilion'),
    interpupillary_distance: across('pupil'),
    ...earExtents(figure),
    nose_tip_to_eye_plane: head.tip - eyePlane,
    nose_tip_to_outer_eye_corner: behindTip('ectocanthion_left'),
    nose_tip_to_zygion: behindTip('zygion_left'),
    nose_tip_to_tragion: behindTip('tragion_left'),
    nose_tip_to_back_of_head: head.tip - head.back,
    nose_tip_to_sellion: behindTip('sellion'),
    vertex_above_eyes: head.top - pupils,
    neck_circumference: neckGirth(neckTube(at), skin.positions, skin.indices),
    stature: height(head.top),
    cervicale_height: height(at('cervicale')[1]),
    suprasternale_height: height(at('suprasternale')[1]),
    acromial_height: height(at('acromion_left')[1]),
    chest_height: body('chest_height'),
    waist_height_navel: body('waist_height_navel'),
    crotch_height: body('crotch_height'),
    knee_height_standing: height(at('knee_left')[1]),
    biacromial_breadth: across('acromion'),
    bideltoid_breadth: across('deltoid'),
    chest_breadth: body('chest_breadth'),
    chest_depth: body('chest_depth'),
    waist_breadth: body('waist_breadth'),
    waist_depth: body('waist_depth'),
    hip_breadth_standing: body('hip_breadth_standing'),
    buttock_depth: body('buttock_depth'),
    foot_length: body('foot_length'),
    hand_breadth: body('hand_breadth'),
    ...arm,
  };
  return Object.fromEntries(
    Object.entries(metres).map(([name, value]) => [name, 1000 * value]),
  ) as Measured;
}

/**
 * The dimension that needs a seat: from where the cloth lies on it to the top of the head,
 * millimetres.
 * @param seated built SITTING_UPRIGHT
 */
export function measureSeated(seated: BuiltSitter): Readonly<Record<'sitting_height', number>> {
  const figure = figureOf(seated);
  const [l, r] = [figure.guide('hip_side_left'), figure.guide('hip_side_right')];
  const seat = lowestOn(scaled(plus(l, r), 0.5), figure.meshes);
  return { sitting_height: 1000 * (headExtents(figure).top - seat) };
}

/** The lowest point of the shoes. */
function floorOf({ meshes }: Figure): number {
  let y = Number.POSITIVE_INFINITY;
  for (const { substance, positions } of meshes)
    if (substance === 'shoes')
      for (let i = 1; i < positions.length; i += 3) y = Math.min(y, positions[i] as number);
  return y;
}

/** Lengths of the left arm through its joints, whose centres stand off the landmarks, metres. */
function armOf(figure: Figure, slight: number) {
  const inside = (p: Vec3, surface: Vec3): Vec3 => [
    p[0] - (slight * surface[0]) / 1000,
    p[1] - (slight * surface[1]) / 1000,
    p[2] - (slight * surface[2]) / 1000,
  ];
  const elbow = inside(figure.landmark('elbow_left'), ELBOW_SURFACE);
  const wrist = inside(figure.landmark('wrist_left'), WRIST_SURFACE);
  const hand = gap(wrist, figure.landmark('fingertip_left')) / Math.hypot(...STANCE.hand);
  const point = (slight * ELBOW_POINT) / 1000;
  return {
    shoulder_elbow_length: gap(figure.landmark('acromion_left'), elbow) + point,
    forearm_hand_length: gap(elbow, wrist) + hand + point,
    hand_length: hand,
  } as const;
}
