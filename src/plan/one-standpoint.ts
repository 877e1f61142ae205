/** One place for the sitting: which framings each camera takes from there without a step. */
import { toStep } from './recommend';
import { noseGainFrom } from './setting';
import type { OneStandpoint, PlanRequest, Verdict, Wanted } from './types';

/** Standpoints are told in these steps, metres. */
const STEP = 0.05;

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The widest of the stretches that cover most framings. What is covered changes only where an interval ends,
 * so the ends (even places of the count) and what lies between two neighbours (odd ones) are all there is.
 */
function bestStretch(verdicts: readonly Verdict[]): Stretch | null {
  const all = verdicts.flatMap(({ spans }) => spans);
  const ends = [...new Set(all.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const placeOf = new Map(ends.map((end, i) => [end, 2 * i]));
  const changes = new Array<number>(2 * ends.length + 1).fill(0);
  const change = (at: number, by: number) => {
    changes[at] = (changes[at] as number) + by;
  };
  for (const { from, to } of all) {
    change(placeOf.get(from) as number, 1);
    change((placeOf.get(to) as number) + 1, -1);
  }
  let best: Stretch | null = null;
  let most = 0;
  let covered = 0;
  for (let i = 0; i < 2 * ends.length; i++) {
    covered += changes[i] as number;
    const from = ends[i >> 1] as number;
    const here = { from, to: i % 2 === 0 ? from : (ends[(i >> 1) + 1] ?? from) };
    const wider = best !== null && here.to / here.from > best.to / best.from;
    if (covered > most || (covered === most && wider)) [best, most] = [here, covered];
  }
  return best;
}

function standpointIn({ from, to }: Stretch): number {
  const middle = Math.sqrt(from * to);
  const rounded = toStep(middle, STEP);
  return rounded >= from && rounded <= to ? rounded : middle;
}

const gainAt = ({ people, cameraHeight }: Wanted, standpoint: number): number =>
  noseGainFrom(people, [
    0,
    cameraHeight,
    Math.sqrt(Math.max(0, standpoint ** 2 - cameraHeight ** 2)),
  ]);

/** `own` are the verdicts of one camera. */
function bestOf(
  camera: string,
  own: readonly Verdict[],
  wanted: ReadonlyMap<string, Wanted>,
): OneStandpoint[] {
  const stretch = bestStretch(own);
  if (stretch === null) return [];
  const standpoint = standpointIn(stretch);
  const covers: string[] = [];
  const misses: string[] = [];
  const lost: Record<string, number> = {};
  for (const { wanted: id, spans, recommended } of own) {
    const from = wanted.get(id);
    if (!from || !spans.some((span) => span.from <= stretch.from && span.to >= stretch.to)) {
      misses.push(id);
      continue;
    }
    covers.push(id);
    const here = gainAt(from, standpoint);
    lost[id] = here - (recommended?.noseGain ?? here);
  }
  return [{ camera, standpoint, covers, misses, lost }];
}

/** For each camera its best place, the one that covers most framings first, then the least lost. */
export function oneStandpoint(request: PlanRequest, verdicts: readonly Verdict[]): OneStandpoint[] {
  const total = ({ lost }: OneStandpoint) =>
    Object.values(lost).reduce((all, each) => all + each, 0);
  const wanted = new Map(request.wanted.map((each) => [each.id, each]));
  const byCamera = new Map<string, Verdict[]>(request.cameras.map(({ id }) => [id, []]));
  for (const verdict of verdicts) byCamera.get(verdict.camera)?.push(verdict);
  return [...byCamera]
    .flatMap(([camera, own]) => bestOf(camera, own, wanted))
    .map((place) => ({ place, total: total(place) }))
    .sort((a, b) => b.place.covers.length - a.place.covers.length || a.total - b.total)
    .map(({ place }) => place);
}
