/**
 * The plan's oracle: whether one depth is allowed, asked point by point of the optics and of plain geometry. It
 * shares no formula with the solver.
 */
import { backdropExtent } from '../../src/optics/background';
import { cameraAt } from '../../src/optics/camera';
import { blurDisc, blurInPicture, focusForTwoPlanes } from '../../src/optics/focus';
import { focalForFrame, sensorSides } from '../../src/optics/framing';
import { depthBefore, gain } from '../../src/optics/perspective';
import {
  lensMarkDistance,
  lensRefusal,
  markedFocalFor,
  widestApertureAt,
} from '../../src/optics/real-lens';
import type { Result, Vec3 } from '../../src/optics/types';
import { metres, radians } from '../../src/optics/units';
import type { PlanCamera, PlanObstacle, PlanPerson, PlanRequest, Wanted } from '../../src/plan';

const must = <T>(result: Result<T>): T => {
  if (!result.ok) throw new RangeError(result.reason);
  return result.value;
};

type Outline = PlanObstacle['outline'];

function inside(outline: Outline, [x, z]: readonly [number, number]): boolean {
  const sides = outline.map(([x1, z1], i) => {
    const [x2, z2] = outline[(i + 1) % outline.length] as readonly [number, number];
    return Math.sign((x2 - x1) * (z - z1) - (z2 - z1) * (x - x1));
  });
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

const STEPS = 120;

/**
 * Points of an outline's boundary, and of where the backdrop cuts it, near enough together for a test: the field
 * widens and deepens away from the lens, so that what shows of a thing shows up to one of these.
 */
function pointsOf(outline: Outline, backdrop: number): (readonly [number, number])[] {
  const boundary = outline.flatMap(([x1, z1], i) => {
    const [x2, z2] = outline[(i + 1) % outline.length] as readonly [number, number];
    return Array.from({ length: STEPS }, (_, j): readonly [number, number] => {
      const t = j / STEPS;
      return [x1 + t * (x2 - x1), z1 + t * (z2 - z1)];
    });
  });
  const across = boundary.map(([x]) => x);
  const [least, most] = [Math.min(...across), Math.max(...across)];
  const cut = Array.from(
    { length: 2 * STEPS },
    (_, j) => [least + ((most - least) * j) / (2 * STEPS), backdrop] as const,
  );
  return [...boundary, ...cut.filter((point) => inside(outline, point))];
}

/** The outline grown about its middle. */
function grown(outline: Outline, times: number): Outline {
  const middle = [0, 1].map(
    (i) => outline.reduce((all, point) => all + (point[i] as number), 0) / outline.length,
  ) as [number, number];
  return outline.map(([x, z]) => [
    middle[0] + times * (x - middle[0]),
    middle[1] + times * (z - middle[1]),
  ]);
}

/** Height of the frame at the eye plane: fixed, or the least that everybody's outermost parts fit in. */
export function frameHeight(wanted: Wanted, aspect: number, s: number): number {
  if (wanted.frameHeight !== null) return wanted.frameHeight;
  const { people, margin, eyesAcross, eyesAt, cameraHeight, downTo = [] } = wanted;
  const up = (p: Vec3) => cameraHeight + ((p[1] - cameraHeight) * s) / (s - p[2]);
  return Math.max(
    ...downTo.map((p) => -up(p) / (1 - eyesAt)),
    ...people.flatMap(({ eyes, halfBreadth, crown, chin }) => {
      const wide = s / (s - eyes[2]);
      return [
        ((eyes[0] + halfBreadth) * wide) / (1 - eyesAcross - margin) / aspect,
        ((halfBreadth - eyes[0]) * wide) / (eyesAcross - margin) / aspect,
        up(crown) / eyesAt,
        -up(chin) / (1 - eyesAt),
      ];
    }),
  );
}

const from = (p: Vec3, q: Vec3): Vec3 => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];

/** What holds at a depth; `null` where grown and shrunk obstacles disagree: too close to call. */
export function holdsAt(
  request: PlanRequest,
  wanted: Wanted,
  camera: PlanCamera,
  s: number,
): boolean | null {
  const { asked } = request;
  const room = wanted.room ?? request.room;
  const { lens, format } = camera;
  const { people, cameraHeight: h } = wanted;
  const sensor = sensorSides(format, wanted.orientation);
  const place: Vec3 = [0, h, s];
  const d = Math.hypot(s, h);
  if (people.some(({ noseTip, pupils }) => [noseTip, ...pupils].some(([, , z]) => z >= s)))
    return false;
  const H = metres(frameHeight(wanted, sensor.width / sensor.height, s));
  if (!(H > 0)) return false;
  const eyes = metres(s);
  const focal = must(focalForFrame(H, eyes, sensor.height));
  const tape = must(lensMarkDistance(lens, focal, eyes));
  const mark = must(markedFocalFor(lens, focal, tape));
  // Any aperture that the lens has tells whether mark and focus are within its limits.
  const refused = lensRefusal(lens, mark, tape, lens.smallest);
  if (refused) return false;

  // Apertures: from the widest allowed to the smallest, sharp where asked, and soft enough.
  const rows = asked.sharp === 'rows';
  const depths = people.flatMap(({ pupils, noseTip, ears }) => [
    ...pupils.map(([, , z]) => s - z),
    ...(asked.sharp === 'nose-to-ears' ? [noseTip, ...ears].map(([, , z]) => s - z) : []),
  ]);
  const focus = rows
    ? must(focusForTwoPlanes(metres(Math.min(...depths)), metres(Math.max(...depths))))
    : eyes;
  const open = { focal, fNumber: 1, focus };
  const sharpFrom =
    asked.sharp === null
      ? 0
      : Math.max(...depths.map((x) => must(blurDisc(open, metres(x))) / format.circleOfConfusion));
  const softTo =
    asked.softness === null
      ? Number.POSITIVE_INFINITY
      : must(blurInPicture(open, metres(s + room.backdrop.behind), sensor.height)) / asked.softness;
  const least = Math.max(asked.fNumber[0], must(widestApertureAt(lens, mark)), sharpFrom);
  if (least > Math.min(asked.fNumber[1], lens.smallest, softTo)) return false;

  for (const person of people) if (!faceHolds(request, person, place, s)) return false;
  const far = people.map(({ eyes: [, , z] }) => s - z);
  if (asked.rowDifference !== null && Math.max(...far) / Math.min(...far) - 1 > asked.rowDifference)
    return false;
  if (h < room.floor + 0.1 || h > room.ceiling - 0.1 || Math.abs(h) > 0.9 * d) return false;

  const front: Vec3 = [0, h, tape - lens.length];
  for (const { noseTip } of people) {
    if (front[2] < noseTip[2]) return false;
    if (Math.hypot(...from(front, noseTip)) < (asked.clearance ?? 0)) return false;
  }
  for (const shoulder of [-0.3, 0.3])
    if (!inside(room.walls, [shoulder, tape + room.behindCamera])) return false;

  const drawn = must(
    cameraAt({
      standpoint: metres(d),
      height: metres(h),
      tilt: radians(0),
      focal,
      sensor,
      eyesAt: wanted.eyesAt,
      eyesAcross: wanted.eyesAcross,
    }),
  );
  const extent = must(backdropExtent(drawn, metres(room.backdrop.behind)));
  if (extent.top > room.ceiling) return false;
  const margin = asked.backdropMargin;
  if (
    margin !== null &&
    (extent.top > room.backdrop.top ||
      extent.right + margin > room.backdrop.left ||
      extent.left - margin < room.backdrop.right)
  )
    return false;

  let unsure = false;
  for (const obstacle of room.obstacles) {
    const body = [tape - lens.length, tape + room.behindCamera] as const;
    if (overlaps(obstacle.outline, body)) return false;
    if (obstacle.kind === 'door') continue;
    const seen = (outline: Outline) =>
      pointsOf(outline, -room.backdrop.behind).some(([x, z]) => {
        if (z >= s || z < -room.backdrop.behind) return false;
        const forward = s - z;
        const { left, right, bottom } = drawn.frustum;
        const top = room.floor + obstacle.height;
        return x > left * forward && x < right * forward && top > h + bottom * forward;
      });
    const [small, large] = [
      seen(grown(obstacle.outline, 0.97)),
      seen(grown(obstacle.outline, 1.03)),
    ];
    if (small) return false;
    if (large) unsure = true;
  }
  return unsure ? null : true;
}

/** Does the photographer's width between two depths run over an outline? */
function overlaps(outline: Outline, [near, far]: readonly [number, number]): boolean {
  const body: Outline = [
    [-0.3, near],
    [0.3, near],
    [0.3, far],
    [-0.3, far],
  ];
  // Two convex outlines are apart where a side of one has the other wholly beyond it.
  const apart = (a: Outline, b: Outline) =>
    a.some(([x1, z1], i) => {
      const [x2, z2] = a[(i + 1) % a.length] as readonly [number, number];
      const side = ([x, z]: readonly [number, number]) =>
        (x2 - x1) * (z - z1) - (z2 - z1) * (x - x1);
      const own = Math.sign(a.reduce((all, point) => all + side(point), 0));
      return b.every((point) => side(point) * own <= 0);
    });
  return !apart(outline, body) && !apart(body, outline);
}

function faceHolds(request: PlanRequest, person: PlanPerson, place: Vec3, s: number): boolean {
  const { asked } = request;
  const position = from(place, person.eyes);
  const distance = Math.hypot(...position);
  if (asked.personal !== null && distance < asked.personal) return false;
  if (asked.stretch !== null) {
    const cosine = (s - person.eyes[2]) / distance;
    if (1 / cosine - 1 > asked.stretch) return false;
  }
  if (asked.noseGain === null) return true;
  const before = (p: Vec3) => must(depthBefore(from(p, person.eyes), position));
  return person.ears.every((ear) => {
    const gained = gain(metres(distance), before(person.noseTip), before(ear));
    return gained.ok && gained.value <= (asked.noseGain as number);
  });
}
