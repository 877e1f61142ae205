import type { Vec3 } from '../optics/types';
import { ImpossibleDimensions } from './impossible';
import { armLandmarks, trunkLandmarks } from './landmarks-body';
import { checkOrder } from './order';
import type { Dimensions, Landmarks, PairedLandmark, Side } from './types';

/**
 * Coordinates that no dimension fixes, as shares of those that do. "Head form" is the medium NIOSH
 * digital head form, "face scans" the mean of a set of light-stage scans; both were read from
 * public meshes. What neither gives is a sculptor's choice and says so.
 */
export const PROPORTION = {
  /** Height of the glabella above the sellion over face length. Sculptor's choice on the brow's flat
   * front; head form: 19.2 / 117.5. */
  glabellaRise: 0.128,
  /** Opisthocranion above the glabella over head length. The back is flat there: sculptor's choice;
   * head form: 1.3 / 194. */
  opisthocranionRise: 0.04,
  /** Vertex in front of the back of the head over head length. The crown is flat there: sculptor's
   * choice; head form: 84.8 / 194. */
  vertexForward: 0.505,
  /** Depth of the nose tip before the subnasale over nose protrusion. Head form: 15.2 / 22.3. */
  noseTipForward: 0.682,
  /** Alare above the subnasale over the rise to the nose tip. Head form: 9 / 16.3. */
  alareRise: 0.552,
  /** Alare behind the nose tip over nose protrusion. Head form: 22.5 / 22.3. */
  alareBack: 1.009,
  /** Heights between subnasale (0) and menton (1). Head form: 21.1 and 44 of 63.5. The lips'
   * foremost points stand nearer the mouth line than on the smooth head form (13.3, 28.2), and
   * the chin's front a little lower: sculptor's choice. */
  upperLip: 16.6 / 63.5,
  stomion: 21.1 / 63.5,
  lowerLip: 25 / 63.5,
  pogonion: 0.705,
  /** Depths in front of the subnasale over its height above the menton, same head form. */
  upperLipForward: 1.5 / 63.5,
  stomionForward: -2.4 / 63.5,
  lowerLipForward: -0.3 / 63.5,
  /** Chin's front and underside: sculptor's choice within the head form's uncertainty (-7.1 and
   * -19.7 of 63.5, read to 2 and 4 mm). */
  pogonionForward: -0.06,
  mentonForward: -0.4,
  /** Mouth corner below the stomion over lip length. Sculptor's choice: up by a trace, or a mouth at rest
   * looks stern; head form: 0.9 / 56. */
  cheilionDrop: -0.024,
  /** Mouth corner behind the stomion over half the lip length, squared, per mm: 11.6 / 28^2. */
  cheilionBack: 0.0148,
  /** Inner eye corner from the midline over half the pupil distance. Head form: 16 / 32. */
  innerCornerOut: 0.5,
  /** Outer eye corner likewise. Head form: 46 / 32, read to 3 mm. */
  outerCornerOut: 1.47,
  /** Tragion below the pupils over face length. Sculptor's choice between ANSUR II
   * (0.149: tragion to top of head less eye to top of head) and the head form (0.026). */
  tragionDrop: 0.09,
  /** Zygion below the tragion over face length. Head form: 4 / 117.5, read to 5 mm. */
  zygionDrop: 0.02,
  /** Gonion: height between stomion and menton, depth before the tragion over the depth from
   * tragion to pogonion. Sculptor's choice: the angle of the jaw stands hardly lower than the mouth. */
  gonionHeight: 0.08,
  gonionForward: 0.08,
  /** Frontotemporale: above the glabella over face length; depth from outer eye corner towards
   * the tragion. Sculptor's choice: where the temple ridge is nearest the midline. */
  frontotemporaleRise: 0.058,
  frontotemporaleBack: 0.07,
  /** Euryon: above the pupils over vertex height; before the back of the head over head length.
   * Sculptor's choice. */
  euryonRise: 0.285,
  euryonForward: 0.455,
  /** Ear: share of its length above the tragion, lean of its long axis (radians); how far the
   * rear of the rim, and its top and bottom, lie behind the tragion over ear breadth. Sculptor's
   * choice after the canon that the ear spans from brow to nose base and leans with the jaw. */
  earAbove: 0.505,
  earLean: 0.19,
  earBehind: 0.933,
  earMiddle: 0.4,
  /** Rise of the rearmost rim above the tragion over ear length. */
  earRearRise: 0.28,
} as const;

/** Inner and outer corner against the pupil's height and depth, mm. */
const EYE = {
  /** Sculptor's choice: the inner corner lies a little lower than the outer one. */
  innerDrop: 2,
  outerRise: 0.6,
  /** Head form +0.5, face scans -2.9 (from their outer corner): between the two. */
  innerBack: 1.5,
} as const;

/** Outward share of ear protrusion at each point of the rim; sculptor's choice. */
const EAR_OUT = { superaurale: 0.36, subaurale: 0.205, postaurale: 0.77 } as const;

/**
 * Landmarks in metres for dimensions in millimetres: breadths fix x, depths behind the nose tip
 * fix z, heights fix y (frame: origin midway between the pupils, eye plane at z = 0).
 * Closed form, so that anyone can check a coordinate against its dimension.
 * @throws ImpossibleDimensions when the dimensions contradict each other.
 */
export function landmarksFor(d: Dimensions): Landmarks {
  const p = PROPORTION;
  const tip = d.nose_tip_to_eye_plane;
  const menton = d.vertex_above_eyes - d.head_height_vertex_to_menton;
  const face = d.face_length_menton_sellion;
  const sellionZ = tip - d.nose_tip_to_sellion;

  // Below the nose, depths hang on the height from subnasale to menton, which hangs on the
  // sellion, whose height follows from the straight face length and the menton's depth: a fixed
  // point that converges at once, since the depths are small beside the lengths.
  const noseDepth = p.noseTipForward * d.nose_protrusion;
  const subnasaleZ = tip - noseDepth;
  let lower = 0.55 * face;
  let sellionY = 0;
  let subnasaleY = 0;
  for (let i = 0; i < 40; i++) {
    const mentonZ = subnasaleZ + p.mentonForward * lower;
    sellionY = menton + leg(face, sellionZ - mentonZ, 'face_length_menton_sellion');
    subnasaleY =
      sellionY -
      leg(d.nose_length_subnasale_sellion, sellionZ - subnasaleZ, 'nose_length_subnasale_sellion');
    lower = subnasaleY - menton;
  }
  const noseRise = d.nose_protrusion * Math.sqrt(1 - p.noseTipForward ** 2);
  const below = (share: number, forward: number): Vec3 => [
    0,
    subnasaleY - share * lower,
    subnasaleZ + forward * lower,
  ];
  const stomion = below(p.stomion, p.stomionForward);
  const pogonion = below(p.pogonion, p.pogonionForward);
  const glabellaY = sellionY + p.glabellaRise * face;
  const back = tip - d.nose_tip_to_back_of_head;
  const tragion: Vec3 = [
    d.bitragion_breadth / 2,
    -p.tragionDrop * face,
    tip - d.nose_tip_to_tragion,
  ];
  const outerCornerZ = tip - d.nose_tip_to_outer_eye_corner;
  const halfLip = d.lip_length / 2;
  const halfPupils = d.interpupillary_distance / 2;

  const midline = {
    vertex: [0, d.vertex_above_eyes, back + p.vertexForward * d.head_length],
    opisthocranion: [0, glabellaY + p.opisthocranionRise * d.head_length, back],
    glabella: [0, glabellaY, back + d.head_length],
    sellion: [0, sellionY, sellionZ],
    pronasale: [0, subnasaleY + noseRise, tip],
    subnasale: [0, subnasaleY, subnasaleZ],
    labrale_superius: below(p.upperLip, p.upperLipForward),
    stomion,
    labrale_inferius: below(p.lowerLip, p.lowerLipForward),
    pogonion,
    menton: below(1, p.mentonForward),
    ...trunkLandmarks(d),
  } as const satisfies Record<string, Vec3>;

  const paired = {
    pupil: [halfPupils, 0, 0],
    endocanthion: [p.innerCornerOut * halfPupils, -EYE.innerDrop, -EYE.innerBack],
    ectocanthion: [p.outerCornerOut * halfPupils, EYE.outerRise, outerCornerZ],
    alare: [
      d.nose_breadth / 2,
      subnasaleY + p.alareRise * noseRise,
      tip - p.alareBack * d.nose_protrusion,
    ],
    cheilion: [
      halfLip,
      stomion[1] - p.cheilionDrop * d.lip_length,
      stomion[2] - p.cheilionBack * halfLip ** 2,
    ],
    zygion: [
      d.bizygomatic_breadth / 2,
      tragion[1] - p.zygionDrop * face,
      tip - d.nose_tip_to_zygion,
    ],
    tragion,
    gonion: [
      d.bigonial_breadth / 2,
      stomion[1] + p.gonionHeight * (menton - stomion[1]),
      tragion[2] + p.gonionForward * (pogonion[2] - tragion[2]),
    ],
    frontotemporale: [
      d.minimum_frontal_breadth / 2,
      glabellaY + p.frontotemporaleRise * face,
      outerCornerZ + p.frontotemporaleBack * (tragion[2] - outerCornerZ),
    ],
    euryon: [
      d.head_breadth / 2,
      p.euryonRise * d.vertex_above_eyes,
      back + p.euryonForward * d.head_length,
    ],
    ...earLandmarks(d, tragion),
    ...armLandmarks(d),
  } as const satisfies Record<PairedLandmark, Vec3>;

  const landmarks = inMetres(midline, paired);
  checkOrder(d, landmarks);
  return landmarks;
}

/** Top, bottom and rear of the rim, in a plane through the tragion that leans back. */
function earLandmarks(d: Dimensions, tragion: Vec3) {
  const p = PROPORTION;
  const cos = Math.cos(p.earLean);
  const sin = Math.sin(p.earLean);
  const above = p.earAbove * d.ear_length;
  const under = above - leg(d.ear_length, earSpread(d), 'ear_length');
  const middle = p.earMiddle * d.ear_breadth;
  const place = (up: number, behind: number, out: number): Vec3 => [
    tragion[0] + out * d.ear_protrusion,
    tragion[1] + up * cos - behind * sin,
    tragion[2] - up * sin - behind * cos,
  ];
  return {
    superaurale: place(above, middle, EAR_OUT.superaurale),
    subaurale: place(under, middle, EAR_OUT.subaurale),
    postaurale: place(
      p.earRearRise * d.ear_length,
      p.earBehind * d.ear_breadth,
      EAR_OUT.postaurale,
    ),
  } as const;
}

/** How far apart sideways the top and the bottom of the ear stand, mm. */
const earSpread = (d: Dimensions): number =>
  (EAR_OUT.superaurale - EAR_OUT.subaurale) * d.ear_protrusion;

/** The other leg of a right triangle: how far apart in height when the depth is already fixed. */
function leg(length: number, depth: number, dimension: string): number {
  const square = length * length - depth * depth;
  if (!(square > 0))
    throw new ImpossibleDimensions(
      dimension,
      `${dimension} ${length} mm is shorter than the depth it spans, ${Math.abs(depth).toFixed(1)} mm`,
    );
  return Math.sqrt(square);
}

function inMetres(
  midline: Readonly<Record<string, Vec3>>,
  paired: Readonly<Record<string, Vec3>>,
): Landmarks {
  const out: Record<string, Vec3> = {};
  for (const [name, [x, y, z]] of Object.entries(midline))
    out[name] = [x / 1000, y / 1000, z / 1000];
  const sides: readonly [Side, number][] = [
    ['left', 1],
    ['right', -1],
  ];
  for (const [name, [x, y, z]] of Object.entries(paired))
    for (const [side, sign] of sides)
      out[`${name}_${side}`] = [(sign * x) / 1000, y / 1000, z / 1000];
  return out as Landmarks;
}
