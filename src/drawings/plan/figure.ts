/** A person of the drawings from their dimensions. */
import type { Vec3 } from '../../optics/types';
import type { Dimensions, Pose } from '../../sitter/types';
import type { ProfileOutline } from '../profile/outline';
import type { PlanFigure } from './types';

const MM = 0.001;

interface FigureAsked {
  readonly id: string;
  readonly name: string;
  readonly dimensions: Dimensions;
  readonly pose: Pose;
  readonly eyes?: Vec3;
  readonly stepHeight?: number;
  readonly profile?: ProfileOutline | null;
}

/** Sizes from above and from the side, out of dimensions in millimetres. */
export function figureOf(asked: FigureAsked): PlanFigure {
  const { id, name, dimensions: d, pose } = asked;
  const nose = d.nose_tip_to_eye_plane * MM;
  const back = d.nose_tip_to_back_of_head * MM - nose;
  const head = d.head_length * MM;
  const crown = d.vertex_above_eyes * MM;
  return {
    id,
    name,
    eyes: asked.eyes ?? [0, 0, 0],
    stepHeight: asked.stepHeight ?? 0,
    seated: pose.stance === 'seated',
    bodyTurn: pose.bodyTurn,
    headTurn: pose.headTurn,
    // The shoulders stand under the ears.
    shoulders: {
      breadth: d.bideltoid_breadth * MM,
      depth: d.chest_depth * MM,
      behind: d.nose_tip_to_tragion * MM - nose,
    },
    head: { breadth: d.head_breadth * MM, depth: head, behind: back - head / 2 },
    nose,
    crown,
    chin: crown - d.head_height_vertex_to_menton * MM,
    shoulderHeight: crown - (d.stature - d.acromial_height) * MM,
    profile: asked.profile ?? null,
  };
}

/** Points of an ellipse from above about a person's eyes, turned by `turn` to the sitter's left: x, z. */
export function ellipseAbove(
  { eyes }: PlanFigure,
  { breadth, depth, behind }: PlanFigure['head'],
  turn: number,
  steps = 40,
): (readonly [x: number, z: number])[] {
  return Array.from({ length: steps }, (_, i) => {
    const at = (2 * Math.PI * i) / steps;
    return turned(eyes, (breadth / 2) * Math.cos(at), (depth / 2) * Math.sin(at) - behind, turn);
  });
}

/** A point (x, z) about a person's eyes after a turn to the sitter's left. */
export function turned(
  [ex, , ez]: Vec3,
  x: number,
  z: number,
  turn: number,
): readonly [number, number] {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [ex + x * cos + z * sin, ez + z * cos - x * sin];
}
