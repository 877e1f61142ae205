/** English: background, stretch, sharpness and light. */
import { formatFNumber, formatLength, formatPercent, formatStops, type Units } from './format';
import type { Measures } from './measures';
import type { RowWords, Say } from './words';
import { each } from './words.en.phrases';

type Extent = NonNullable<Measures['scene']['backdrop']['extent']>;

const backdropEdge = (side: keyof Extent, where: string): RowWords => ({
  name: () => `Backdrop, ${side} edge of the frame`,
  formula: 'where the rays through the corners of the frame meet the plane of the backdrop',
  meaning: (m, { units }) =>
    `On the backdrop the frame reaches ${formatLength(Math.abs(m.scene.backdrop.extent?.[side] ?? 0), units, 'frame')} ${(m.scene.backdrop.extent?.[side] ?? 0) < 0 === (side === 'left' || side === 'bottom') ? where : `short of the eyes, on the other side`}.`,
  together: () => 'Where the frame is placed by shift, its edges reach unequally far.',
  missing: 'Tilted so, the frame looks past the backdrop.',
});

const at = (where: 'edge' | 'corner'): string =>
  where === 'edge' ? 'At the edge' : 'In the corner';
const stretchName = (where: 'edge' | 'corner'): string => `Stretch ${at(where).toLowerCase()}`;

interface StretchOf {
  readonly where: 'edge' | 'corner';
  readonly name: string;
  readonly formula: string;
  readonly value: (m: Measures) => number;
  readonly way: 'longer outwards' | 'broader across';
  readonly inRow?: boolean;
}

const stretch = ({ where, name, formula, value, way, inRow = false }: StretchOf): RowWords => ({
  name: () => name,
  formula,
  meaning: (m) =>
    `${at(where)} of this frame a small ball${inRow ? ' of a straight row' : ''} is drawn ${formatPercent(value(m) - 1)} ${way} than in the middle.`,
  together: () =>
    'It comes from drawing a wide view on a flat sheet: neither the lens nor the distance is at fault.',
});

const outwards = (where: 'edge' | 'corner'): RowWords =>
  stretch({
    where,
    name: stretchName(where),
    formula: 'sec² t − 1; t the angle from the optical axis, balls equally far from the lens',
    value: (m) => m.scene.stretch[where].stretch.equalDistance.radial,
    way: 'longer outwards',
  });
const across = (where: 'edge' | 'corner'): RowWords =>
  stretch({
    where,
    name: `${stretchName(where)}, across`,
    formula: 'sec t − 1; t the angle from the optical axis, balls equally far from the lens',
    value: (m) => m.scene.stretch[where].stretch.equalDistance.tangential,
    way: 'broader across',
  });
const inARow = (where: 'edge' | 'corner'): RowWords =>
  stretch({
    where,
    name: `${stretchName(where)}, straight row`,
    formula: 'sec t − 1; t the angle from the optical axis, balls in a row square to it',
    value: (m) => m.scene.stretch[where].stretch.equalDepth.radial,
    way: 'longer outwards',
    inRow: true,
  });

/** A depth along the axis, told from the eyes. */
function fromEyes(m: Measures, depth: number, units: Units): string {
  if (depth === Number.POSITIVE_INFINITY) return 'however far behind them';
  const behind = depth - m.lens.eyeDepth;
  return `${formatLength(Math.abs(behind), units, 'depth')} ${behind < 0 ? 'before' : 'behind'} the eyes`;
}

const inFocus = (
  part: 'noseTip' | 'earLeft' | 'earRight',
  name: string,
  subject: string,
): RowWords => ({
  name: () => `${name} sharp`,
  formula: 'depth along the axis between the near and the far limit',
  meaning: (m, { units }) =>
    `${subject} lies ${m.scene.sharp[part] ? 'inside' : 'outside'} the sharp depth, from ${fromEyes(m, m.scene.sharp.near, units)} to ${fromEyes(m, m.scene.sharp.far, units)}.`,
  together: () => `Whether ${subject.toLowerCase()} lies inside the sharp depth.`,
});

const behind = ({ pronoun }: Say): string => `The backdrop behind ${pronoun}`;

export const SCENE_EN = {
  background_size_ratio: {
    name: behind,
    formula: 'd / (d + b); b from the eyes to the backdrop',
    meaning: (m, { units }) =>
      `The backdrop is drawn at ${formatPercent(m.scene.backdrop.size)} of the size it would have beside the eyes, and the frame is ${formatLength(m.scene.backdrop.width, units, 'frame')} wide there.`,
    together: (pictures, { units }) =>
      `Its size against the same thing beside the eyes. There the frame is ${each(pictures, (m) => formatLength(m.scene.backdrop.width, units, 'frame'))} wide.`,
  },
  backdrop_width_m: {
    name: () => 'Backdrop in the frame',
    formula: 'W (d + b) / d; W frame width at the eyes',
    meaning: (m, { units }) =>
      `The frame is ${formatLength(m.scene.backdrop.width, units, 'frame')} wide at the backdrop, ${formatLength(m.scene.backdrop.distance, units, 'distance')} behind the eyes.`,
    together: () => 'The nearer the camera at an equal crop, the wider the backdrop must be.',
  },
  backdrop_width_with_margin_m: {
    name: () => 'Backdrop to hang',
    formula: 'W (d + b) / d, and a tenth of it at each side',
    meaning: (m, { units }) =>
      `A backdrop ${formatLength(m.scene.backdrop.widthWithMargin, units, 'frame')} wide fills the frame and leaves a tenth spare at each side.`,
    together: () => 'With a tenth spare at each side (common practice).',
  },
  'backdrop_span_m.left': backdropEdge('left', 'to the left of the eyes'),
  'backdrop_span_m.right': backdropEdge('right', 'to the right of the eyes'),
  'backdrop_span_m.bottom': backdropEdge('bottom', 'below the eyes'),
  'backdrop_span_m.top': backdropEdge('top', 'above the eyes'),
  'stretch_percent.corner_outwards': outwards('corner'),
  'stretch_percent.corner_across': across('corner'),
  'stretch_percent.corner_in_a_row': inARow('corner'),
  'stretch_percent.edge_outwards': outwards('edge'),
  'stretch_percent.edge_across': across('edge'),
  'stretch_percent.edge_in_a_row': inARow('edge'),
  'depth_of_field_m.total': {
    name: () => 'Sharp depth',
    formula: 'far − near; the limits below',
    meaning: (m, { units }) =>
      `At ${formatFNumber(m.lens.fNumber)} it is sharp from ${fromEyes(m, m.scene.sharp.near, units)} to ${fromEyes(m, m.scene.sharp.far, units)}.`,
    together: (pictures) =>
      new Set(pictures.map(({ measures }) => measures.lens.fNumber)).size > 1
        ? `The f-numbers differ: ${each(pictures, (m) => formatFNumber(m.lens.fNumber))}.`
        : 'At an equal crop and f-number, distance hardly changes the sharp depth.',
  },
  'depth_of_field_m.near': {
    name: () => 'Sharp from',
    formula: 's / (1 + N c (s − f) / f²); from the lens along the axis',
    meaning: (m, { units }) =>
      `Nearer than ${formatLength(m.scene.sharp.near, units, 'distance')} from the lens, a point is drawn larger than ${formatLength(m.scene.sharp.circleOfConfusion, units, 'sensor')} on the sensor.`,
    together: () => 'From the lens, along its axis.',
  },
  'depth_of_field_m.far': {
    name: () => 'Sharp to',
    formula:
      's / (1 − N c (s − f) / f²); from the lens along the axis, no limit from the hyperfocal distance on',
    meaning: (m, { units }) =>
      m.scene.sharp.far === Number.POSITIVE_INFINITY
        ? 'From the near limit on, all is sharp however far away.'
        : `Beyond ${formatLength(m.scene.sharp.far, units, 'distance')} from the lens, a point is drawn larger than ${formatLength(m.scene.sharp.circleOfConfusion, units, 'sensor')} on the sensor.`,
    together: () => 'From the lens, along its axis.',
  },
  hyperfocal_m: {
    name: () => 'Hyperfocal distance',
    formula: 'f² / (N c) + f',
    meaning: (m, { units }) =>
      `Focused at ${formatLength(m.scene.sharp.hyperfocal, units, 'distance')} or beyond, it stays sharp without end.`,
    together: () => 'Focused here or beyond, it stays sharp without end.',
  },
  'in_focus.nose_tip': inFocus('noseTip', 'Nose tip', 'The nose tip'),
  'in_focus.ear_left': inFocus('earLeft', 'Left ear', 'The left ear'),
  'in_focus.ear_right': inFocus('earRight', 'Right ear', 'The right ear'),
  backdrop_blur_percent: {
    name: () => 'Blur of the backdrop, as drawn',
    formula: 'f² |x − s| / (N x (s − f) h); x depth of the backdrop, h picture height',
    meaning: (m) =>
      `A point of the backdrop is drawn as a disc ${formatPercent(m.scene.blur?.inPicture ?? 0)} of the picture's height across.`,
    missing: 'Tilted so, the lens does not look towards the backdrop.',
    together: () => "A point's disc as a share of the picture's height.",
  },
  backdrop_blur_mm: {
    name: () => 'Blur of the backdrop, on the backdrop',
    formula: 'b h / (N (H + h)); H frame height in the plane of focus, b backdrop behind it',
    meaning: (m, { units }) =>
      `On the backdrop itself the blur is ${formatLength(m.scene.blur?.onBackdrop ?? 0, units, 'sensor')} wide: what is smaller there melts away.`,
    missing: 'Tilted so, the lens does not look towards the backdrop.',
    together: () => 'At an equal crop and f-number it is the same from every standpoint.',
  },
  effective_f_number: {
    name: () => 'f-number in effect',
    formula: 'N (1 + m / p); m magnification, p pupil magnification (1 for a thin lens)',
    meaning: (m) =>
      `Focused this near, ${formatFNumber(m.lens.fNumber)} lets through the light of ${formatFNumber(m.scene.light.effectiveFNumber)}.`,
    together: () => 'Focusing near stretches the lens out and costs light.',
  },
  exposure_loss_stops: {
    name: () => 'Light lost by focusing near',
    formula: '2 log₂(1 + m / p)',
    meaning: (m) =>
      `Focusing this near costs ${formatStops(m.scene.light.lossStops)} stops of light against a far subject.`,
    together: () => 'A meter in the camera allows for it; a hand-held meter does not.',
  },
  airy_disc_mm: {
    name: () => 'Diffraction disc',
    formula: '2.44 λ N (1 + m); green light, 550 nm',
    meaning: (m, { units }) =>
      `Light bends at the aperture: no point is drawn smaller than ${formatLength(m.scene.light.airyDisc, units, 'sensor')} on the sensor.`,
    together: () => 'The smallest disc that a point can be drawn as on the sensor.',
  },
} satisfies Record<string, RowWords>;
