/** Two people in one picture: where the frame is placed on them, and whether it holds both. */
import { pictureShare, project } from '../optics/camera';
import type { Camera, Vec3 } from '../optics/types';
import type { LandmarkName, Sitter } from '../sitter/types';
import { type Cast, type Placed, placeCompany } from './cast';
import type { Limit } from './limit';
import type { Company, Crop, Picture, PlanWanted, Session } from './types';

/** Who of the session is in a wanted picture; of a group the first person stands for all. */
export function wantedCompany(
  { people }: Pick<Session, 'people'>,
  { of }: Pick<PlanWanted, 'of'>,
): Company {
  if (of === 'both' && people.length > 1) return ['1', '2'];
  return of === '2' && people.length > 1 ? ['2'] : ['1'];
}

/** The second person of a picture, when there is one and it is built. */
export const companionOf = (
  { beside }: Pick<Session, 'beside'>,
  { of }: Pick<Picture, 'of'>,
  cast: Cast,
): Placed | null => placeCompany(cast, of, beside)[1] ?? null;

/**
 * Where the first one's eyes sit across the frame, so that the middle between both pairs of eyes sits
 * where the crop has the eyes. Share of the frame's width from the left.
 */
export function eyesAcrossFor(
  camera: Camera,
  { at }: Placed,
  { eyesAcross }: Pick<Crop, 'eyesAcross'>,
): number {
  const other = project(camera, at);
  return other.ok ? eyesAcross - other.value.u / 2 / camera.sensor.width : eyesAcross;
}

/** The head's outermost landmarks. */
const HEAD = [
  'vertex',
  'menton',
  'euryon_left',
  'euryon_right',
  'postaurale_left',
  'postaurale_right',
] as const satisfies readonly LandmarkName[];

const sum = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

/** Passed when the frame cuts a head; tells the frame height that would hold both. */
export function companyLimits(
  camera: Camera,
  first: Sitter,
  second: Placed,
  frameHeight: number,
): Limit[] {
  const points = [
    ...HEAD.map((name) => first.landmarks[name]),
    ...HEAD.map((name) => sum(second.sitter.landmarks[name], second.at)),
  ];
  const eyes = [pictureShare(camera, [0, 0, 0]), pictureShare(camera, second.at)];
  const shares = points.map((point) => pictureShare(camera, point));
  const [own, other] = eyes;
  if (!own?.ok || !other?.ok)
    return [
      {
        reason: 'outside-frame',
        limit: frameHeight,
        asked: Number.POSITIVE_INFINITY,
        lens: null,
        remedies: [],
      },
    ];
  // The frame grows about the places it is held by: the middle between the eyes, and the first one's height.
  const anchor = { across: (own.value.across + other.value.across) / 2, down: own.value.down };
  const needed = shares.map((share) =>
    share.ok
      ? Math.max(growth(share.value.across, anchor.across), growth(share.value.down, anchor.down))
      : 1,
  );
  const most = Math.max(...needed);
  if (most <= 1 || !Number.isFinite(most)) return [];
  return [
    {
      reason: 'outside-frame',
      limit: frameHeight,
      asked: frameHeight * most,
      lens: null,
      remedies: [{ change: 'frame-height', value: frameHeight * most, atLeast: true }],
    },
  ];
}

/** By how much a frame that grows about `anchor` must grow to reach a point; shares of the frame. */
function growth(point: number, anchor: number): number {
  const reach = point < anchor ? anchor : 1 - anchor;
  return reach > 0 ? Math.abs(point - anchor) / reach : Number.POSITIVE_INFINITY;
}
