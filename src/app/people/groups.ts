/** The dimensions as the panel groups them. */
import type { DimensionName } from '../../sitter/types';

export const GROUPS = {
  head: [
    'head_breadth',
    'head_length',
    'head_height_vertex_to_menton',
    'vertex_above_eyes',
    'minimum_frontal_breadth',
  ],
  face: [
    'face_length_menton_sellion',
    'bizygomatic_breadth',
    'bigonial_breadth',
    'interpupillary_distance',
  ],
  nose: [
    'nose_length_subnasale_sellion',
    'nose_breadth',
    'nose_protrusion',
    'nasal_root_breadth',
    'lip_length',
  ],
  ears: ['ear_length', 'ear_breadth', 'ear_protrusion', 'bitragion_breadth'],
  depths: [
    'nose_tip_to_sellion',
    'nose_tip_to_eye_plane',
    'nose_tip_to_outer_eye_corner',
    'nose_tip_to_zygion',
    'nose_tip_to_tragion',
    'nose_tip_to_back_of_head',
  ],
  neck: [
    'neck_circumference',
    'cervicale_height',
    'suprasternale_height',
    'acromial_height',
    'biacromial_breadth',
    'bideltoid_breadth',
  ],
  body: [
    'stature',
    'sitting_height',
    'chest_height',
    'chest_breadth',
    'chest_depth',
    'waist_height_navel',
    'waist_breadth',
    'waist_depth',
    'hip_breadth_standing',
    'buttock_depth',
    'crotch_height',
  ],
  limbs: [
    'shoulder_elbow_length',
    'forearm_hand_length',
    'hand_length',
    'hand_breadth',
    'knee_height_standing',
    'foot_length',
  ],
} as const satisfies Record<string, readonly DimensionName[]>;
export type GroupName = keyof typeof GROUPS;
export const GROUP_NAMES = Object.keys(GROUPS) as GroupName[];
