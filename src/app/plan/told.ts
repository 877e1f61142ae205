/** The plan's answers in sentences. */
import type {
  ConditionName,
  PlanCamera,
  PlanRequest,
  Remedy,
  Setting,
  Span,
  Verdict,
} from '../../plan/types';
import { formatFNumber, formatFocal, formatLength, formatPercent } from '../../readings/format';
import type { Session } from '../../session/types';
import { type ConditionFigures, plan as said } from '../words/plan.en';

export interface Told {
  /** Standpoints that work, or "no". */
  readonly works: string;
  readonly why: string;
}

export type Show = (metres: number) => string;

export const showIn =
  (units: Session['units']): Show =>
  (metres) =>
    formatLength(metres, units, 'distance');

/** "1.47 m to 2.95 m", or the one standpoint that there is. */
export function spanWords({ from, to }: Span, show: Show): string {
  const [first, last] = [show(from), show(to)];
  return first === last ? first : said.range(first, last);
}

/** The same with the focal lengths along it, where they change. */
function withMarks(span: Span, show: Show): string {
  const words = spanWords(span, show);
  const [first, last] = (span.marks ?? []).map(said.mark);
  return first === undefined || last === undefined || first === last
    ? words
    : said.withMarks(words, first, last);
}

export function figuresFor(request: PlanRequest, verdict: Verdict, show: Show): ConditionFigures {
  const camera = request.cameras.find(({ id }) => id === verdict.camera);
  const wanted = request.wanted.find(({ id }) => id === verdict.wanted);
  const names = [...request.room.obstacles, ...(wanted?.people ?? [])];
  return {
    show,
    focal: camera?.lens.focal ?? [0, 0],
    asked: request.asked,
    nameOf: (of) => names.find(({ id }) => id === of)?.name ?? said.something,
  };
}

const OF_THE_LENS: readonly ConditionName[] = ['lens-shortest', 'lens-longest', 'nearest-focus'];

/** What stands in the way: where the lens reaches the framing at all, what fails there. */
function failure({ conflict, reach }: Verdict, figures: ConditionFigures, show: Show): string {
  const others = conflict.filter(({ name }) => !OF_THE_LENS.includes(name));
  const [nearest] = reach;
  const farthest = reach.at(-1);
  if (others.length === 0 || !nearest || !farthest)
    return said.fails(conflict.map((each) => said.because(each, figures)));
  return said.failsThere(
    spanWords({ ...nearest, to: farthest.to }, show),
    others.map((each) => said.because(each, figures)),
  );
}

/** One framing with one camera, in a row of the list. */
export function verdictWords(verdict: Verdict, request: PlanRequest, show: Show): Told {
  const figures = figuresFor(request, verdict, show);
  const { spans, recommended } = verdict;
  const [nearest] = spans;
  const farthest = spans.at(-1);
  if (!nearest || !farthest) {
    return { works: said.no, why: failure(verdict, figures, show) };
  }
  const works = spans.map((span) => withMarks(span, show)).join('; ');
  if (spans.length === 1 && show(nearest.from) === show(nearest.to)) {
    return {
      works,
      why: recommended
        ? `${said.onePlace} ${said.noseGains(formatPercent(recommended.noseGain))}`
        : said.onePlace,
    };
  }
  const gaps = spans.slice(1).map((span, i) => {
    const before = spans[i] as Span;
    const reasons = [before.toBy, span.fromBy].map((each) => said.because(each, figures));
    return said.between(show(before.to), show(span.from), [...new Set(reasons)]);
  });
  return {
    works,
    why: [
      said.nearer(said.because(nearest.fromBy, figures)),
      ...gaps,
      said.farther(said.because(farthest.toBy, figures)),
    ].join(' '),
  };
}

/** A lens, and its body where the kit has several. */
const cameraName = (
  { lensName, bodyName }: PlanCamera,
  { cameras }: Pick<PlanRequest, 'cameras'>,
): string =>
  cameras.every((each) => each.bodyName === bodyName) ? lensName : said.onBody(lensName, bodyName);

/** A change that works, with the standpoints it opens. */
export function remedyWords({ change, span }: Remedy, request: PlanRequest, show: Show): string {
  const names = [
    ...request.cameras.map((camera) => ({ id: camera.id, name: cameraName(camera, request) })),
    ...request.room.obstacles,
  ];
  const nameOf = (of: string) => names.find(({ id }) => id === of)?.name ?? said.something;
  return said.remedy(said.wouldWork(change, show, nameOf), spanWords(span, show));
}

/** What is to be set, and in two sentences why. */
export function settingWords(
  setting: Setting,
  verdict: Verdict,
  request: PlanRequest,
  show: Show,
): { readonly set: string; readonly why: string } {
  const camera = request.cameras.find(({ id }) => id === verdict.camera);
  const figures = figuresFor(request, verdict, show);
  return {
    set: said.setting({
      lens: camera?.lensName ?? '',
      mark: formatFocal(setting.mark),
      isZoom: camera !== undefined && camera.lens.focal[0] !== camera.lens.focal[1],
      aperture: formatFNumber(setting.fNumber),
      height: show(setting.lensHeight),
    }),
    why: said.reasons({
      gain: formatPercent(setting.noseGain),
      asked: figures.asked.noseGain === null ? null : formatPercent(figures.asked.noseGain),
      used: show(setting.backdropUsed.width),
      toSpare: show(Math.max(0, setting.toWall - request.room.behindCamera)),
    }),
  };
}
