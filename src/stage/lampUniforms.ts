import {
  type IUniform,
  Matrix3,
  type SpotLight,
  type Texture,
  Vector2,
  Vector3,
  Vector4,
} from 'three';
import type { Vec3 } from '../optics/types';
import {
  boxAxes,
  fillRadiance,
  harmonicCoefficients,
  irradianceCoefficients,
  SOFT_BOXES,
} from './fill';

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
  /** Where the hair springs from, and the direction it turns about; the sitter's frame. */
  readonly whorl: IUniform<Vector3>;
  readonly whorlAxis: IUniform<Vector3>;
}

/** Lamps that cast shadows, in the order of the scene: key, rim. */
export const SHADOWED_LAMPS = 2;

const each = <T>(make: () => T): T[] => Array.from({ length: SHADOWED_LAMPS }, make);

const radiance = harmonicCoefficients(fillRadiance);

export const lampUniforms = (): LampUniforms => ({
  fillIrradiance: { value: [...irradianceCoefficients(radiance)] },
  fillRadiance: { value: [...radiance] },
  boxCentre: { value: SOFT_BOXES.map(({ centre }) => new Vector3(...centre)) },
  boxLevel: {
    value: SOFT_BOXES.map((box) => new Vector3(...boxAxes(box)[0]).divideScalar(box.half[0])),
  },
  boxUpright: {
    value: SOFT_BOXES.map((box) => new Vector3(...boxAxes(box)[1]).divideScalar(box.half[1])),
  },
  boxRadiance: { value: SOFT_BOXES.map((box) => box.radiance) },
  lampDepths: { value: each<Texture | null>(() => null) },
  lampAxes: { value: each(() => new Matrix3()) },
  lampOptics: { value: each(() => new Vector4()) },
  lampFirst: { value: each(() => 0) },
  shadowTurn: { value: new Vector2(1, 0) },
  pixelOrigin: { value: new Vector2(0, 0) },
  whorl: { value: new Vector3(0, 0.1, -0.1) },
  whorlAxis: { value: new Vector3(0, 0.8, -0.6) },
});

/** Reads one lamp's shadow camera, once its shadow map has been drawn. `nearest`: depth of the first caster. */
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

/** Puts the whorl on the back of the crown, between the two given landmarks. */
export function setWhorl(uniforms: LampUniforms, vertex: Vec3, back: Vec3, sellion: Vec3): void {
  const whorl = uniforms.whorl.value.set(...vertex).lerp(new Vector3(...back), 0.45);
  const centre = new Vector3(...vertex).add(new Vector3(...back)).add(new Vector3(...sellion));
  uniforms.whorlAxis.value.copy(whorl).sub(centre.divideScalar(3)).normalize();
}
