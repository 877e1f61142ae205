/** English: distances, lens, frame, print and cut. */
import {
  formatAngle,
  formatFNumber,
  formatFocal,
  formatLength,
  formatNumber,
  formatPercent,
} from './format';
import type { Measures } from './measures';
import { PERSONAL_DISTANCES } from './proxemics';
import type { RowWords, Say } from './words';
import { each } from './words.en.phrases';

const bandLimits = (band: string, units: Say['units']): string => {
  const index = PERSONAL_DISTANCES.findIndex((entry) => entry.band === band);
  const inner = PERSONAL_DISTANCES[index - 1]?.upTo ?? 0;
  const outer = PERSONAL_DISTANCES[index]?.upTo ?? Number.POSITIVE_INFINITY;
  if (inner === 0) return `inside ${formatLength(outer, units, 'distance')}`;
  const from = formatLength(inner, units, 'distance');
  return outer === Number.POSITIVE_INFINITY
    ? `beyond ${from}`
    : `${from} to ${formatLength(outer, units, 'distance')}`;
};

const view = (side: keyof Measures['lens']['angle'], name: string): RowWords => ({
  name: () => `Angle of view, ${name}`,
  formula: `2 atan(${side === 'diagonal' ? 'diagonal' : side === 'vertical' ? 'h' : 'w'} / 2s′); s′ image distance`,
  meaning: (m) =>
    `At this focus the camera takes in ${formatAngle(m.lens.angle[side])} along the ${name} of the frame.`,
  together: () => 'To hold an equal frame from nearer, the view must be wider.',
});

const cutOnly = 'The picture is not cut out of a wider one.';

export const LENS_EN = {
  standpoint_m: {
    name: () => 'Standpoint',
    formula: 'straight from the entrance pupil to the point midway between the pupils',
    meaning: (m, { units }) =>
      `The lens stands ${formatLength(m.lens.standpoint, units, 'distance')} from the eyes; perspective hangs on this alone.`,
    together: () => 'The proportions of the face hang on this alone.',
  },
  sensor_mark_distance_m: {
    name: () => 'On the tape, from the sensor mark',
    formula: 's + s′ for a thin lens; s + e where the place e of the entrance pupil is known',
    meaning: (m, { units }) =>
      `A tape from the sensor mark on the camera to the plane in focus reads ${formatLength(m.lens.sensorMark, units, 'distance')}.`,
    together: () => "A lens's focus scale and nearest focus count from the sensor mark.",
  },
  eye_depth_m: {
    name: () => 'Eyes along the axis',
    formula: 'depth of the eyes along the optical axis',
    meaning: (m, { units }) =>
      `Along the optical axis the eyes lie ${formatLength(m.lens.eyeDepth, units, 'distance')} before the lens.`,
    together: () => 'Tilt and height part this from the standpoint distance.',
  },
  nose_to_lens_m: {
    name: () => 'Nose to lens',
    formula: 'straight from the entrance pupil to the nose tip',
    meaning: (m, { units }) =>
      `The nose tip is ${formatLength(m.face.noseToLens, units, 'distance')} from the lens, at ${m.personalDistance} distance (${bandLimits(m.personalDistance, units)}).`,
    together: (pictures, { units }) =>
      `The photographer works at ${each(pictures, (m) => `${m.personalDistance} distance (${bandLimits(m.personalDistance, units)})`)}.`,
  },
  lens_clearance_m: {
    name: () => 'Front of the lens to the nose',
    formula:
      'from the front of the lens, its length before the sensor mark on the axis, to the nose tip',
    meaning: (m, { units }) => {
      const gap = m.clearance ?? 0;
      const shown = formatLength(Math.abs(gap), units, 'distance');
      return gap < 0
        ? `The lens would reach ${shown} past the nose tip.`
        : `Between the glass and the nose ${shown} are free.`;
    },
    together: () => 'What is free between the front of the lens and the nose.',
    missing: 'No lens is chosen, so its length is not known.',
  },
  personal_distance: {
    name: () => 'Personal distance',
    formula: 'bands of Hall (1966): 1.5, 4 and 12 ft',
    meaning: (m, { units }) =>
      `The photographer stands at ${m.personalDistance} distance (${bandLimits(m.personalDistance, units)}).`,
    together: () => 'How near two people stand, after Hall (1966).',
  },
  focal_length_mm: {
    name: () => 'Focal length (thin-lens mark)',
    formula: 'f = s h / (H + h); H frame height in the plane of focus, h sensor height',
    meaning: (m, { units }) =>
      `From ${formatLength(m.lens.standpoint, units, 'distance')} a thin lens of ${formatFocal(m.lens.focal)} takes this picture; a real one may be marked longer.`,
    together: () => 'It decides how much of the view the frame keeps, not how the face is drawn.',
  },
  lens_mark_mm: {
    name: () => 'Mark to set on the lens',
    formula: 'f over the share of its marked focal length that the lens keeps at this focus',
    meaning: (m) =>
      `Focused this near, the chosen lens set to ${formatFocal(m.lens.lensMark ?? 0)} acts as ${formatFocal(m.lens.focal)}.`,
    together: () => 'A lens without data is taken as thin.',
    missing: 'No lens is chosen.',
  },
  image_distance_mm: {
    name: () => 'Image distance',
    formula: 's′ = f s / (s − f)',
    meaning: (m) =>
      `The sharp image lies ${formatFocal(m.lens.imageDistance)} behind the lens; the angle of view follows from it.`,
    together: () => 'Field of view and blur follow from it.',
  },
  magnification: {
    name: () => 'Magnification',
    formula: 'm = f / (s − f) = s′ / s',
    meaning: (m) =>
      `What is in focus is drawn on the sensor at ${formatNumber(m.lens.magnification, 3)} of its size.`,
    together: () => 'Size on the sensor over true size, in the plane of focus.',
  },
  'angle_of_view_deg.horizontal': view('horizontal', 'width'),
  'angle_of_view_deg.vertical': view('vertical', 'height'),
  'angle_of_view_deg.diagonal': view('diagonal', 'diagonal'),
  'frame_m.width': {
    name: () => 'Frame width at the eyes',
    formula: 'W = w s / s′',
    meaning: (m, { units }) =>
      `In the plane of the eyes the frame is ${formatLength(m.lens.frame.width, units, 'frame')} wide.`,
    together: () => 'In the plane through the eyes, square to the axis.',
  },
  'frame_m.height': {
    name: () => 'Frame height at the eyes',
    formula: 'H = h s / s′',
    meaning: (m, { units }) =>
      `In the plane of the eyes the frame is ${formatLength(m.lens.frame.height, units, 'frame')} high.`,
    together: () => 'In the plane through the eyes, square to the axis.',
  },
  print_viewing_distance_m: {
    name: () => 'Place to view a print from',
    formula: 'd P / H; P print height, H frame height at the eyes',
    meaning: (m, { units }) =>
      `A print ${formatLength(m.lens.print.height, units, 'frame')} high shows the camera's own perspective from ${formatLength(m.lens.print.viewing, units, 'distance')}.`,
    together: ([first], { units }) =>
      `For a print ${first ? formatLength(first.measures.lens.print.height, units, 'frame') : ''} high: from here every angle is the camera's own.`,
  },
  'cut.frame_kept_share': {
    name: () => 'Part of the frame kept',
    formula: '(s′ of the lens / s′ of the lens it stands for)²',
    meaning: (m) =>
      `The picture is ${formatPercent(m.lens.cut?.areaShare ?? 0)} of what ${formatFocal(m.lens.focal)} takes in from here.`,
    together: () => 'By area. The perspective is that of the whole picture.',
    missing: cutOnly,
  },
  'cut.megapixels_left': {
    name: () => 'Pixels left',
    formula: 'megapixels of the body × part kept',
    meaning: (m) => `${formatNumber(m.lens.cut?.megapixels ?? 0, 1)} megapixels are left.`,
    together: () => 'Pixels are what staying back and cropping costs.',
    missing: cutOnly,
  },
  'cut.print_width_m': {
    name: () => 'Print width at 300 dpi',
    formula: 'pixels across / 300 × 25.4 mm',
    meaning: (m, { units }) =>
      `At 300 dots an inch it prints ${formatLength(m.lens.cut?.print.width ?? 0, units, 'frame')} wide.`,
    together: () => 'At 300 dots an inch.',
    missing: cutOnly,
  },
  'cut.print_height_m': {
    name: () => 'Print height at 300 dpi',
    formula: 'pixels down / 300 × 25.4 mm',
    meaning: (m, { units }) =>
      `At 300 dots an inch it prints ${formatLength(m.lens.cut?.print.height ?? 0, units, 'frame')} high.`,
    together: () => 'At 300 dots an inch.',
    missing: cutOnly,
  },
  'cut.as_if_focal_length_mm': {
    name: () => 'As if by a focal length of',
    formula: 'f = s h / (H + h) for the frame kept',
    meaning: (m) =>
      `The cut equals the whole picture of ${formatFocal(m.lens.cut?.asIf.focal ?? 0)} from the same place.`,
    together: () => 'The lens whose whole picture the cut equals.',
    missing: cutOnly,
  },
  'cut.as_if_f_number': {
    name: () => 'Blur as if at',
    formula: 'N f′ / f; both lenses have the same entrance pupil',
    meaning: (m) =>
      `The blur is that of ${formatFocal(m.lens.cut?.asIf.focal ?? 0)} at ${formatFNumber(m.lens.cut?.asIf.fNumber ?? 0)}.`,
    together: () => 'The opening is the same, the longer lens would call it a larger f-number.',
    missing: cutOnly,
  },
} satisfies Record<string, RowWords>;
