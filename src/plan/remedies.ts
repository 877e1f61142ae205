/** The smallest single changes that make a failing pair work, each computed again. */
import { type Asking, backdropWide, roomOf, widestBackdrop, withAsked, withRoom } from './changes';
import { F_NUMBERS } from './setting';
import { firstOf, smallest, worksAt } from './smallest';
import type { Asked, Change, PlanRequest, Remedy, Verdict } from './types';
import { CENTIMETRE, ways } from './ways';

/** Ranks of changes that have no size. By eye: things are moved before demands are given up. */
const EFFORT = { obstacle: 0.4, demand: 0.7, camera: 1 };

/** A wider or higher backdrop, as far as walls and ceiling let it hang. */
function backdropRemedies(asking: Asking): (Remedy | null)[] {
  const room = roomOf(asking);
  const { backdrop, floor, ceiling } = room;
  const width = backdrop.left - backdrop.right;
  const widest = widestBackdrop(room);
  const wide = (value: number) => withRoom(asking, backdropWide(room, value));
  const change = (value: number) => ({ change: 'backdrop-width', to: value }) as const;
  const rolls = (asking.request.backdropWidths ?? []).filter(
    (each) => each > width && each <= widest,
  );
  const rolled = firstOf(
    [...rolls].sort((a, b) => a - b),
    wide,
    change,
    (value) => (value - width) / width,
  );
  const height = backdrop.top - floor;
  return [
    ...(rolled.length > 0 || widest <= width
      ? rolled
      : [
          smallest({
            now: width,
            to: widest,
            step: CENTIMETRE,
            with: wide,
            change,
            scale: width,
            moreHelps: true,
          }),
        ]),
    backdrop.top >= ceiling
      ? null
      : smallest({
          now: height,
          to: ceiling - floor,
          step: CENTIMETRE,
          with: (value) =>
            withRoom(asking, { ...room, backdrop: { ...backdrop, top: value + floor } }),
          change: (value) => ({ change: 'backdrop-height', to: value }),
          scale: height,
          moreHelps: true,
        }),
  ];
}

/** Another aperture allowed, by the marks on the ring. */
function apertureRemedies(asking: Asking): Remedy[] {
  const [widest, smallestAsked] = asking.request.asked.fNumber;
  const stops = (value: number, now: number) => Math.abs(2 * Math.log2(value / now)) / 6;
  const smaller = F_NUMBERS.filter((n) => n > smallestAsked && n <= asking.camera.lens.smallest);
  const wider = F_NUMBERS.filter((n) => n < widest).reverse();
  return [
    ...firstOf(
      smaller,
      (to) => withAsked(asking, { fNumber: [widest, to] }),
      (to) => ({ change: 'f-number', to, atLeast: true }),
      (to) => stops(to, smallestAsked),
    ),
    ...firstOf(
      wider,
      (to) => withAsked(asking, { fNumber: [to, smallestAsked] }),
      (to) => ({ change: 'f-number', to, atLeast: false }),
      (to) => stops(to, widest),
    ),
  ];
}

const DEMANDS = [
  'noseGain',
  'rowDifference',
  'stretch',
  'personal',
  'clearance',
  'sharp',
  'softness',
  'backdropMargin',
] as const satisfies readonly (keyof Asked)[];

/** A thing carried away, a demand given up, another camera of the kit. */
function otherRemedies(asking: Asking, cameras: PlanRequest['cameras']): Remedy[] {
  const room = roomOf(asking);
  const tried: { asking: Asking; change: Change; effort: number }[] = [
    ...room.obstacles.map(({ id }) => ({
      asking: withRoom(asking, {
        ...room,
        obstacles: room.obstacles.filter((each) => each.id !== id),
      }),
      change: { change: 'move-obstacle', obstacle: id } as const,
      effort: EFFORT.obstacle,
    })),
    ...DEMANDS.filter((demand) => asking.request.asked[demand] !== null).map((demand) => ({
      asking: withAsked(asking, { [demand]: null }),
      change: { change: 'drop-demand', demand } as const,
      effort: EFFORT.demand,
    })),
    ...cameras
      .filter(({ id }) => id !== asking.camera.id)
      .map((camera) => ({
        asking: { ...asking, camera },
        change: { change: 'other-camera', camera: camera.id } as const,
        effort: EFFORT.camera,
      })),
  ];
  return tried.flatMap(({ asking: with_, change, effort }) => {
    const span = worksAt(with_);
    return span ? [{ change, span, effort }] : [];
  });
}

/** What would make a failing pair work, the least effort first. Empty for a pair that works. */
export function remediesFor(request: PlanRequest, verdict: Verdict): Remedy[] {
  const wanted = request.wanted.find(({ id }) => id === verdict.wanted);
  const camera = request.cameras.find(({ id }) => id === verdict.camera);
  if (!wanted || !camera || verdict.spans.length > 0) return [];
  const asking: Asking = { request, wanted, camera };
  const found = [
    ...ways(asking).map(smallest),
    ...backdropRemedies(asking),
    ...apertureRemedies(asking),
    ...otherRemedies(asking, request.cameras),
  ];
  return found.flatMap((each) => each ?? []).sort((a, b) => a.effort - b.effort);
}
