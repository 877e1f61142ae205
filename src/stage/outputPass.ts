/**
 * From linear light to the picture: samples are averaged in a float target and the tone curve is applied
 * once. The curve and the encoding are the renderer's own text, the same that the materials use on screen.
 */
import { AdditiveBlending, type Texture, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import { FullScreenPass } from './fullScreenPass';

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

const developFragment = /* glsl */ `
#include <tonemapping_pars_fragment>
#include <common>
#include <dithering_pars_fragment>
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
  }>(`#define DITHERING\n${developFragment}`, { light: null, toneMappingExposure: EXPOSURE });

  constructor(private readonly renderer: WebGLRenderer) {}

  /** Adds a share of one sample to a sum. */
  add(sample: Texture, share: number, sum: WebGLRenderTarget): void {
    this.adding.set({ light: sample, share });
    this.adding.run(this.renderer, sum);
  }

  /** Tone curve and sRGB encoding of a sum. */
  develop(sum: Texture, print: WebGLRenderTarget): void {
    this.developing.set({ light: sum });
    this.developing.run(this.renderer, print);
  }

  dispose(): void {
    this.adding.dispose();
    this.developing.dispose();
  }
}
