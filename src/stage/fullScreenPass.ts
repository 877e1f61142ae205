import {
  type Blending,
  Camera,
  Mesh,
  NoBlending,
  PlaneGeometry,
  Scene,
  ShaderMaterial,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';

const vertexShader = /* glsl */ `
varying vec2 vUv;
void main() {
	vUv = uv;
	gl_Position = vec4( position.xy, 0.0, 1.0 );
}
`;

/** A shader run once over every pixel of a target. */
export class FullScreenPass<Values extends Readonly<Record<string, unknown>>> {
  private readonly material: ShaderMaterial;
  private readonly scene = new Scene();
  private readonly camera = new Camera();
  private readonly sheet: Mesh<PlaneGeometry, ShaderMaterial>;

  constructor(fragmentShader: string, values: Values, blending: Blending = NoBlending) {
    this.material = new ShaderMaterial({
      vertexShader,
      fragmentShader,
      uniforms: Object.fromEntries(
        Object.entries(values).map(([name, value]) => [name, { value }]),
      ),
      depthTest: false,
      depthWrite: false,
      toneMapped: false,
      premultipliedAlpha: true,
      blending,
    });
    this.sheet = new Mesh(new PlaneGeometry(2, 2), this.material);
    this.sheet.frustumCulled = false;
    this.scene.add(this.sheet);
  }

  set(values: Partial<Values>): void {
    for (const [name, value] of Object.entries(values)) {
      const uniform = this.material.uniforms[name];
      if (uniform) uniform.value = value;
    }
  }

  run(renderer: WebGLRenderer, target: WebGLRenderTarget): void {
    renderer.setRenderTarget(target);
    renderer.render(this.scene, this.camera);
  }

  dispose(): void {
    this.material.dispose();
    this.sheet.geometry.dispose();
  }
}
