/** English: what the standpoint does to the face. */
import { formatAngle, formatLength, formatPercent, formatRatio, type Units } from './format';
import type { Drawn, SizedPart } from './measure-face';
import type { Measures } from './measures';
import type { SeenSurface } from './visibility';
import type { RowWords } from './words';
import { alike, capital, each, larger, tooLarge } from './words.en.phrases';

const from = (m: Measures, units: Units): string =>
  formatLength(m.lens.standpoint, units, 'distance');

const noseToEar = (side: 'mean' | 'left' | 'right', name: string, ear: string): RowWords => ({
  name: () => name,
  formula: `(d − z of ${ear}) / (d − z of the nose tip); d standpoint distance, z in front of the eye plane`,
  meaning: (m, { units }) =>
    `From ${from(m, units)} the nose is drawn ${tooLarge(m.face.noseToEar[side])} for ${ear}; from far away this is 1.`,
  together: (pictures) =>
    `From far away this is 1. For ${ear}, the nose is drawn ${each(pictures, (m) => tooLarge(m.face.noseToEar[side]))}.`,
  missing: 'The lens would stand inside the face.',
});

const step = (
  key: keyof Measures['face']['step'],
  by: string,
  way: 'nearer' | 'farther',
): RowWords => ({
  name: () => `One step of ${by} ${way}`,
  formula: `nose-to-ear gain at d ${way === 'nearer' ? '−' : '+'} ${by}, less the gain at d`,
  meaning: (m) => {
    const now = m.face.noseToEar.mean ?? 1;
    const then = now + (m.face.step[key] ?? 0);
    return `A step of ${by} ${way} would take the nose from ${tooLarge(now)} to ${tooLarge(then)}.`;
  },
  together: () => 'Near the face a step changes much, farther away the same step changes little.',
  missing: 'After this step the lens would stand inside the face.',
});

const forGain = (key: keyof Measures['face']['distanceForGain'], gain: string): RowWords => ({
  name: () => `Distance at which the nose gains ${gain}`,
  formula: 'd = z nose + (z nose − z ears) / gain',
  meaning: (m, { units }) =>
    `From ${formatLength(m.face.distanceForGain[key] ?? 0, units, 'distance')} the nose is drawn ${gain} too large for the ears, nearer by more, farther by less.`,
  together: () => 'It follows from the depth of the head and how it is turned; no lens enters.',
  missing: 'As the head is turned, the nose gains nothing on the ears.',
});

/** Where a part stands against the eyes, told from its size and the standpoint. */
function stands(m: Measures, part: SizedPart, units: Units): string {
  const ratio = m.face.size[part];
  if (ratio === null) return 'beside or behind the lens';
  const depth = m.lens.standpoint * (1 - 1 / ratio);
  if (Math.abs(depth) < 0.0005) return 'as far from the lens as the eyes';
  const away = formatLength(Math.abs(depth), units, 'depth');
  return depth > 0 ? `${away} nearer to the lens than the eyes` : `${away} behind the eyes`;
}

const sizeOf = (part: SizedPart, subject: string, verb: 'stands' | 'stand'): RowWords => ({
  name: () => `${capital(subject)}, against the eyes`,
  formula: 'd / (d − z) − 1; d standpoint distance, z in front of the eye plane',
  meaning: (m, { units }) =>
    `The ${subject} ${verb} ${stands(m, part, units)}; from ${from(m, units)} that draws ${verb === 'stands' ? 'it' : 'them'} ${larger(m.face.size[part])}.`,
  together: (pictures, { units }) =>
    `The ${subject} ${verb} ${alike(pictures, (m) => stands(m, part, units))}. From near that counts for more.`,
  missing: 'This part stands beside or behind the lens.',
});

const asDrawn = (
  name: string,
  formula: string,
  drawn: (m: Measures) => Drawn,
  what: string,
): RowWords => ({
  name: () => name,
  formula,
  meaning: (m) =>
    `${what} measures ${formatRatio(drawn(m).here ?? 0)} of the breadth across the cheekbones as drawn, and ${formatRatio(drawn(m).far)} from far away.`,
  together: (pictures) =>
    `Taken with a ruler on the picture. From far away it would be ${alike(pictures, (m) => formatRatio(drawn(m).far))}.`,
  missing: 'A part of the face stands beside or behind the lens.',
});

const seenEar = (side: 'earLeft' | 'earRight', ear: string): RowWords => {
  const seen = (m: Measures): SeenSurface | null => m.visibility?.[side] ?? null;
  const share = (m: Measures): string => {
    const ofFar = seen(m)?.ofFar ?? null;
    return ofFar === null ? 'nothing to compare' : formatPercent(ofFar);
  };
  return {
    name: () => `${ear}, in sight`,
    formula:
      'area of the ear met by rays from the lens / area met by parallel rays from the same direction; hair hides in both',
    meaning: (m) =>
      `The camera sees ${share(m)} of what the far view of the same sitter shows of this ear; the cheek, and any hair, hides the rest.`,
    together: () =>
      'Of what the far view of the same sitter shows. Near the face, the cheeks stand before the ears.',
    missing: 'Not measured yet, or the far view shows nothing of this ear either.',
  };
};

export const FACE_EN = {
  nose_to_ear_ratio: noseToEar('mean', 'Nose to ear', 'the ears'),
  nose_to_ear_gain_percent: {
    name: () => 'Gain of the nose on the ears',
    formula: '(d − z ears) / (d − z nose) − 1, against the far (parallel) view',
    meaning: (m) =>
      `Against the view from far away, the nose is drawn ${larger(m.face.noseToEar.mean)} in proportion to the ears.`,
    together: () => 'Against the view from far away, where nothing gains on anything.',
    missing: 'The lens would stand inside the face.',
  },
  nose_to_ear_ratio_left: noseToEar('left', 'Nose to left ear', 'the left ear'),
  nose_to_ear_ratio_right: noseToEar('right', 'Nose to right ear', 'the right ear'),
  'nose_to_ear_step_percent.nearer_10_cm': step('nearer10cm', '10 cm', 'nearer'),
  'nose_to_ear_step_percent.farther_10_cm': step('farther10cm', '10 cm', 'farther'),
  'nose_to_ear_step_percent.nearer_1_ft': step('nearer1ft', '1 ft', 'nearer'),
  'nose_to_ear_step_percent.farther_1_ft': step('farther1ft', '1 ft', 'farther'),
  'distance_for_gain_m.percent_5': forGain('percent5', '5 %'),
  'distance_for_gain_m.percent_10': forGain('percent10', '10 %'),
  'size_ratio.nose_tip': sizeOf('nose_tip', 'nose tip', 'stands'),
  'size_ratio.cheekbones': sizeOf('cheekbones', 'cheekbones', 'stand'),
  'size_ratio.ears': sizeOf('ears', 'ears', 'stand'),
  'size_ratio.ear_left': sizeOf('ear_left', 'left ear', 'stands'),
  'size_ratio.ear_right': sizeOf('ear_right', 'right ear', 'stands'),
  'size_ratio.crown': sizeOf('crown', 'crown', 'stands'),
  'size_ratio.chin': sizeOf('chin', 'chin', 'stands'),
  'size_ratio.shoulders': sizeOf('shoulders', 'shoulders', 'stand'),
  nose_breadth_to_face_breadth: asDrawn(
    'Nose breadth to face breadth',
    'drawn alare to alare / drawn zygion to zygion',
    (m) => m.face.noseBreadthToFaceBreadth,
    'The nose, wing to wing,',
  ),
  face_height_to_face_breadth: asDrawn(
    'Face height to face breadth',
    'drawn sellion to menton / drawn zygion to zygion',
    (m) => m.face.faceHeightToFaceBreadth,
    'The face, nose root to chin,',
  ),
  'visible_share.ear_left': seenEar('earLeft', 'Left ear'),
  'visible_share.ear_right': seenEar('earRight', 'Right ear'),
  'visible_share.face_breadth': {
    name: () => 'Face breadth, in sight',
    formula:
      'breadth of the face at the cheekbones inside its outline / the same for parallel rays',
    meaning: (m) =>
      `The outline holds ${formatPercent(m.visibility?.faceBreadth ?? 0)} of the face's breadth at the cheekbones; what lies behind the outline is not seen.`,
    together: () => 'Near the face, its widest place lies behind the outline. Hair is left out.',
    missing: 'Not measured yet.',
  },
  pupil_distance_mm: {
    name: () => 'Between the pupils',
    formula:
      'straight from pupil to pupil; each eye turns about a point 10.5 mm behind its pupil towards what it looks at',
    meaning: (m) => {
      const { here, far } = m.face.pupils;
      return far - here < 0.00005
        ? 'The eyes look as into the distance.'
        : `The eyes turn in towards the lens: the pupils are ${formatLength(far - here, 'metric', 'sensor')} closer together than when looking far away.`;
    },
    together: () =>
      'Eyes that look into a near lens turn inwards; a print held by pupil distance allows for it.',
  },
  view_angle_deg: {
    name: () => 'Camera above the eyes',
    formula: 'angle of the line from the eyes to the lens against level; negative from below',
    meaning: (m) =>
      Math.abs(m.viewAngle) < 0.0009
        ? 'The lens stands level with the eyes.'
        : `The lens looks at the eyes from ${formatAngle(Math.abs(m.viewAngle))} ${m.viewAngle > 0 ? 'above' : 'below'}.`,
    together: (pictures) =>
      new Set(pictures.map(({ measures }) => measures.viewAngle.toFixed(3))).size > 1
        ? 'Two things differ: the distance and the angle at which the face is seen.'
        : 'Equal in all: the distance alone changes the face.',
  },
  'face_seen_from_deg.turn': {
    name: () => 'Face turned from the camera',
    formula:
      "direction of the lens in the head's own axes, about its vertical; positive: its left side",
    meaning: (m) => {
      const { turn } = m.face.seenFrom;
      return Math.abs(turn) < 0.0009
        ? 'The camera stands straight before the face.'
        : `The camera sees the face from ${formatAngle(Math.abs(turn))} to its ${turn > 0 ? 'left' : 'right'}.`;
    },
    together: () => 'Against straight before the face.',
  },
  'face_seen_from_deg.pitch': {
    name: () => "Camera above the face's own level",
    formula: "direction of the lens in the head's own axes, above their level",
    meaning: (m) => {
      const { pitch } = m.face.seenFrom;
      return Math.abs(pitch) < 0.0009
        ? "The camera stands at the face's own level."
        : `The face is seen from ${formatAngle(Math.abs(pitch))} ${pitch > 0 ? 'above' : 'below'} its own level.`;
    },
    together: () => 'A raised chin counts like a lowered camera.',
  },
} satisfies Record<string, RowWords>;
