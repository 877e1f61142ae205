/** The readings, one row each: where its number comes from and how it is shown and compared. */
import type { Measures } from './measures';
import type { Show } from './show';
import type { ReadingUnit } from './types';

/** How two pictures' values are set against each other; `none` for what has no direction. */
export type Comparing = 'more' | 'larger' | 'longer' | 'nearer' | 'wider' | 'higher' | 'none';

export interface Row<Id extends string = string> {
  readonly id: Id;
  readonly unit: ReadingUnit;
  readonly show: Show;
  readonly comparing: Comparing;
  /** SI; null when there is none; infinite where no limit exists. */
  readonly value: (m: Measures) => number | string | boolean | null;
  /** What the comparison runs on, where that is not the value itself. */
  readonly compared?: (m: Measures) => number | null;
}

const row = <Id extends string>(
  id: Id,
  unit: ReadingUnit,
  show: Show,
  comparing: Comparing,
  value: Row['value'],
  compared?: Row['compared'],
): Row<Id> => ({ id, unit, show, comparing, value, ...(compared ? { compared } : {}) });

/** A share in excess of 1 is compared by what is drawn: 140 % against 101 %, not 40 against 1. */
const excess = <Id extends string>(id: Id, drawn: (m: Measures) => number | null): Row<Id> =>
  row(id, 'percent', 'percent', 'more', (m) => lessOne(drawn(m)), drawn);

const lessOne = (value: number | null): number | null => (value === null ? null : value - 1);

const size = <Part extends keyof Measures['face']['size']>(part: Part) =>
  row(`size_ratio.${part}`, 'ratio', 'change', 'larger', (m) => m.face.size[part]);

const step = <Part extends string>(part: Part, key: keyof Measures['face']['step']) =>
  row(`nose_to_ear_step_percent.${part}`, 'percent', 'gain', 'none', (m) => m.face.step[key]);

export const ROWS = [
  row('nose_to_ear_ratio', 'ratio', 'ratio', 'more', (m) => m.face.noseToEar.mean),
  row(
    'nose_to_ear_gain_percent',
    'percent',
    'gain',
    'more',
    (m) => lessOne(m.face.noseToEar.mean),
    (m) => m.face.noseToEar.mean,
  ),
  row('nose_to_ear_ratio_left', 'ratio', 'ratio', 'more', (m) => m.face.noseToEar.left),
  row('nose_to_ear_ratio_right', 'ratio', 'ratio', 'more', (m) => m.face.noseToEar.right),
  step('nearer_10_cm', 'nearer10cm'),
  step('farther_10_cm', 'farther10cm'),
  step('nearer_1_ft', 'nearer1ft'),
  step('farther_1_ft', 'farther1ft'),
  row(
    'distance_for_gain_m.percent_5',
    'm',
    'distance',
    'none',
    (m) => m.face.distanceForGain.percent5,
  ),
  row(
    'distance_for_gain_m.percent_10',
    'm',
    'distance',
    'none',
    (m) => m.face.distanceForGain.percent10,
  ),
  size('nose_tip'),
  size('cheekbones'),
  size('ears'),
  size('ear_left'),
  size('ear_right'),
  size('crown'),
  size('chin'),
  size('shoulders'),
  row(
    'nose_breadth_to_face_breadth',
    'ratio',
    'ratio',
    'larger',
    (m) => m.face.noseBreadthToFaceBreadth.here,
  ),
  row(
    'face_height_to_face_breadth',
    'ratio',
    'ratio',
    'larger',
    (m) => m.face.faceHeightToFaceBreadth.here,
  ),
  row(
    'visible_share.ear_left',
    'share',
    'percent',
    'more',
    (m) => m.visibility?.earLeft?.ofFar ?? null,
  ),
  row(
    'visible_share.ear_right',
    'share',
    'percent',
    'more',
    (m) => m.visibility?.earRight?.ofFar ?? null,
  ),
  row(
    'visible_share.face_breadth',
    'share',
    'percent',
    'more',
    (m) => m.visibility?.faceBreadth ?? null,
  ),
  row('pupil_distance_mm', 'mm', 'sensor', 'larger', (m) => m.face.pupils.here),
  row('view_angle_deg', 'deg', 'angle', 'higher', (m) => m.viewAngle),
  row('face_seen_from_deg.turn', 'deg', 'angle', 'none', (m) => m.face.seenFrom.turn),
  row('face_seen_from_deg.pitch', 'deg', 'angle', 'higher', (m) => m.face.seenFrom.pitch),
  row('background_size_ratio', 'ratio', 'percent', 'larger', (m) => m.scene.backdrop.size),
  row('backdrop_width_m', 'm', 'frame', 'wider', (m) => m.scene.backdrop.width),
  row(
    'backdrop_width_with_margin_m',
    'm',
    'frame',
    'wider',
    (m) => m.scene.backdrop.widthWithMargin,
  ),
  row('backdrop_span_m.left', 'm', 'frame', 'none', (m) => m.scene.backdrop.extent?.left ?? null),
  row('backdrop_span_m.right', 'm', 'frame', 'none', (m) => m.scene.backdrop.extent?.right ?? null),
  row(
    'backdrop_span_m.bottom',
    'm',
    'frame',
    'none',
    (m) => m.scene.backdrop.extent?.bottom ?? null,
  ),
  row('backdrop_span_m.top', 'm', 'frame', 'none', (m) => m.scene.backdrop.extent?.top ?? null),
  excess(
    'stretch_percent.corner_outwards',
    (m) => m.scene.stretch.corner.stretch.equalDistance.radial,
  ),
  excess(
    'stretch_percent.corner_across',
    (m) => m.scene.stretch.corner.stretch.equalDistance.tangential,
  ),
  excess(
    'stretch_percent.corner_in_a_row',
    (m) => m.scene.stretch.corner.stretch.equalDepth.radial,
  ),
  excess('stretch_percent.edge_outwards', (m) => m.scene.stretch.edge.stretch.equalDistance.radial),
  excess(
    'stretch_percent.edge_across',
    (m) => m.scene.stretch.edge.stretch.equalDistance.tangential,
  ),
  excess('stretch_percent.edge_in_a_row', (m) => m.scene.stretch.edge.stretch.equalDepth.radial),
  row(
    'depth_of_field_m.total',
    'm',
    'depth',
    'more',
    (m) => m.scene.sharp.far - m.scene.sharp.near,
  ),
  row('depth_of_field_m.near', 'm', 'distance', 'nearer', (m) => m.scene.sharp.near),
  row('depth_of_field_m.far', 'm', 'distance', 'nearer', (m) => m.scene.sharp.far),
  row('hyperfocal_m', 'm', 'distance', 'nearer', (m) => m.scene.sharp.hyperfocal),
  row('in_focus.nose_tip', 'yes-or-no', 'yes-or-no', 'none', (m) => m.scene.sharp.noseTip),
  row('in_focus.ear_left', 'yes-or-no', 'yes-or-no', 'none', (m) => m.scene.sharp.earLeft),
  row('in_focus.ear_right', 'yes-or-no', 'yes-or-no', 'none', (m) => m.scene.sharp.earRight),
  row(
    'backdrop_blur_percent',
    'percent',
    'percent',
    'larger',
    (m) => m.scene.blur?.inPicture ?? null,
  ),
  row('backdrop_blur_mm', 'mm', 'sensor', 'larger', (m) => m.scene.blur?.onBackdrop ?? null),
  row(
    'effective_f_number',
    'f-number',
    'f-number',
    'larger',
    (m) => m.scene.light.effectiveFNumber,
  ),
  row('exposure_loss_stops', 'stops', 'stops', 'none', (m) => m.scene.light.lossStops),
  row('airy_disc_mm', 'mm', 'sensor', 'larger', (m) => m.scene.light.airyDisc),
  row('standpoint_m', 'm', 'distance', 'nearer', (m) => m.lens.standpoint),
  row('sensor_mark_distance_m', 'm', 'distance', 'nearer', (m) => m.lens.sensorMark),
  row('eye_depth_m', 'm', 'distance', 'nearer', (m) => m.lens.eyeDepth),
  row('nose_to_lens_m', 'm', 'distance', 'nearer', (m) => m.face.noseToLens),
  row('lens_clearance_m', 'm', 'distance', 'nearer', (m) => m.clearance),
  row('personal_distance', 'text', 'text', 'none', (m) => m.personalDistance),
  row('focal_length_mm', 'mm', 'focal', 'longer', (m) => m.lens.focal),
  row('lens_mark_mm', 'mm', 'focal', 'longer', (m) => m.lens.lensMark),
  row('image_distance_mm', 'mm', 'focal', 'longer', (m) => m.lens.imageDistance),
  row('magnification', 'ratio', 'scale', 'more', (m) => m.lens.magnification),
  row('angle_of_view_deg.horizontal', 'deg', 'angle', 'wider', (m) => m.lens.angle.horizontal),
  row('angle_of_view_deg.vertical', 'deg', 'angle', 'wider', (m) => m.lens.angle.vertical),
  row('angle_of_view_deg.diagonal', 'deg', 'angle', 'wider', (m) => m.lens.angle.diagonal),
  row('frame_m.width', 'm', 'frame', 'wider', (m) => m.lens.frame.width),
  row('frame_m.height', 'm', 'frame', 'higher', (m) => m.lens.frame.height),
  row('print_viewing_distance_m', 'm', 'distance', 'nearer', (m) => m.lens.print.viewing),
  row('cut.frame_kept_share', 'share', 'percent', 'more', (m) => m.lens.cut?.areaShare ?? null),
  row(
    'cut.megapixels_left',
    'megapixels',
    'megapixels',
    'more',
    (m) => m.lens.cut?.megapixels ?? null,
  ),
  row('cut.print_width_m', 'm', 'frame', 'wider', (m) => m.lens.cut?.print.width ?? null),
  row('cut.print_height_m', 'm', 'frame', 'higher', (m) => m.lens.cut?.print.height ?? null),
  row('cut.as_if_focal_length_mm', 'mm', 'focal', 'longer', (m) => m.lens.cut?.asIf.focal ?? null),
  row(
    'cut.as_if_f_number',
    'f-number',
    'f-number',
    'larger',
    (m) => m.lens.cut?.asIf.fNumber ?? null,
  ),
] as const;

export type ReadingId = (typeof ROWS)[number]['id'];

/** The rows of the short table, in its order. */
export const SHORT_TABLE: readonly ReadingId[] = [
  'nose_to_ear_ratio',
  'size_ratio.nose_tip',
  'size_ratio.ears',
  'background_size_ratio',
  'stretch_percent.corner_outwards',
  'depth_of_field_m.total',
  'nose_to_lens_m',
  'angle_of_view_deg.vertical',
  'print_viewing_distance_m',
];
