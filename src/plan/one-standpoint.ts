/** One place for the sitting: which framings each camera takes from there without a step. */
import { settingAt } from './setting';
import { framed, onSensor } from './solve';
import type { OneStandpoint, PlanCamera, PlanRequest, Span, Verdict } from './types';

/** Standpoints are told in these steps, metres. */
const STEP = 0.05;

interface Place {
  readonly from: number;
  readonly to: number;
  readonly covers: readonly string[];
}

const covering = (verdicts: readonly Verdict[], from: number, to: number): string[] =>
  verdicts
    .filter(({ spans }) => spans.some((span) => span.from <= from && span.to >= to))
    .map(({ wanted }) => wanted);

/**
 * The places that cover most framings: what is covered changes only where an interval ends, so the ends and
 * the stretches between two neighbours are all there is to look at.
 */
function bestPlace(verdicts: readonly Verdict[]): Place | null {
  const ends = [...new Set(verdicts.flatMap(({ spans }) => spans.flatMap(edges)))].sort(
    (a, b) => a - b,
  );
  const places = ends.flatMap((end, i): Place[] => {
    const next = ends[i + 1];
    const here = { from: end, to: end, covers: covering(verdicts, end, end) };
    return next === undefined
      ? [here]
      : [here, { from: end, to: next, covers: covering(verdicts, end, next) }];
  });
  return places.reduce<Place | null>((best, each) => {
    const more = each.covers.length - (best?.covers.length ?? 0);
    const wider = best !== null && each.to / each.from > best.to / best.from;
    return more > 0 || (more === 0 && wider) ? each : best;
  }, null);
}

const edges = ({ from, to }: Span): number[] => [from, to];

function standpointIn({ from, to }: Place): number {
  const middle = Math.sqrt(from * to);
  const rounded = Math.round(middle / STEP) * STEP;
  return rounded >= from && rounded <= to ? rounded : middle;
}

function placeOf(
  request: PlanRequest,
  verdicts: readonly Verdict[],
  camera: PlanCamera,
): OneStandpoint[] {
  const own = verdicts.filter((verdict) => verdict.camera === camera.id);
  const place = bestPlace(own);
  if (place === null) return [];
  const standpoint = standpointIn(place);
  const lost = place.covers.map((id) => {
    const wanted = request.wanted.find((each) => each.id === id) as (typeof request.wanted)[number];
    const depth = Math.sqrt(Math.max(0, standpoint ** 2 - wanted.cameraHeight ** 2));
    const here = settingAt(onSensor(framed(request, wanted), camera), camera, depth);
    const best = own.find((verdict) => verdict.wanted === id)?.recommended;
    return [id, here.noseGain - (best?.noseGain ?? here.noseGain)] as const;
  });
  return [
    {
      camera: camera.id,
      standpoint,
      covers: place.covers,
      misses: request.wanted.map(({ id }) => id).filter((id) => !place.covers.includes(id)),
      lost: Object.fromEntries(lost),
    },
  ];
}

/** For each camera its best place, the one that covers most framings first, then the least lost. */
export function oneStandpoint(request: PlanRequest, verdicts: readonly Verdict[]): OneStandpoint[] {
  const total = ({ lost }: OneStandpoint) =>
    Object.values(lost).reduce((all, each) => all + each, 0);
  return request.cameras
    .flatMap((camera) => placeOf(request, verdicts, camera))
    .sort((a, b) => b.covers.length - a.covers.length || total(a) - total(b));
}
