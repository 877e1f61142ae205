/** What a plan found -> a JSON object. */
import { shootingList } from '../plan/shooting-list';
import type {
  Change,
  Condition,
  OneStandpoint,
  PlanRequest,
  PlanResult,
  Remedy,
  Setting,
  Span,
  Verdict,
} from '../plan/types';
import type { Json } from './output';

/** A plan with what would make each failing pair work, in the order of the verdicts. */
export interface Planned extends PlanResult {
  readonly request: PlanRequest;
  readonly remedies: readonly (readonly Remedy[])[];
  /** By how much the backdrop had to come forward to hang between the walls, metres. */
  readonly backdropForward: number;
}

/** What has no limit is null. */
const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

const conditionJson = ({ name, of }: Condition): Json =>
  of === undefined ? { name } : { name, of };

const spanJson = ({ from, to, fromBy, toBy, marks }: Span): Json => ({
  from_m: from,
  to_m: finite(to),
  ...(marks && { marks_mm: marks.map((mark) => mark * 1000) }),
  from_by: conditionJson(fromBy),
  to_by: conditionJson(toBy),
});

const settingJson = (s: Setting): Json => ({
  standpoint_m: s.standpoint,
  depth_m: s.depth,
  frame_m: { height: s.frameHeight, width: s.frameWidth },
  focal_length_mm: s.focal * 1000,
  focal_length_mark_mm: s.mark * 1000,
  f_number: s.fNumber,
  focus_m: s.focus,
  sensor_mark_distance_m: s.tape,
  lens_height_m: s.lensHeight,
  sharp_m: { near: s.sharp[0], far: finite(s.sharp[1]) },
  nose_to_ear_gain_percent: s.noseGain * 100,
  to_wall_m: s.toWall,
  nose_clearance_m: s.noseClearance,
  backdrop_used_m: { width: s.backdropUsed.width, top: s.backdropUsed.top },
  backdrop_blur_percent: s.softness * 100,
  stretch_percent: s.stretch * 100,
  row_difference_percent: s.rowDifference * 100,
});

/** The unit that a change's values carry in their names; what is no quantity carries none. */
export const CHANGE_UNITS: Readonly<
  Partial<Record<Change['change'], readonly [suffix: string, times: number]>>
> = {
  'room-length': ['_m', 1],
  focal: ['_mm', 1000],
  'f-number': ['', 1],
  'sitter-to-backdrop': ['_m', 1],
  'backdrop-width': ['_m', 1],
  'backdrop-height': ['_m', 1],
  'camera-height': ['_m', 1],
  'eyes-at': ['_percent', 100],
  'frame-height': ['_m', 1],
  'nose-gain': ['_percent', 100],
};

const remedyJson = ({ change: { change, ...values }, span, effort }: Remedy): Json => {
  const [suffix, times] = CHANGE_UNITS[change] ?? ['', 1];
  return {
    change,
    ...Object.fromEntries(
      Object.entries(values).map(([name, value]): [string, Json] => {
        if (typeof value === 'number') return [name + suffix, value * times];
        return [name === 'atLeast' ? 'at_least' : name, value];
      }),
    ),
    span: spanJson(span),
    effort,
  };
};

const verdictJson = (verdict: Verdict, remedies: readonly Remedy[]): Json => ({
  wanted: verdict.wanted,
  camera: verdict.camera,
  spans: verdict.spans.map(spanJson),
  reach: verdict.reach.map(spanJson),
  recommended: verdict.recommended && settingJson(verdict.recommended),
  conflict: verdict.conflict.map(conditionJson),
  remedies: remedies.map(remedyJson),
});

const oneStandpointJson = (one: OneStandpoint): Json => ({
  camera: one.camera,
  standpoint_m: one.standpoint,
  covers: one.covers,
  misses: one.misses,
  nose_to_ear_gain_lost_percent: Object.fromEntries(
    Object.entries(one.lost).map(([id, lost]) => [id, lost * 100]),
  ),
});

export function planJson(planned: Planned): Record<string, Json> {
  const { request, remedies, verdicts, oneStandpoint, backdropForward } = planned;
  const { room } = request;
  const { shots, left } = shootingList(request, planned);
  return {
    room: {
      wall_behind_camera_m: room.wallBehindCamera,
      backdrop_m: {
        behind: room.backdrop.behind,
        width: room.backdrop.left - room.backdrop.right,
        top: room.backdrop.top - room.floor,
        forward: backdropForward,
      },
    },
    cameras: request.cameras.map(({ id, bodyName, lensName, format }) => ({
      id,
      body: bodyName,
      format: format.id,
      lens: lensName,
    })),
    wanted: request.wanted.map(({ id, name, frameHeight, orientation, people }) => ({
      id,
      name,
      frame_height_m: frameHeight,
      orientation,
      people: people.map(({ name: who }) => who),
    })),
    verdicts: verdicts.map((verdict, i) => verdictJson(verdict, remedies[i] ?? [])),
    one_standpoint: oneStandpoint.map(oneStandpointJson),
    shooting_list: shots.map(({ wanted, camera, setting, moves }) => ({
      wanted,
      camera,
      setting: settingJson(setting),
      moves,
    })),
    not_taken: left,
  };
}
