/**
 * From linear light to the picture: samples are averaged in a float target and the tone curve is applied
 * once. The curve and the encoding are the renderer's own text, the same that the materials use on screen.
 */
import {
  AdditiveBlending,
  ShaderChunk,
  type Texture,
  Vector2,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';
import { FullScreenPass } from './fullScreenPass';
import { replaceOnce } from './shaders/patch';

/** The stated tone curve is Khronos neutral, which keeps base colours and greys as they are. */
export const EXPOSURE = 1.14;

/** A sample brighter than this is a mirrored lamp; more would only make its edge ragged. */
const BRIGHTEST = 6;

const addFragment = /* glsl */ `
uniform sampler2D light;
uniform float share;
varying vec2 vUv;
void main() {
	gl_FragColor = vec4( min( texture2D( light, vUv ).rgb, vec3( ${BRIGHTEST}.0 ) ) * share, share );
}
`;

/** The renderer's dither, by the place in the picture instead of the tile: tiles join. */
const dithering = replaceOnce(
  ShaderChunk.dithering_pars_fragment,
  'gl_FragCoord.xy',
  'gl_FragCoord.xy + pixelOrigin',
);

const developFragment = /* glsl */ `
#include <tonemapping_pars_fragment>
#include <common>
uniform vec2 pixelOrigin;
${dithering}
uniform sampler2D light;
varying vec2 vUv;
void main() {
	vec3 toned = NeutralToneMapping( texture2D( light, vUv ).rgb );
	gl_FragColor = vec4( sRGBTransferOETF( vec4( toned, 1.0 ) ).rgb, 1.0 );
	#include <dithering_fragment>
}
`;

export class OutputPass {
  private readonly adding = new FullScreenPass<{ light: Texture | null; share: number }>(
    addFragment,
    { light: null, share: 1 },
    AdditiveBlending,
  );
  private readonly developing = new FullScreenPass<{
    light: Texture | null;
    toneMappingExposure: number;
    pixelOrigin: Vector2;
  }>(`#define DITHERING\n${developFragment}`, {
    light: null,
    toneMappingExposure: EXPOSURE,
    pixelOrigin: new Vector2(),
  });

  constructor(private readonly renderer: WebGLRenderer) {}

  /** Adds a share of one sample to a sum. */
  add(sample: Texture, share: number, sum: WebGLRenderTarget): void {
    this.adding.set({ light: sample, share });
    this.adding.run(this.renderer, sum);
  }

  /** Tone curve and sRGB encoding of a sum that lies at `pixelOrigin` in its picture, from the lower left. */
  develop(sum: Texture, print: WebGLRenderTarget, pixelOrigin: Vector2): void {
    this.developing.set({ light: sum, pixelOrigin });
    this.developing.run(this.renderer, print);
  }

  dispose(): void {
    this.adding.dispose();
    this.developing.dispose();
  }
}
