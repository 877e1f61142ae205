import { type Field, mix, softAbs } from '../field';
import type { Figure } from './figure';
import { fold, wrappedFolds } from './folds';

/** Folds of the top's body: from the armpits over chest and back, and across the waist. */
export function bodyFolds(f: Figure): Field {
  const pit = f.acromion[1] - f.by(96, 108);
  const waist = f.y(f.mm.waist_height_navel);
  const k = f.by(1, 1.15);
  const c = f.by(1, 0.65);
  const height = wrappedFolds(
    [
      fold([72, pit + 26], [34, pit + 8], 8, 2.6 * c),
      fold([74, pit + 2], [40, pit - 24], 8, -2.2 * c),
      fold([76, pit - 18], [46, pit - 66], 9, 2.4 * c),
      fold([80, pit - 52], [58, pit - 108], 10, 1.6 * c),
      fold([118, pit + 30], [150, pit + 2], 10, 2.4 * k),
      fold([116, pit + 2], [146, pit - 44], 10, -2 * k),
      fold([112, pit - 26], [140, pit - 92], 11, 2.2 * k),
      fold([98, waist + 74], [52, waist + 50], 10, 2.2 * k),
      fold([96, waist + 48], [44, waist + 22], 9, -2 * k),
      fold([98, waist + 22], [56, waist - 6], 10, 2.2 * k),
      fold([94, waist - 12], [62, waist - 34], 10, -1.4 * k),
      fold([92, waist + 66], [138, waist + 58], 10, 2.2 * k),
      fold([96, waist + 40], [150, waist + 26], 10, -2 * k),
      fold([94, waist + 12], [136, waist - 2], 11, 2.2 * k),
    ],
    140,
  );
  return (x, y, z) => height(softAbs(x), y, z + 110);
}

/** Slanting folds where the sleeve gathers: at the bend of the elbow and above the cuff. */
export function sleeveFolds(f: Figure): Field {
  const { elbow, wrist, shoulder } = f.joints;
  const e = elbow[1];
  const w = wrist[1];
  const k = f.by(1, 1.15);
  const height = wrappedFolds(
    [
      fold([-70, e + 66], [40, e + 44], 7, 2 * k),
      fold([-95, e + 36], [30, e + 24], 6.5, 2.6 * k),
      fold([-30, e + 24], [70, e + 2], 6, 2.2 * k),
      fold([-100, e + 8], [10, e + 4], 6, 2.6 * k),
      fold([-20, e - 10], [80, e - 34], 7, 2.2 * k),
      fold([-110, e - 20], [0, e - 26], 7, 2.2 * k),
      fold([-60, e - 44], [40, e - 62], 8, 1.6 * k),
      fold([60, e + 70], [140, e + 34], 9, 1.6 * k),
      fold([-120, w + 84], [20, w + 72], 7, 1.8 * k),
      fold([0, w + 66], [120, w + 54], 6, 2 * k),
      fold([-130, w + 56], [-20, w + 50], 6, 1.8 * k),
      fold([-30, w + 40], [90, w + 36], 6, 1.6 * k),
      fold([-40, e + 150], [60, e + 110], 12, 1.8 * k),
      fold([60, e + 190], [130, e + 120], 13, 1.6 * k),
    ],
    f.by(42, 50),
  );
  return (x, y, z) => {
    const [a, b] = y < e ? [elbow, wrist] : [shoulder, elbow];
    const t = (a[1] - y) / (a[1] - b[1]);
    return height(softAbs(x) - mix(a[0], b[0], t), y, z - mix(a[2], b[2], t));
  };
}

/** Folds of a trouser leg: at the crotch, behind the knee, and where the hem meets the shoe. */
export function legFolds(f: Figure, hemHeight: number): Field {
  const { hip, knee, ankle } = f.joints;
  const crotch = f.y(f.mm.crotch_height);
  const hem = f.y(hemHeight);
  const k = knee[1];
  const height = wrappedFolds(
    [
      fold([-62, crotch - 2], [4, crotch + 40], 9, 2.4),
      fold([-64, crotch - 24], [12, crotch + 6], 9, -2),
      fold([-66, crotch - 44], [0, crotch - 34], 10, 1.8),
      fold([-116, crotch - 24], [-160, crotch - 60], 11, 2.4),
      fold([100, k - 10], [175, k - 28], 10, 2.4),
      fold([-100, k - 40], [-175, k - 30], 10, 2.2),
      fold([110, k - 66], [178, k - 78], 11, 2),
      fold([30, k + 40], [100, k + 20], 11, 1.4),
      fold([-60, hem + 70], [34, hem + 52], 8, 2.6),
      fold([60, hem + 92], [-16, hem + 84], 9, 2),
      fold([-20, hem + 34], [64, hem + 40], 7, 2),
      fold([110, hem + 60], [170, hem + 40], 10, 1.6),
    ],
    72,
  );
  return (x, y, z) => {
    const [a, b] = y < k ? [knee, ankle] : [hip, knee];
    const t = (a[1] - y) / (a[1] - b[1]);
    return height(softAbs(x) - mix(a[0], b[0], t), y, z - mix(a[2], b[2], t));
  };
}
