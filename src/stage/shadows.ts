/** The shadow maps, drawn once for all pictures and kept until the sitter, the light or the room changes. */
import { Camera, type Scene, type SpotLight, type WebGLRenderer } from 'three';
import { type LampUniforms, SHADOWED_LAMPS, setLamp } from './lampUniforms';
import { LAYER } from './layers';
import { NearestDepths } from './nearestDepths';

export interface ShadowedLamp {
  readonly light: SpotLight;
  readonly diameter: number;
  /** Depth of the first thing that may cast a shadow, metres. */
  readonly nearest: number;
}

/** What may stand between the lamp and a part of the sitter, and of the room, stands this far before it. */
const BEFORE_SITTER = 0.25;
const BEFORE_ROOM = 1.2;
/** Share of the widest penumbra that is looked around. */
const LOOK = 0.35;

/** Widest penumbra behind something that stands `before` a point at a depth, as a share of the map's side. */
function penumbra({ light, diameter }: ShadowedLamp, depth: number, before: number): number {
  const mapSide = 2 * depth * Math.tan(light.angle);
  return (diameter * before) / (depth - before) / mapSide;
}

export class ShadowMaps {
  private readonly nearest = new NearestDepths();
  private readonly textures = Array.from({ length: SHADOWED_LAMPS }, NearestDepths.texture);
  private readonly onlyShadows = new Camera();

  constructor(private readonly uniforms: LampUniforms) {
    this.onlyShadows.layers.set(LAYER.none);
  }

  update(renderer: WebGLRenderer, scene: Scene, lamps: readonly ShadowedLamp[]): void {
    renderer.shadowMap.needsUpdate = true;
    renderer.render(scene, this.onlyShadows);
    lamps.forEach((lamp, index) => {
      const texture = this.textures[index];
      if (!texture) return;
      const widths = [
        LOOK * penumbra(lamp, lamp.nearest + 2 * BEFORE_SITTER, BEFORE_SITTER),
        LOOK * penumbra(lamp, lamp.nearest + 2 * BEFORE_ROOM, BEFORE_ROOM),
      ] as const;
      this.nearest.read(renderer, lamp.light, lamp.nearest, widths, texture);
      this.uniforms.lampDepths.value[index] = texture.texture;
      setLamp(this.uniforms, index, lamp.light, lamp.diameter, lamp.nearest);
    });
    renderer.setRenderTarget(null);
  }

  dispose(): void {
    for (const texture of this.textures) texture.dispose();
    this.nearest.dispose();
  }
}
