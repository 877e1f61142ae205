import {
  type IUniform,
  Matrix3,
  type SpotLight,
  type Texture,
  Vector2,
  Vector3,
  Vector4,
} from 'three';
import type { RoomRun } from '../session/kit';
import {
  boxAxes,
  fillRadiance,
  fillSurround,
  harmonicCoefficients,
  irradianceCoefficients,
  SOFT_BOXES,
} from './fill';
import type { LampSetting } from './studio';

/** What the surfaces' shaders need beside the renderer's own uniforms; one set shared by all materials. */
export interface LampUniforms {
  readonly [name: string]: IUniform;
  readonly lampDepths: IUniform<(Texture | null)[]>;
  readonly lampAxes: IUniform<Matrix3[]>;
  readonly lampOptics: IUniform<Vector4[]>;
  readonly lampFirst: IUniform<number[]>;
  /** Cosine and sine of a turn of the sampling discs, so that the samples of one still differ. */
  readonly shadowTurn: IUniform<Vector2>;
  /** Where the tile in hand lies in its picture, so that tiles join: pixels from the lower left. */
  readonly pixelOrigin: IUniform<Vector2>;
  /** Harmonics of the fill's irradiance and radiance. */
  readonly fillIrradiance: IUniform<number[]>;
  readonly fillRadiance: IUniform<number[]>;
  /** The fill's soft boxes, as an eye mirrors them: centre; level and upright axes over the half sides. */
  readonly boxCentre: IUniform<Vector3[]>;
  readonly boxLevel: IUniform<Vector3[]>;
  readonly boxUpright: IUniform<Vector3[]>;
  readonly boxRadiance: IUniform<number[]>;
  /** The hanging sheet: half its width, its upper edge and its plane in the sitter's frame; 1 where one hangs. */
  readonly hungSheet: IUniform<Vector4>;
}

/** Lamps that cast shadows, in the order of the scene: key, hair light. */
export const SHADOWED_LAMPS = 2;

const each = <T>(make: () => T): T[] => Array.from({ length: SHADOWED_LAMPS }, make);

const eachBox = <T>(make: () => T): T[] => Array.from({ length: SOFT_BOXES }, make);

export const lampUniforms = (): LampUniforms => ({
  fillIrradiance: { value: new Array<number>(9).fill(0) },
  fillRadiance: { value: new Array<number>(9).fill(0) },
  boxCentre: { value: eachBox(() => new Vector3(0, 1, 0)) },
  boxLevel: { value: eachBox(() => new Vector3(1, 0, 0)) },
  boxUpright: { value: eachBox(() => new Vector3(0, 0, 1)) },
  boxRadiance: { value: eachBox(() => 0) },
  lampDepths: { value: each<Texture | null>(() => null) },
  lampAxes: { value: each(() => new Matrix3()) },
  lampOptics: { value: each(() => new Vector4()) },
  lampFirst: { value: each(() => 0) },
  shadowTurn: { value: new Vector2(1, 0) },
  pixelOrigin: { value: new Vector2(0, 0) },
  hungSheet: { value: new Vector4() },
});

/** Reads one lamp's shadow camera, once its shadow map has been drawn. `nearest`: depth of the first caster, metres. */
export function setLamp(
  uniforms: LampUniforms,
  index: number,
  lamp: SpotLight,
  diameter: number,
  nearest: number,
): void {
  const camera = lamp.shadow.camera;
  const [axes, optics] = [uniforms.lampAxes.value[index], uniforms.lampOptics.value[index]];
  if (!axes || !optics) throw new RangeError(`no lamp ${index}`);
  axes.setFromMatrix4(camera.matrixWorldInverse);
  const cotangent = camera.projectionMatrix.elements[0] as number;
  optics.set(cotangent / 2, camera.near, camera.far, diameter);
  uniforms.lampFirst.value[index] = nearest;
}

/** Tells the surfaces what hangs before the end wall, over a floor at `floor`. */
export function setSheet(
  { hungSheet }: LampUniforms,
  { backdrop, hall: { sheet } }: RoomRun,
  floor: number,
): void {
  if (sheet) hungSheet.value.set(sheet.width / 2, floor + sheet.top, -backdrop, 1);
  else hungSheet.value.set(0, 0, 0, 0);
}

/** Sets the fill to its wanted place and strength. */
export function setFill(uniforms: LampUniforms, fill: LampSetting): void {
  const surround = fillSurround(fill);
  const radiance = harmonicCoefficients((direction) => fillRadiance(surround, direction));
  uniforms.fillRadiance.value = [...radiance];
  uniforms.fillIrradiance.value = [...irradianceCoefficients(radiance)];
  surround.forEach((box, i) => {
    const [level, upright] = boxAxes(box);
    uniforms.boxCentre.value[i]?.set(...box.centre);
    uniforms.boxLevel.value[i]?.set(...level).divideScalar(box.half[0]);
    uniforms.boxUpright.value[i]?.set(...upright).divideScalar(box.half[1]);
    uniforms.boxRadiance.value[i] = box.radiance;
  });
}
