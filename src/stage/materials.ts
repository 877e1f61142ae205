import {
  type Color,
  CustomBlending,
  DoubleSide,
  FrontSide,
  type Material,
  MeshBasicMaterial,
  MeshPhysicalMaterial,
  type MeshPhysicalMaterialParameters,
  OneFactor,
  OneMinusSrcAlphaFactor,
  SrcAlphaFactor,
  ZeroFactor,
} from 'three';
import type { Substance } from '../sitter/types';
import type { LampUniforms } from './lampUniforms';
import { lightSurface, type Surface } from './shaders/surfaces';

interface Recipe extends MeshPhysicalMaterialParameters {
  readonly surface: Surface;
  /** Share of the fill that reaches it; all of it unless told otherwise. */
  readonly fillShare?: number;
}

/**
 * Hairs thinner than a pixel lie over what was drawn before them by the share they cover; the picture
 * itself stays opaque. So they are drawn last (`figures.ts`).
 */
const HAIRS = {
  side: DoubleSide,
  blending: CustomBlending,
  blendSrc: SrcAlphaFactor,
  blendDst: OneMinusSrcAlphaFactor,
  blendSrcAlpha: ZeroFactor,
  blendDstAlpha: OneFactor,
} as const;

/**
 * Reflection at normal incidence 0.028, as of skin's oil layer; the cornea's and the frame's indices are
 * those of tears and of cellulose acetate; other values are set by eye.
 */
const RECIPES: Readonly<Record<Substance, Recipe>> = {
  skin: { surface: 'skin', roughness: 0.5, ior: 1.4, specularIntensity: 0.9 },
  brows: { surface: 'hair', roughness: 0.8, specularIntensity: 0.05, ...HAIRS },
  hair: { surface: 'hair', roughness: 0.6, specularIntensity: 0.12, ...HAIRS },
  eye: { surface: 'eye', roughness: 0.08, ior: 1.376 },
  top: { surface: 'cloth', roughness: 0.88, specularIntensity: 0.6 },
  outer: { surface: 'cloth', roughness: 0.82, specularIntensity: 0.6 },
  trousers: { surface: 'cloth', roughness: 0.85, specularIntensity: 0.6 },
  shoes: { surface: 'plain', roughness: 0.45 },
  frame: { surface: 'plain', roughness: 0.22, ior: 1.48 },
  glass: {
    surface: 'glass',
    roughness: 0.04,
    ior: 1.5,
    transparent: true,
    // Four hundredths of what is behind each face are mirrored away; what is mirrored comes on top in full.
    opacity: 0.08,
    blending: CustomBlending,
    blendSrc: OneFactor,
    blendDst: OneMinusSrcAlphaFactor,
    depthWrite: false,
    side: DoubleSide,
  },
};

/** Share of the fill that reaches the hall: the soft boxes stand near the sitter, their backs to it. */
export const ROOM_FILL = 0.62;

const ROOM = { surface: 'room', fillShare: ROOM_FILL, dithering: true } as const;

/** A physical material lit by the studio's lamps. */
export function litMaterial(
  uniforms: LampUniforms,
  { surface, fillShare = 1, ...parameters }: Recipe,
): MeshPhysicalMaterial {
  const material = new MeshPhysicalMaterial({
    vertexColors: true,
    side: FrontSide,
    shadowSide: FrontSide,
    ...parameters,
  });
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, uniforms, { fillShare: { value: fillShare } });
    lightSurface(shader, surface);
  };
  material.customProgramCacheKey = () => surface;
  return material;
}

export interface Materials {
  readonly of: Readonly<Record<Substance, MeshPhysicalMaterial>>;
  /** Hair in locks: they lie one over the other in the order in which they are kept, inmost first. */
  readonly locks: MeshPhysicalMaterial;
  readonly room: MeshPhysicalMaterial;
  /** The hanging sheet: matte. */
  readonly paper: MeshPhysicalMaterial;
  /** Mid-grey, without colour: shows shape and light alone. */
  readonly clay: MeshPhysicalMaterial;
  /** The same for sheets of hair: cut into single hairs. */
  readonly clayHair: MeshPhysicalMaterial;
  readonly black: MeshBasicMaterial;
  readonly white: MeshBasicMaterial;
  readonly dispose: () => void;
}

const flat = (color: number): MeshBasicMaterial =>
  new MeshBasicMaterial({ color, toneMapped: false });

export function createMaterials(uniforms: LampUniforms, clay: Color): Materials {
  const of = Object.fromEntries(
    Object.entries(RECIPES).map(([name, recipe]) => [name, litMaterial(uniforms, recipe)]),
  ) as Record<Substance, MeshPhysicalMaterial>;
  const unglazed = { roughness: 0.62, vertexColors: false, color: clay, specularIntensity: 0.5 };
  const rest = {
    locks: litMaterial(uniforms, { ...RECIPES.hair, depthWrite: false }),
    room: litMaterial(uniforms, { ...ROOM, roughness: 0.62, specularIntensity: 0.5 }),
    paper: litMaterial(uniforms, { ...ROOM, roughness: 0.95, specularIntensity: 0.2 }),
    clay: litMaterial(uniforms, { ...unglazed, surface: 'clay' }),
    clayHair: litMaterial(uniforms, { ...unglazed, surface: 'clayHair', ...HAIRS }),
    black: flat(0x000000),
    white: flat(0xffffff),
  };
  const all: Material[] = [...Object.values(of), ...Object.values(rest)];
  return {
    of,
    ...rest,
    dispose: () => {
      for (const material of all) material.dispose();
    },
  };
}
