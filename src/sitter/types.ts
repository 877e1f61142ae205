import type { Vec3 } from '../optics/types';

/** Dimensions that shape a sitter, in millimetres; definitions stand in models/dimensions.json. */
export const DIMENSIONS = [
  // head and face
  'head_breadth',
  'head_length',
  'head_height_vertex_to_menton',
  'face_length_menton_sellion',
  'bizygomatic_breadth',
  'bigonial_breadth',
  'minimum_frontal_breadth',
  'bitragion_breadth',
  'nose_length_subnasale_sellion',
  'nose_breadth',
  'nose_protrusion',
  'nasal_root_breadth',
  'lip_length',
  'interpupillary_distance',
  'ear_length',
  'ear_breadth',
  'ear_protrusion',
  // depths behind the nose tip, along the axis of view
  'nose_tip_to_eye_plane',
  'nose_tip_to_outer_eye_corner',
  'nose_tip_to_zygion',
  'nose_tip_to_tragion',
  'nose_tip_to_back_of_head',
  'nose_tip_to_sellion',
  // heights above the line through the pupils
  'vertex_above_eyes',
  // neck and body
  'neck_circumference',
  'stature',
  'sitting_height',
  'cervicale_height',
  'suprasternale_height',
  'acromial_height',
  'chest_height',
  'waist_height_navel',
  'crotch_height',
  'knee_height_standing',
  'biacromial_breadth',
  'bideltoid_breadth',
  'chest_breadth',
  'chest_depth',
  'waist_breadth',
  'waist_depth',
  'hip_breadth_standing',
  'buttock_depth',
  'shoulder_elbow_length',
  'forearm_hand_length',
  'hand_length',
  'hand_breadth',
  'foot_length',
] as const;
export type DimensionName = (typeof DIMENSIONS)[number];
export type Dimensions = Readonly<Record<DimensionName, number>>;

/** Landmarks on the midline; terms of anthropometry. */
export const MIDLINE_LANDMARKS = [
  'vertex',
  'opisthocranion',
  'glabella',
  'sellion',
  'pronasale',
  'subnasale',
  'labrale_superius',
  'stomion',
  'labrale_inferius',
  'pogonion',
  'menton',
  'suprasternale',
  'cervicale',
] as const;
/** Landmarks with a left and a right one (the sitter's own left and right). */
export const PAIRED_LANDMARKS = [
  'pupil',
  'endocanthion',
  'ectocanthion',
  'alare',
  'cheilion',
  'zygion',
  'tragion',
  'gonion',
  'frontotemporale',
  'euryon',
  'superaurale',
  'subaurale',
  'postaurale',
  'acromion',
  'deltoid',
  'elbow',
  'wrist',
  'knee',
  'fingertip',
] as const;
export type Side = 'left' | 'right';
export type MidlineLandmark = (typeof MIDLINE_LANDMARKS)[number];
export type PairedLandmark = (typeof PAIRED_LANDMARKS)[number];
export type LandmarkName = MidlineLandmark | `${PairedLandmark}_${Side}`;
export const LANDMARKS: readonly LandmarkName[] = [
  ...MIDLINE_LANDMARKS,
  ...PAIRED_LANDMARKS.flatMap((name): LandmarkName[] => [`${name}_left`, `${name}_right`]),
];
/** Metres, in the sitter's frame: origin midway between the pupils. */
export type Landmarks = Readonly<Record<LandmarkName, Vec3>>;

/** What a vertex belongs to; readings of visibility and outline use it. */
export const REGION = {
  none: 0,
  earLeft: 1,
  earRight: 2,
  face: 3,
  scalp: 4,
  neck: 5,
  body: 6,
  eye: 7,
  arm: 8,
} as const;

/** What a mesh is made of; the stage gives each its material. */
export const SUBSTANCES = [
  'skin',
  'hair',
  'eye',
  'top',
  'outer',
  'trousers',
  'shoes',
  'brows',
  'frame',
  'glass',
] as const;
export type Substance = (typeof SUBSTANCES)[number];

export interface SitterMesh {
  readonly name: string;
  readonly substance: Substance;
  /** xyz, metres, the sitter's frame, posed. */
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Linear RGB reflectance, one triple a vertex, 0..255. */
  readonly colours: Uint8Array;
  /** Share of open space over each vertex, 0..255: what the surroundings' light is shaded by. */
  readonly openness: Uint8Array;
  readonly indices: Uint32Array;
  /** Fewer triangles over the same vertices, for small pictures. */
  readonly coarse?: Uint32Array;
  /** One REGION value a vertex (skin and eye meshes). */
  readonly regions: Uint8Array;
  /** Hair: number of the hair and share of hairs missing; two bytes a vertex. */
  readonly strands?: Uint8Array;
  /** Skin: xyz as sculpted, metres, whatever the pose: where its pores are. */
  readonly sculpted?: Float32Array;
}

export const STANCES = ['standing', 'seated'] as const;
export type Stance = (typeof STANCES)[number];
export const ARMS = ['hanging', 'folded', 'lap', 'near-face'] as const;
export type Arms = (typeof ARMS)[number];

/** Angles in radians. The midpoint between the pupils stays at the origin whatever the pose. */
export interface Pose {
  readonly stance: Stance;
  readonly arms: Arms;
  /** Trunk bent forward at the hips; the head keeps its own direction. */
  readonly lean: number;
  /** Whole figure about the vertical; positive to the sitter's left. */
  readonly bodyTurn: number;
  /** Head on the neck: turn (positive to the sitter's left), nod (positive up), tilt (positive to the sitter's left shoulder). */
  readonly headTurn: number;
  readonly headNod: number;
  readonly headTilt: number;
}
export const UPRIGHT: Pose = {
  stance: 'standing',
  arms: 'hanging',
  lean: 0,
  bodyTurn: 0,
  headTurn: 0,
  headNod: 0,
  headTilt: 0,
};

export const HAIR_STYLES = ['bald', 'cropped', 'short', 'bob', 'long', 'tied', 'curly'] as const;
export type HairStyle = (typeof HAIR_STYLES)[number];
export const BEARDS = ['none', 'short', 'full'] as const;
export type Beard = (typeof BEARDS)[number];
export const CLOTHES = ['top', 'jacket', 'dress'] as const;
export type Clothes = (typeof CLOTHES)[number];

/** sRGB hex, under a neutral light. */
export interface Colours {
  readonly skin: string;
  readonly hair: string;
  readonly eyes: string;
  readonly top: string;
  /** Jacket; a dress is `top`. */
  readonly outer: string;
  readonly trousers: string;
}

/** How a person looks besides the dimensions. */
export interface Looks {
  readonly hair: HairStyle;
  readonly beard: Beard;
  readonly glasses: boolean;
  readonly clothes: Clothes;
  /** 0 neutral .. 1 a slight smile, mouth closed. */
  readonly smile: number;
  readonly colours: Colours;
}

export const SCULPTURE_NAMES = ['female', 'male'] as const;
export type SculptureName = (typeof SCULPTURE_NAMES)[number];
/** Forms a sculpture can take on before it is brought to its dimensions. */
export const AGE_FORMS = ['older', 'child'] as const;
export type AgeForm = (typeof AGE_FORMS)[number];
/** Forms with the expression, which is put on last. */
export const FORMS = [...AGE_FORMS, 'smile'] as const;
export type FormName = (typeof FORMS)[number];

/** One file of models/sitters/. */
export interface SitterModel {
  readonly id: string;
  readonly name: string;
  /** How a sentence speaks of the person: "woman", "man", "child". */
  readonly noun: string;
  readonly pronoun: 'her' | 'him' | 'them';
  readonly sculpture: SculptureName;
  /** Shares 0..1 of the forms of other ages. */
  readonly forms: Readonly<Partial<Record<AgeForm, number>>>;
  readonly looks: Looks;
  readonly dimensions: Readonly<
    Record<DimensionName, { readonly mm: number; readonly source: string; readonly how: string }>
  >;
}

export interface Sitter {
  readonly dimensions: Dimensions;
  readonly landmarks: Landmarks;
  readonly meshes: readonly SitterMesh[];
  /** Vertex of the skin (or eye) mesh that stands on each landmark: [mesh index, vertex index]. */
  readonly landmarkVertices: Readonly<Record<LandmarkName, readonly [number, number]>>;
}
