/** Every framing with every camera: from where it works, what is set there, or what stands in the way. */
import { conflictOf } from './conflict';
import type { Interval } from './intervals';
import { recommendedDepth } from './recommend';
import { markAt, settingAt } from './setting';
import {
  allowed,
  framed,
  newShared,
  type OnSensor,
  onSensor,
  type Shared,
  sharedKey,
  solvePieces,
  spansOf,
} from './solve';
import type { PlanCamera, PlanRequest, Span, Verdict, Wanted } from './types';

/** One framing with one camera. */
export function verdictFor(of: OnSensor, camera: PlanCamera): Verdict {
  const { id: wanted, cameraHeight } = of.wanted;
  const pieces = solvePieces(of, camera);
  const { reach, works } = allowed(pieces);
  const depth = recommendedDepth(works, cameraHeight);
  return {
    wanted,
    camera: camera.id,
    spans: spansOf(works, cameraHeight).map((span, i): Span => {
      const { from, to } = works[i] as Interval;
      return { ...span, marks: [markAt(of, camera, from), markAt(of, camera, to)] };
    }),
    reach: spansOf(reach, cameraHeight),
    recommended: depth === null ? null : settingAt(of, camera, depth),
    conflict: works.length > 0 ? [] : conflictOf(pieces),
  };
}

/** One pair by itself, as remedies ask for it. */
export const pairVerdict = (
  request: Omit<PlanRequest, 'cameras' | 'wanted'>,
  wanted: Wanted,
  camera: PlanCamera,
): Verdict => verdictFor(onSensor(framed(request, wanted), camera), camera);

/** All pairs; what hangs on the framing or the sensor alone is solved once. */
export function verdictsFor(request: PlanRequest): Verdict[] {
  const verdicts: Verdict[] = [];
  const shared = new Map<string, Shared>();
  const sharedOf = (key: string | null): Shared => {
    const known = key === null ? undefined : shared.get(key);
    if (known) return known;
    const fresh = newShared();
    if (key !== null) shared.set(key, fresh);
    return fresh;
  };
  for (const wanted of request.wanted) {
    const of = framed(request, wanted);
    const sensors = new Map<string, OnSensor>();
    for (const camera of request.cameras) {
      const { id } = camera.format;
      const known = sensors.get(id) ?? onSensor(of, camera, sharedOf(sharedKey(of, camera)));
      sensors.set(id, known);
      verdicts.push(verdictFor(known, camera));
    }
  }
  return verdicts;
}
