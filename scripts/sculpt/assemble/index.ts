import type { Asset } from '../asset';
import { headParts } from '../head/parts';
import { SHAPES } from '../head/shape';
import { arranged } from '../write';
import { clothesAssets } from './clothes';
import type { Detail, Sex } from './detail';
import { figureAsset } from './figure';
import { formAssets } from './form';
import { hairAssets } from './hair';

export { type Detail, FULL_DETAIL, SEXES, type Sex } from './detail';

/**
 * Every file of one sex, by name, each made when called. Deterministic; minutes at full detail.
 * Forms displace the figure's vertices, so the figure is made once for all of them.
 */
export function assets(sex: Sex, detail: Detail): Record<string, () => Promise<Asset>> {
  let made: Promise<Asset> | undefined;
  const figure = (): Promise<Asset> => {
    made ??= figureAsset(sex, detail).then(arranged);
    return made;
  };
  const forms = Object.entries(formAssets(sex)).map(
    ([id, make]) => [id, async () => make(await figure(), headParts(SHAPES[sex]).skin)] as const,
  );
  return {
    [sex]: figure,
    ...Object.fromEntries(forms),
    ...hairAssets(sex, detail),
    ...clothesAssets(sex, detail),
  };
}
