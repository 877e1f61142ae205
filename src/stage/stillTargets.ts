/** What one tile of a still is drawn into; as large as a tile, whatever the picture's size. */
import {
  FloatType,
  HalfFloatType,
  NearestFilter,
  NoColorSpace,
  type RenderTargetOptions,
  type TextureDataType,
  UnsignedByteType,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';

const targetOptions = (type: TextureDataType, depthBuffer: boolean): RenderTargetOptions => ({
  type,
  colorSpace: NoColorSpace,
  minFilter: NearestFilter,
  magFilter: NearestFilter,
  generateMipmaps: false,
  depthBuffer,
});

export class StillTargets {
  readonly sample: WebGLRenderTarget;
  readonly sum: WebGLRenderTarget;
  readonly print: WebGLRenderTarget;

  constructor(renderer: WebGLRenderer, width: number, height: number) {
    const gl = renderer.getContext();
    const float = gl.getExtension('EXT_color_buffer_float') && gl.getExtension('EXT_float_blend');
    const target = (type: TextureDataType, depthBuffer = false) =>
      new WebGLRenderTarget(width, height, targetOptions(type, depthBuffer));
    this.sample = target(HalfFloatType, true);
    this.sum = target(float ? FloatType : HalfFloatType);
    this.print = target(UnsignedByteType);
    // It is read from before it is first drawn into.
    renderer.initRenderTarget(this.print);
  }

  dispose(): void {
    for (const target of [this.sample, this.sum, this.print]) target.dispose();
  }
}
