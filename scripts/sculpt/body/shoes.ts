import { bell, type Field, smoothMax, smoothMin, softAbs } from '../field';
import type { Figure } from './figure';
import { loft } from './loft';

/** Toes turned out by this much, radians. */
const TOE_OUT = (7 * Math.PI) / 180;
/** Shoe longer than the foot, mm. */
const ALLOWANCE = 18;
const SOLE = 15;

/** A pair of plain low shoes standing on the floor. */
export function shoes(f: Figure): Field {
  const { ankle } = f.joints;
  const k = (f.mm.foot_length + ALLOWANCE) / 264;
  const w = f.by(0.94, 1.04);
  const floor = f.y(0);
  // [z from the ankle, half breadth, centre x, height of the upper]
  const table = [
    [-62, 20, 0, 44],
    [-50, 29, 0, 60],
    [-24, 34, 0, 84],
    [14, 36, 1, 88],
    [50, 39, 2, 74],
    [90, 46, 3, 56],
    [130, 48, 2, 46],
    [168, 41, -1, 39],
    [190, 29, -4, 33],
    [200, 17, -5, 29],
  ];
  const upper = loft(
    table.map(([z = 0, half = 0, x = 0, h = 0]) => ({
      at: z * k,
      u: [(x - half) * w, (x + half) * w],
      v: [-0.42 * h * k, h * k],
      n: 2.25,
    })),
    14,
  );
  const sole = loft(
    table.map(([z = 0, half = 0, x = 0]) => ({
      at: z * k,
      u: [(x - half) * w - 1, (x + half) * w + 1],
      v: [-60, 80],
      n: 9,
    })),
    14,
  );
  const c = Math.cos(TOE_OUT);
  const s = Math.sin(TOE_OUT);
  return (x, y, z) => {
    const px = softAbs(x) - ankle[0];
    const pz = z - ankle[2];
    const u = px * c - pz * s;
    const t = px * s + pz * c;
    const h = y - floor;
    const top = upper(t, u, h) + 1.2 * bell(h - SOLE, 2.4);
    const bottom = smoothMax(sole(t, u, h) - 1.5, h - SOLE, 5);
    return smoothMax(smoothMin(smoothMax(top, SOLE - 6 - h, 2), bottom, 1.5), -h, 3);
  };
}
