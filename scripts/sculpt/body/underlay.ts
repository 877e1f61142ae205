import { capsule, type Field, type Knot, smoothMin, softAbs } from '../field';
import { neckAndShoulders } from '../head/neck';
import { SHAPES } from '../head/shape';
import type { Figure } from './figure';

/**
 * What the cloth lies on near the neck: the skin with its hollows bridged as cloth does, the one
 * between collar-bone and trapezius and the notch of the neck.
 */
export function underlay(f: Figure): Field {
  const skin = neckAndShoulders(SHAPES[f.sex]);
  const [, notch, notchZ] = f.suprasternale;
  const strap: readonly [Knot, Knot] = [
    [74, notch - 5, -73, 12],
    [82, notch + 26, -128, 13],
  ];
  const bridge: readonly [Knot, Knot] = [
    [-26, notch - 2, notchZ - 6, 9],
    [26, notch - 2, notchZ - 6, 9],
  ];
  return (x, y, z) => {
    let d = skin(x, y, z);
    // The crew neck closes above the hollow.
    if (f.sex === 'female') d = smoothMin(d, capsule(softAbs(x), y, z, strap[0], strap[1]), 16);
    return smoothMin(d, capsule(x, y, z, bridge[0], bridge[1]), 12);
  };
}
