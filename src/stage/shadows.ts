/** The shadow maps, drawn once for all pictures and kept until the sitter, the light or the room changes. */
import {
  Camera,
  DepthFormat,
  DepthTexture,
  HalfFloatType,
  LinearFilter,
  LinearMipmapLinearFilter,
  NearestFilter,
  RGFormat,
  type Scene,
  type SpotLight,
  UnsignedIntType,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { FullScreenPass } from './fullScreenPass';
import { type LampUniforms, SHADOWED_LAMPS, setLamp } from './lampUniforms';
import { LAYER } from './layers';
import { BLURRED_SIZE, GENTLE, STEEP } from './shaders/softShadow';

export interface ShadowedLamp {
  readonly light: SpotLight;
  readonly diameter: number;
  /** Depth of the first thing that may cast a shadow, metres. */
  readonly nearest: number;
}

const blurFragment = /* glsl */ `
uniform sampler2D depths;
uniform vec3 range;
void main() {
	ivec2 size = textureSize( depths, 0 );
	int block = max( size.x / ${BLURRED_SIZE}, 1 );
	ivec2 corner = ivec2( gl_FragCoord.xy ) * block;
	float A = range.y / ( range.y - range.x );
	vec2 sum = vec2( 0.0 );
	for ( int y = 0; y < block; y ++ ) {
		for ( int x = 0; x < block; x ++ ) {
			float depth = A * range.x / ( A - texelFetch( depths, corner + ivec2( x, y ), 0 ).r ) - range.z;
			sum += exp( vec2( ${STEEP.rate}.0, ${GENTLE.rate}.0 ) * ( vec2( ${STEEP.unit}, ${GENTLE.unit} ) - max( depth, 0.0 ) ) );
		}
	}
	gl_FragColor = vec4( sum / float( block * block ), 0.0, 1.0 );
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

const blurredTarget = (): WebGLRenderTarget =>
  new WebGLRenderTarget(BLURRED_SIZE, BLURRED_SIZE, {
    format: RGFormat,
    type: HalfFloatType,
    minFilter: LinearMipmapLinearFilter,
    magFilter: LinearFilter,
    generateMipmaps: true,
    depthBuffer: false,
  });

export class ShadowMaps {
  private readonly blurred = Array.from({ length: SHADOWED_LAMPS }, blurredTarget);
  private readonly pass = new FullScreenPass<{
    depths: DepthTexture | null;
    range: readonly [near: number, far: number, first: number];
  }>(blurFragment, { depths: null, range: [0, 0, 0] });
  private readonly onlyShadows = new Camera();

  constructor(private readonly uniforms: LampUniforms) {
    this.onlyShadows.layers.set(LAYER.none);
  }

  update(renderer: WebGLRenderer, scene: Scene, lamps: readonly ShadowedLamp[]): void {
    renderer.shadowMap.needsUpdate = true;
    renderer.render(scene, this.onlyShadows);
    lamps.forEach((lamp, index) => {
      const blurred = this.blurred[index];
      const map = lamp.light.shadow.map?.depthTexture;
      if (!map || !blurred) return;
      const copy = depthCopy(lamp.light.shadow.mapSize.x);
      renderer.initRenderTarget(copy);
      renderer.copyTextureToTexture(map, copy.depthTexture as DepthTexture);
      const { near, far } = lamp.light.shadow.camera;
      this.pass.set({ depths: copy.depthTexture, range: [near, far, lamp.nearest] });
      this.pass.run(renderer, blurred);
      copy.dispose();
      this.uniforms.lampDepths.value[index] = blurred.texture;
      setLamp(this.uniforms, index, lamp.light, lamp.diameter, lamp.nearest);
    });
    renderer.setRenderTarget(null);
  }

  dispose(): void {
    for (const target of this.blurred) target.dispose();
    this.pass.dispose();
  }
}
