/** One place for the sitting: which framings each camera takes from there without a step. */
import { type NoseAndEars, noseGainAt, nosesAndEars } from './nose-gain';
import { toStep } from './recommend';
import { depthAt } from './standpoint';
import type { OneStandpoint, PlanRequest, Verdict } from './types';

/** Standpoints are told in steps of 5 cm, so many to the metre. */
const STEPS = 20;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The widest of the stretches that cover most framings. What is covered changes only where an interval ends, so
 * the ends and what lies between two neighbours are all there is: of the intervals, those count that began and
 * have not ended.
 */
function bestStretch(verdicts: readonly Verdict[]): Stretch | null {
  let count = 0;
  for (const { spans } of verdicts) count += spans.length;
  const begins = new Float64Array(count);
  const ends = new Float64Array(count);
  let filled = 0;
  for (const { spans } of verdicts)
    for (const span of spans) {
      begins[filled] = span.from;
      ends[filled++] = span.to;
    }
  begins.sort();
  ends.sort();
  let [from, to, most] = [0, 0, 0];
  let [begun, ended] = [0, 0];
  while (ended < count) {
    const end = ends[ended] as number;
    const at = begun < count ? Math.min(begins[begun] as number, end) : end;
    while (begun < count && begins[begun] === at) begun++;
    const here = begun - ended;
    if (here > most) [from, to, most] = [at, at, here];
    while (ended < count && ends[ended] === at) ended++;
    if (ended === count) break;
    const nextEnd = ends[ended] as number;
    const next = begun < count ? Math.min(begins[begun] as number, nextEnd) : nextEnd;
    const on = begun - ended;
    if (on > most || (on === most && next / at > to / from)) [from, to, most] = [at, next, on];
  }
  return most > 0 ? { from, to } : null;
}

function standpointIn({ from, to }: Stretch): number {
  const middle = Math.sqrt(from * to);
  const rounded = toStep(middle, STEPS);
  return rounded >= from && rounded <= to ? rounded : middle;
}

/** Who is in a framing, as far as one place for the sitting hangs on it. */
interface Face {
  readonly noses: readonly NoseAndEars[];
  readonly cameraHeight: number;
}

/** `own` are the verdicts of one camera. */
function bestOf(
  camera: string,
  own: readonly Verdict[],
  faces: ReadonlyMap<string, Face>,
): OneStandpoint[] {
  const stretch = bestStretch(own);
  if (stretch === null) return [];
  const standpoint = standpointIn(stretch);
  const covers: string[] = [];
  const misses: string[] = [];
  const lost: Record<string, number> = {};
  for (const { wanted: id, spans, recommended } of own) {
    const face = faces.get(id);
    if (!face || !spans.some(({ from, to }) => from <= stretch.from && to >= stretch.to)) {
      misses.push(id);
      continue;
    }
    covers.push(id);
    const here = noseGainAt(face.noses, depthAt(standpoint, face.cameraHeight));
    lost[id] = here - (recommended?.noseGain ?? here);
  }
  return [{ camera, standpoint, covers, misses, lost }];
}

/** For each camera its best place, the one that covers most framings first, then the least lost. */
export function oneStandpoint(request: PlanRequest, verdicts: readonly Verdict[]): OneStandpoint[] {
  const total = ({ lost }: OneStandpoint) =>
    Object.values(lost).reduce((all, each) => all + each, 0);
  const faces = new Map(
    request.wanted.map((each): [string, Face] => [
      each.id,
      { noses: nosesAndEars(each), cameraHeight: each.cameraHeight },
    ]),
  );
  const byCamera = new Map<string, Verdict[]>(request.cameras.map(({ id }) => [id, []]));
  for (const verdict of verdicts) byCamera.get(verdict.camera)?.push(verdict);
  return [...byCamera]
    .flatMap(([camera, own]) => bestOf(camera, own, faces))
    .map((place) => ({ place, total: total(place) }))
    .sort((a, b) => b.place.covers.length - a.place.covers.length || a.total - b.total)
    .map(({ place }) => place);
}
