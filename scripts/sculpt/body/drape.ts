import { type Field, mix, softAbs } from '../field';
import type { Figure } from './figure';
import { fold, wrappedFolds } from './folds';

/**
 * Folds of the top's body: cloth drawn from the armpits to the neck and under the chest, hanging from
 * there, and slack across the waist. Sculptor's choices.
 */
export function bodyFolds(f: Figure): Field {
  const pit = f.acromion[1] - f.by(96, 108);
  const waist = f.y(f.mm.waist_height_navel);
  const height = wrappedFolds(
    [
      // Front: from the armpit upwards, across, and down.
      fold([80, pit + 34], [34, pit + 58], 7, 2.6, -7),
      fold([80, pit + 12], [34, pit + 18], 7.5, 3.2, -6),
      fold([80, pit - 10], [40, pit - 22], 8, 2.8, 6),
      fold([82, pit - 32], [54, pit - 84], 9, 2.8, 8),
      fold([56, pit + 84], [30, pit + 20], 11, f.by(1.2, 1.8), 6),
      // Front: hanging.
      fold([30, pit - f.by(96, 50)], [24, waist + 40], 12, f.by(1.8, 2.4), 5),
      fold([54, pit - 84], [48, waist + 24], 12, 2.4, -5),
      fold([8, pit - f.by(110, 70)], [12, waist + 10], 15, 1.4, 4),
      // Back: over the shoulder blades and down.
      fold([106, pit + 36], [152, pit + 50], 8, 2.4, 6),
      fold([104, pit + 10], [150, pit - 14], 8, 3, 7),
      fold([104, pit - 16], [142, pit - 76], 9, 2.8, -7),
      fold([150, pit - 20], [156, waist + 50], 13, 2.2, 6),
      fold([174, pit + 10], [168, waist + 40], 15, 1.6, -4),
      // Slack across the waist.
      fold([98, waist + 74], [50, waist + 46], 9, 2.6, 8),
      fold([98, waist + 44], [40, waist + 20], 8.5, 2.8, 9),
      fold([98, waist + 14], [56, waist - 8], 9, 2.8, 7),
      fold([94, waist - 14], [62, waist - 34], 9, 2, 5),
      fold([92, waist + 66], [138, waist + 54], 9, 2.8, -8),
      fold([94, waist + 36], [154, waist + 22], 8.5, 3, -9),
      fold([94, waist + 8], [136, waist - 6], 9, 2.8, -7),
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
  const k = f.by(1.25, 1.4);
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
      fold([-120, e + 190], [-40, e + 120], 11, 1.8 * k),
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
      fold([30, k + 40], [100, k + 20], 11, 1.8),
      fold([-50, k - 22], [40, k - 34], 10, 2, 6),
      fold([-40, k + 34], [36, k + 44], 11, 1.6, -6),
      fold([-60, hem + 70], [34, hem + 52], 8, 4, 8),
      fold([60, hem + 96], [-16, hem + 86], 9, 3.2, -8),
      fold([-20, hem + 32], [64, hem + 40], 7, 2.8, 5),
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
