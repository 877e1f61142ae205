import { clamp, type Field, softAbs } from '../field';
import { type HairStyleName, hairStyles } from '../hair';
import type { HairParts } from '../hair/style';
import { openness } from '../occlusion';
import type { Ribbons } from '../ribbons';
import { ear } from './ear';
import { type Eyeball, eyeball } from './eyeball';
import { lidOpening } from './eyes';
import { fringe } from './fringe';
import { type Masks, skinMasks } from './masks';
import { neckAndShoulders } from './neck';
import type { HeadShape } from './shape';
import { bareHead, skin } from './skin';

export type Region = 'face' | 'scalp' | 'earLeft' | 'earRight' | 'neck' | 'body';

export interface HeadParts {
  readonly skin: Field;
  readonly bare: Field;
  readonly neckAndShoulders: Field;
  /** The eyeball about its own pupil; place it at (+-interpupillary / 2, 0, 0). */
  readonly eyes: () => Eyeball;
  /** Brows and lashes, single hairs. */
  readonly fringe: () => Ribbons;
  readonly hair: Readonly<Record<HairStyleName, HairParts>>;
  readonly masks: (x: number, y: number, z: number) => Masks;
  readonly region: (x: number, y: number, z: number) => Region;
  /** Share of open space over a point of the skin, 0..1. */
  readonly occlusion: (
    x: number,
    y: number,
    z: number,
    nx: number,
    ny: number,
    nz: number,
  ) => number;
}

/** Everything that stands on the neck, for one shape; fields and positions in mm. */
export function headParts(shape: HeadShape): HeadParts {
  const surface = skin(shape);
  const masks = skinMasks(shape);
  const open = openness(surface, 0.9);
  return {
    skin: surface,
    bare: bareHead(shape),
    neckAndShoulders: neckAndShoulders(shape),
    eyes: () => eyeball(lidOpening(shape)),
    fringe: () => fringe(shape),
    hair: hairStyles(shape),
    masks,
    region: regions(shape),
    // Hardly any light comes back from a nostril or an ear's canal.
    occlusion: (x, y, z, nx, ny, nz) =>
      open(x, y, z, nx, ny, nz) * (1 - 0.85 * masks(x, y, z).hollow),
  };
}

/** Names the part of the skin a surface point belongs to. */
function regions(shape: HeadShape): HeadParts['region'] {
  const [sx, sy, sz] = shape.scale;
  const { toLocal } = ear(shape);
  const bare = bareHead(shape);
  return (X, Y, Z) => {
    const [x, y, z] = [X / sx, Y / sy, Z / sz];
    const ax = softAbs(x);
    if (ax > 60 && y > -50 && y < 35 && z < -60 && z > -130) {
      const [u, v] = toLocal(ax, y, z);
      if (Math.hypot((u - 17) / 24, (v - 1) / 36) < 1 && bare(X, Y, Z) > 1.5)
        return X > 0 ? 'earLeft' : 'earRight';
    }
    if (y < -205 || (y < -150 && ax > 75)) return 'body';
    // The jaw's lower border runs from behind the ear to the chin.
    const jaw = -50 - 62 * clamp((z + 85) / 75);
    if (y < jaw || (z < -95 && y < -45)) return 'neck';
    const hairline = z < -75 ? -60 : 30 + 50 * clamp((z + 45) / 40);
    return y > hairline && z < 0 ? 'scalp' : 'face';
  };
}
