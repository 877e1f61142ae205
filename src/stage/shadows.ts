/** The shadow maps: drawn once for all pictures whose sitters cast the same, kept until light or room changes. */
import {
  Camera,
  type Scene,
  type SpotLight,
  Vector3,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';
import type { Company } from './company';
import { DETAILS, type Detail } from './detail';
import { type LampUniforms, setLamp } from './lampUniforms';
import { LAYER } from './layers';
import { NearestDepths } from './nearestDepths';

export interface ShadowedLamp {
  readonly light: SpotLight;
  readonly diameter: number;
}

/** Nothing that casts a shadow counts as nearer to a lamp than this, metres. */
const LEAST_DEPTH = 0.3;

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

/** What stands nearest to the lamp, from the corners of the company's box. */
function nearestDepth({ light }: ShadowedLamp, { bounds: { min, max } }: Company): number {
  const axis = light.target.position.clone().sub(light.position).normalize();
  const corner = new Vector3();
  const depths = Array.from({ length: 8 }, (_, i) =>
    corner
      .set(i & 1 ? max[0] : min[0], i & 2 ? max[1] : min[1], i & 4 ? max[2] : min[2])
      .sub(light.position)
      .dot(axis),
  );
  return Math.max(LEAST_DEPTH, Math.min(...depths));
}

/** One company's maps of all lamps. */
class Shades {
  private readonly maps: (WebGLRenderTarget | null)[];
  private readonly textures: WebGLRenderTarget[];
  private nearest: readonly number[] = [];

  constructor(private readonly lamps: readonly ShadowedLamp[]) {
    this.maps = lamps.map(() => null);
    this.textures = lamps.map(NearestDepths.texture);
  }

  /** Draws the maps of what is visible in the scene. */
  draw(
    renderer: WebGLRenderer,
    scene: Scene,
    viewer: Camera,
    reader: NearestDepths,
    company: Company,
  ): void {
    this.hang();
    renderer.shadowMap.needsUpdate = true;
    renderer.render(scene, viewer);
    this.nearest = this.lamps.map((lamp, index) => {
      this.maps[index] = lamp.light.shadow.map as WebGLRenderTarget | null;
      const nearest = nearestDepth(lamp, company);
      const widths = [
        LOOK * penumbra(lamp, nearest + 2 * BEFORE_SITTER, BEFORE_SITTER),
        LOOK * penumbra(lamp, nearest + 2 * BEFORE_ROOM, BEFORE_ROOM),
      ] as const;
      reader.read(renderer, lamp.light, nearest, widths, this.textures[index] as WebGLRenderTarget);
      return nearest;
    });
    renderer.setRenderTarget(null);
  }

  private hang(): void {
    this.lamps.forEach(({ light }, index) => {
      light.shadow.map = this.maps[index] as typeof light.shadow.map;
    });
  }

  use(uniforms: LampUniforms): void {
    this.hang();
    this.lamps.forEach(({ light, diameter }, index) => {
      uniforms.lampDepths.value[index] = (this.textures[index] as WebGLRenderTarget).texture;
      setLamp(uniforms, index, light, diameter, this.nearest[index] as number);
    });
  }

  dispose(): void {
    for (const target of [...this.maps, ...this.textures]) {
      target?.depthTexture?.dispose();
      target?.dispose();
    }
    for (const { light } of this.lamps) light.shadow.map = null;
  }
}

const keyOf = ({ shades }: Company, detail: Detail): string => `${detail} ${shades}`;

export class ShadowMaps {
  /** Companies' shadows drawn since the start. */
  updates = 0;
  private readonly reader = new NearestDepths();
  private readonly known = new Map<string, Shades>();
  private readonly viewer = new Camera();

  constructor(private readonly uniforms: LampUniforms) {
    this.viewer.layers.set(LAYER.none);
  }

  /**
   * Makes a company's shadows those that the surfaces ask; it must be the one that is visible. Each level of
   * detail has its own: where cloth bends far, the levels lie so far apart that one would shade the other.
   */
  use(
    renderer: WebGLRenderer,
    scene: Scene,
    lamps: readonly ShadowedLamp[],
    company: Company,
    detail: Detail,
  ): void {
    const key = keyOf(company, detail);
    let shades = this.known.get(key);
    if (!shades) {
      shades = new Shades(lamps);
      this.known.set(key, shades);
      shades.draw(renderer, scene, this.viewer, this.reader, company);
      this.updates += 1;
    }
    shades.use(this.uniforms);
  }

  /** Light or room changed, or the graphics context was lost: nothing drawn counts any more. */
  forget(): void {
    for (const shades of this.known.values()) shades.dispose();
    this.known.clear();
  }

  /** Lets the maps of all but the given companies go. */
  keep(companies: readonly Company[]): void {
    const kept = new Set(
      companies.flatMap((company) => DETAILS.map((detail) => keyOf(company, detail))),
    );
    for (const [key, shades] of this.known) {
      if (kept.has(key)) continue;
      shades.dispose();
      this.known.delete(key);
    }
  }

  dispose(): void {
    this.forget();
    this.reader.dispose();
  }
}
