/**
 * From a shadow map, how far before the lamp the nearest things around each point stand. The mean of an
 * exponential of the depth lets the nearest prevail and changes smoothly (Annen et al. 2008). It is kept
 * twice: for the sitter, whose parts are centimetres apart, and for the room.
 */
import {
  DepthFormat,
  DepthTexture,
  HalfFloatType,
  LinearFilter,
  LinearMipmapLinearFilter,
  NearestFilter,
  RGFormat,
  type SpotLight,
  type Texture,
  UnsignedIntType,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { FullScreenPass } from './fullScreenPass';

const SIZE = 256;

/** An exponential that stays within the range of a half float over the depths it is meant for. */
interface Falloff {
  /** Per metre. */
  readonly rate: number;
  /** Depth behind the first caster at which the exponential is 1, metres. */
  readonly unit: number;
}
const STEEP: Falloff = { rate: 45, unit: 0.22 };
const GENTLE: Falloff = { rate: 6, unit: 1.6 };
const RATES = `vec2( ${STEEP.rate}.0, ${GENTLE.rate}.0 )`;
const UNITS = `vec2( ${STEEP.unit}, ${GENTLE.unit} )`;

const meanFragment = /* glsl */ `
uniform sampler2D depths;
uniform vec3 range;
void main() {
	ivec2 size = textureSize( depths, 0 );
	int block = max( size.x / ${SIZE}, 1 );
	ivec2 corner = ivec2( gl_FragCoord.xy ) * block;
	float A = range.y / ( range.y - range.x );
	vec2 sum = vec2( 0.0 );
	for ( int y = 0; y < block; y ++ ) {
		for ( int x = 0; x < block; x ++ ) {
			float depth = A * range.x / ( A - texelFetch( depths, corner + ivec2( x, y ), 0 ).r ) - range.z;
			sum += exp( ${RATES} * ( ${UNITS} - max( depth, 0.0 ) ) );
		}
	}
	gl_FragColor = vec4( sum / float( block * block ), 0.0, 1.0 );
}
`;

const nearestFragment = /* glsl */ `
uniform sampler2D means;
uniform vec2 levels;
varying vec2 vUv;
void main() {
	vec2 mean = vec2( textureLod( means, vUv, levels.x ).r, textureLod( means, vUv, levels.y ).g );
	gl_FragColor = vec4( ${UNITS} - log( max( mean, vec2( 1e-7 ) ) ) / ${RATES}, 0.0, 1.0 );
}
`;

/** A map's depths as plain numbers: the map itself can only be compared with. */
function depthCopy(size: number): WebGLRenderTarget {
  const depthTexture = new DepthTexture(size, size, UnsignedIntType);
  depthTexture.format = DepthFormat;
  depthTexture.minFilter = NearestFilter;
  depthTexture.magFilter = NearestFilter;
  return new WebGLRenderTarget(size, size, { depthTexture });
}

const target = (mipmaps: boolean): WebGLRenderTarget =>
  new WebGLRenderTarget(SIZE, SIZE, {
    format: RGFormat,
    type: HalfFloatType,
    minFilter: mipmaps ? LinearMipmapLinearFilter : LinearFilter,
    magFilter: LinearFilter,
    generateMipmaps: mipmaps,
    depthBuffer: false,
  });

export class NearestDepths {
  private readonly averaging = new FullScreenPass<{
    depths: DepthTexture | null;
    range: readonly [near: number, far: number, first: number];
  }>(meanFragment, { depths: null, range: [0, 0, 0] });
  private readonly taking = new FullScreenPass<{
    means: Texture | null;
    levels: readonly [sitter: number, room: number];
  }>(nearestFragment, { means: null, levels: [0, 0] });
  private readonly means = target(true);

  /**
   * Reads a lamp's shadow map. `first`: depth of the first thing that may cast a shadow; `widths`: how
   * wide to look around each point, at the sitter and in the room, as shares of the map's side.
   */
  read(
    renderer: WebGLRenderer,
    light: SpotLight,
    first: number,
    widths: readonly [sitter: number, room: number],
    into: WebGLRenderTarget,
  ): void {
    const map = light.shadow.map?.depthTexture;
    if (!map) return;
    const copy = depthCopy(light.shadow.mapSize.x);
    const depths = copy.depthTexture as DepthTexture;
    renderer.initRenderTarget(copy);
    renderer.copyTextureToTexture(map, depths);
    const { near, far } = light.shadow.camera;
    this.averaging.set({ depths, range: [near, far, first] });
    this.averaging.run(renderer, this.means);
    copy.dispose();
    const level = (width: number) => Math.max(0.5, Math.log2(width * SIZE));
    this.taking.set({ means: this.means.texture, levels: [level(widths[0]), level(widths[1])] });
    this.taking.run(renderer, into);
  }

  /** A texture for one lamp, to be read into. */
  static texture = (): WebGLRenderTarget => target(false);

  dispose(): void {
    this.means.dispose();
    this.averaging.dispose();
    this.taking.dispose();
  }
}
