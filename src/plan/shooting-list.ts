/** The wanted pictures in an order of shooting with the fewest moves. */
import { bestOrder } from './best-order';
import { settingAt } from './setting';
import { framed, onSensor } from './solve';
import { depthAt } from './standpoint';
import type { PlanRequest, PlanResult, Setting, Verdict } from './types';

export interface Shot {
  readonly wanted: string;
  readonly camera: string;
  readonly setting: Setting;
  /** What changes from the shot before; the first changes nothing. */
  readonly moves: readonly Move[];
}

export const MOVES = ['standpoint', 'body', 'lens', 'height'] as const;
export type Move = (typeof MOVES)[number];

export interface ShootingList {
  readonly shots: readonly Shot[];
  /** Framings that nothing of the kit takes here. */
  readonly left: readonly string[];
}

/** What a change costs against another: by eye. To carry a stand is more than to change a lens. */
const COST: Readonly<Record<Move, number>> = { standpoint: 6, body: 3, lens: 2, height: 1 };

/** Standpoints and heights nearer together than this are one, metres. */
const SAME = 0.005;

type Picked = Omit<Shot, 'moves'>;

/** The setting of a pair at a standpoint that is inside one of its intervals. */
function settingFrom(
  request: PlanRequest,
  { wanted: id, camera: cameraId }: Pick<Verdict, 'wanted' | 'camera'>,
  standpoint: number,
): Setting | null {
  const wanted = request.wanted.find((each) => each.id === id);
  const camera = request.cameras.find((each) => each.id === cameraId);
  if (!wanted || !camera) return null;
  const depth = depthAt(standpoint, wanted.cameraHeight);
  return settingAt(onSensor(framed(request, wanted), camera), camera, depth);
}

const ratio = ({ spans }: Verdict): number =>
  Math.max(0, ...spans.map(({ from, to }) => to / from));

/**
 * How each framing is taken: from the one standpoint where that covers it, else by the camera that leaves
 * the photographer most choice.
 */
function picked(request: PlanRequest, { verdicts, oneStandpoint }: PlanResult): Picked[] {
  const [shared] = oneStandpoint;
  return request.wanted.flatMap(({ id }): Picked[] => {
    const works = verdicts.filter(({ wanted, spans }) => wanted === id && spans.length > 0);
    const [best] = [...works].sort((a, b) => ratio(b) - ratio(a));
    const here = works.find(({ camera }) => camera === shared?.camera);
    if (shared && here && shared.covers.includes(id)) {
      const setting = settingFrom(request, here, shared.standpoint);
      if (setting) return [{ wanted: id, camera: here.camera, setting }];
    }
    return best?.recommended
      ? [{ wanted: id, camera: best.camera, setting: best.recommended }]
      : [];
  });
}

function movesBetween(a: Picked, b: Picked, request: PlanRequest): Move[] {
  const [from, to] = [a, b].map(({ camera }) => request.cameras.find(({ id }) => id === camera));
  const changed: Record<Move, boolean> = {
    standpoint: Math.abs(a.setting.standpoint - b.setting.standpoint) > SAME,
    body: from?.bodyName !== to?.bodyName || from?.format.id !== to?.format.id,
    lens: from?.lensId !== to?.lensId,
    height: Math.abs(a.setting.lensHeight - b.setting.lensHeight) > SAME,
  };
  return MOVES.filter((move) => changed[move]);
}

export function shootingList(request: PlanRequest, result: PlanResult): ShootingList {
  const shots = picked(request, result);
  const cost = shots.map((a) =>
    shots.map((b) => movesBetween(a, b, request).reduce((sum, move) => sum + COST[move], 0)),
  );
  const ordered = bestOrder(cost).map((i) => shots[i] as Picked);
  const taken = new Set(shots.map(({ wanted }) => wanted));
  return {
    shots: ordered.map((shot, i) => {
      const before = ordered[i - 1];
      return { ...shot, moves: before ? movesBetween(before, shot, request) : [] };
    }),
    left: request.wanted.map(({ id }) => id).filter((id) => !taken.has(id)),
  };
}
