/** Every framing with every camera: from where it works, what is set there, or what stands in the way. */
import { conflictOf } from './conflict';
import { markAt } from './lens-conditions';
import { recommendedDepth } from './recommend';
import { onRing, settingAt } from './setting';
import {
  type Framed,
  framed,
  newShared,
  type OnSensor,
  onSensor,
  type Shared,
  type SolvedPair,
  type SolvedPiece,
  sharedKey,
  solvePair,
} from './solve';
import { spanOf } from './standpoint';
import type { PlanCamera, PlanRequest, Span, Verdict, Wanted } from './types';

/** The focal length to set on the lens with the eye plane at a depth. */
function setAt(pieces: readonly SolvedPiece[], lens: PlanCamera['lens'], depth: number): number {
  for (const { scene, lens: solved } of pieces)
    if (depth >= scene.within.from && depth <= scene.within.to)
      return onRing(lens, markAt(solved.marks, depth));
  return Number.NaN;
}

/** The standpoints that work, with the focal lengths at their ends. */
function spansOf(
  { pieces, works }: SolvedPair,
  { lens }: PlanCamera,
  { cameraHeight }: Wanted,
): Span[] {
  return works.map((each): Span => {
    const { from, to, fromBy, toBy } = spanOf(each, cameraHeight);
    const marks = [setAt(pieces, lens, each.from), setAt(pieces, lens, each.to)] as const;
    return { from, to, fromBy, toBy, marks };
  });
}

/** One framing with one camera. */
export function verdictFor(here: OnSensor, camera: PlanCamera): Verdict {
  const { id: wanted, cameraHeight } = here.of.wanted;
  const { id } = camera;
  const pair = solvePair(here, camera);
  const { pieces, reach, works } = pair;
  const depth = recommendedDepth(works, cameraHeight);
  if (depth === null)
    return {
      wanted,
      camera: id,
      spans: [],
      reach,
      recommended: null,
      conflict: conflictOf(pieces),
    };
  const spans = spansOf(pair, camera, here.of.wanted);
  const recommended = settingAt(here, camera, depth);
  return { wanted, camera: id, spans, reach, recommended, conflict: [] };
}

/** Where one pair by itself works: what remedies ask some hundred times, who need no reasons and no setting. */
export const pairSpans = (
  request: Omit<PlanRequest, 'cameras' | 'wanted'>,
  wanted: Wanted,
  camera: PlanCamera,
): Span[] => spansOf(solvePair(onSensor(framed(request, wanted), camera), camera), camera, wanted);

/** All pairs; what hangs on the framing or the sensor alone is solved once. */
export function verdictsFor(request: PlanRequest): Verdict[] {
  const shared = new Map<string, Shared>();
  const placed = (of: Framed, camera: PlanCamera): OnSensor => {
    const key = sharedKey(of, camera);
    const common = (key === null ? undefined : shared.get(key)) ?? newShared();
    if (key !== null) shared.set(key, common);
    return onSensor(of, camera, common);
  };
  const verdicts: Verdict[] = [];
  for (const wanted of request.wanted) {
    const of = framed(request, wanted);
    const sensors = new Map<string, OnSensor>();
    for (const camera of request.cameras) {
      const { id } = camera.format;
      const here = sensors.get(id) ?? placed(of, camera);
      sensors.set(id, here);
      verdicts.push(verdictFor(here, camera));
    }
  }
  return verdicts;
}
