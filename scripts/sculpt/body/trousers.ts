import { bell, type Field, smoothMax, smoothMin, softAbs, step } from '../field';
import { legFolds } from './drape';
import type { Figure } from './figure';
import { trouserLeg } from './limbs';
import { topCut, topHem } from './top';
import { ribsAndPelvis } from './trunk';

/** Height of the trousers' hems above the floor, mm. */
export const trouserHem = (f: Figure): number => f.by(30, 26);

/** How far the trousers stay behind the top that hangs over them, mm. */
const BEHIND = 7;

/** Trousers, from under the top's hem to the shoes; the legs fall straight with a faint crease. */
export function trousers(f: Figure): Field {
  const { mm } = f;
  const pelvis = ribsAndPelvis(f);
  const hem = trouserHem(f);
  const leg = trouserLeg(f, hem);
  const folds = legFolds(f, hem);
  const waist = f.y(mm.waist_height_navel - 20);
  const crotch = f.y(mm.crotch_height);
  const { hip, knee, ankle } = f.joints;
  const over = topCut(f).fall;
  const topEnd = f.y(topHem(f));
  return (x, y, z) => {
    const ax = softAbs(x);
    let l = leg(x, y, z);
    const cx =
      y > knee[1]
        ? hip[0] + ((knee[0] - hip[0]) * (hip[1] - y)) / (hip[1] - knee[1])
        : knee[0] + ((ankle[0] - knee[0]) * (knee[1] - y)) / (knee[1] - ankle[1]);
    // Pressed crease, front and back.
    if (Math.abs(l) < 14) l -= 3 * bell(ax - cx, 4.5) * step(crotch - 20, crotch - 140, y);
    const seat = smoothMax(pelvis(x, y, z) - 4, crotch - 22 - y, 70);
    let d = smoothMin(seat, l, 36);
    if (Math.abs(d) < 14) d -= folds(x, y, z);
    if (y > topEnd - 24) {
      const free = 30 * step(topEnd + 4, topEnd - 24, y);
      d = smoothMax(d, over(x, y, z) + BEHIND - free, 4);
    }
    return smoothMax(d, y - waist, 6);
  };
}
