/** What stands behind the sitter, what is sharp, and what the flat picture stretches. */
import { backdropExtent, backdropWidth, backgroundSize, type Extent } from '../optics/background';
import { toCameraAxes } from '../optics/camera';
import {
  airyDisc,
  blurDisc,
  type DepthOfField,
  depthOfField,
  type FocusedLens,
  hyperfocal,
} from '../optics/focus';
import { effectiveFNumber, exposureLossStops } from '../optics/lens';
import { type FieldPoint, farthestCorner, farthestEdge } from '../optics/off-axis';
import { must } from '../optics/result';
import type { Vec3 } from '../optics/types';
import { type Metre, metres } from '../optics/units';
import { type LensMeasures, orNull } from './measure-lens';
import type { PictureInput } from './types';

/** Spare width at each side of the backdrop; common practice is 10 to 20 %, no source. */
export const BACKDROP_MARGIN = 0.1;

export interface SceneMeasures {
  readonly backdrop: {
    readonly distance: Metre;
    /** Size over the size at the eye plane. */
    readonly size: number;
    /** What the frame's width spans there, for a level camera: W (d + b) / d. */
    readonly width: Metre;
    readonly widthWithMargin: Metre;
    /** What the frame holds of it, from the eyes; null when a tilted frame looks past it. */
    readonly extent: Extent | null;
  };
  readonly stretch: { readonly edge: FieldPoint; readonly corner: FieldPoint };
  readonly sharp: {
    readonly near: Metre;
    /** Infinite from the hyperfocal distance on. */
    readonly far: Metre;
    readonly hyperfocal: Metre;
    readonly circleOfConfusion: Metre;
    readonly noseTip: boolean;
    readonly earLeft: boolean;
    readonly earRight: boolean;
  };
  /** Null when the point of the backdrop behind the eyes is not before a tilted lens. */
  readonly blur: {
    /** Disc of a backdrop point as a share of the picture's height. */
    readonly inPicture: number;
    /** The same disc as it would lie on the backdrop itself. */
    readonly onBackdrop: Metre;
  } | null;
  readonly light: {
    readonly effectiveFNumber: number;
    readonly lossStops: number;
    readonly airyDisc: Metre;
  };
}

/** Everything that stands behind the face or hangs on lens and frame. */
export function measureScene(input: PictureInput, figures: LensMeasures): SceneMeasures {
  const { camera, sitter, format, lens } = input;
  const { asIf, focusDistance, sensor, frame, standpoint, magnification } = figures;
  const behind = metres(input.backdropDistance);
  const focused: FocusedLens = { focal: asIf.focal, fNumber: asIf.fNumber, focus: focusDistance };
  const depthOf = (point: Vec3): Metre => metres(-toCameraAxes(camera, point)[2]);
  const limits = must(depthOfField({ ...focused, circleOfConfusion: format.circleOfConfusion }));
  const isSharp = (point: Vec3): boolean => within(depthOf(point), limits);
  const backdropDepth = depthOf([0, 0, -behind]);
  const disc = orNull(blurDisc(focused, backdropDepth));
  const pupils = lens?.pupilMagnification ?? 1;
  return {
    backdrop: {
      distance: behind,
      size: must(backgroundSize(standpoint, behind)),
      width: must(backdropWidth(frame.width, standpoint, behind)),
      widthWithMargin: must(backdropWidth(frame.width, standpoint, behind, BACKDROP_MARGIN)),
      extent: orNull(backdropExtent(camera, behind)),
    },
    stretch: {
      edge: must(farthestEdge(camera.frustum)),
      corner: must(farthestCorner(camera.frustum)),
    },
    sharp: {
      near: limits.near,
      far: limits.far,
      hyperfocal: must(hyperfocal(asIf.focal, asIf.fNumber, format.circleOfConfusion)),
      circleOfConfusion: format.circleOfConfusion,
      noseTip: isSharp(sitter.landmarks.pronasale),
      earLeft: isSharp(sitter.landmarks.tragion_left),
      earRight: isSharp(sitter.landmarks.tragion_right),
    },
    blur:
      disc === null
        ? null
        : {
            inPicture: disc / sensor.height,
            onBackdrop: metres((disc * backdropDepth) / asIf.imageDistance),
          },
    light: {
      effectiveFNumber: must(effectiveFNumber(input.fNumber, magnification, pupils)),
      lossStops: must(exposureLossStops(magnification, pupils)),
      airyDisc: must(airyDisc(input.fNumber, magnification)),
    },
  };
}

const within = (depth: Metre, { near, far }: DepthOfField): boolean =>
  depth >= near && depth <= far;
