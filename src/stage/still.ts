/** One picture rendered at any size, in tiles that the graphics processor can hold. */
import {
  FloatType,
  HalfFloatType,
  NearestFilter,
  NoColorSpace,
  type RenderTargetOptions,
  type Scene,
  type TextureDataType,
  UnsignedByteType,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { jitterFrustum, partOfFrustum } from '../optics/framing';
import type { Camera } from '../optics/types';
import type { DepthRange } from './depthRange';
import type { LampUniforms } from './lampUniforms';
import { drawLook, type Look } from './looks';
import type { Materials } from './materials';
import { OutputPass } from './outputPass';
import { aim, bareCamera } from './projection';
import { pixelOffsets } from './samples';
import { planTiles, type Tile, tilePart } from './tiles';

export interface StillOptions {
  /** Views averaged for each pixel, each offset within it. */
  readonly samples?: number;
  /** Rows in a band handed on; the last may be lower. */
  readonly bandHeight?: number;
  /** Longest side of a tile, pixels; the graphics processor may ask for less. */
  readonly tileSide?: number;
  readonly signal?: AbortSignal;
  /** Share of the pixels rendered, 0..1. */
  readonly onProgress?: (share: number) => void;
}

/** What the still is taken of; `current` is false once the scene has changed or the context is lost. */
export interface StillSubject {
  readonly renderer: WebGLRenderer;
  readonly scene: Scene;
  readonly materials: Materials;
  readonly uniforms: LampUniforms;
  readonly look: Look;
  readonly range: DepthRange;
  readonly prepare: () => void;
  readonly current: () => boolean;
}

/** The scene changed, or its graphics context was lost, while a still was being rendered. */
export class StillInterrupted extends Error {
  override readonly name = 'StillInterrupted';
}

/** Unless told otherwise. */
export const SAMPLES = 8;
const GOLDEN = 0.6180339887498949;
const LONGEST_TILE = 2048;
/** 32 MiB of RGBA for a row of tiles. */
const ROW_AREA = 8 * 1024 * 1024;

const targetOptions = (type: TextureDataType, more: RenderTargetOptions): RenderTargetOptions => ({
  type,
  colorSpace: NoColorSpace,
  minFilter: NearestFilter,
  magFilter: NearestFilter,
  generateMipmaps: false,
  depthBuffer: false,
  ...more,
});

class Targets {
  readonly sample: WebGLRenderTarget;
  readonly sum: WebGLRenderTarget;
  readonly print: WebGLRenderTarget;

  constructor(renderer: WebGLRenderer, width: number, height: number) {
    const gl = renderer.getContext();
    const float = gl.getExtension('EXT_color_buffer_float') && gl.getExtension('EXT_float_blend');
    this.sample = new WebGLRenderTarget(
      width,
      height,
      targetOptions(HalfFloatType, {
        depthBuffer: true,
      }),
    );
    this.sum = new WebGLRenderTarget(
      width,
      height,
      targetOptions(float ? FloatType : HalfFloatType, {}),
    );
    this.print = new WebGLRenderTarget(width, height, targetOptions(UnsignedByteType, {}));
  }

  dispose(): void {
    for (const target of [this.sample, this.sum, this.print]) target.dispose();
  }
}

/** Lets the page breathe between tiles: input, painting, a press on cancel. */
const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

class StillRenderer {
  private readonly camera = bareCamera();
  private readonly output: OutputPass;
  private readonly targets: Targets;

  constructor(
    private readonly subject: StillSubject,
    private readonly view: Camera,
    private readonly width: number,
    private readonly height: number,
    private readonly samples: number,
    largest: Tile,
  ) {
    this.output = new OutputPass(subject.renderer);
    this.targets = new Targets(subject.renderer, largest.width, largest.height);
  }

  /** Draws one tile and reads it, bottom row first. The screen's state is put back. */
  tile(tile: Tile, into: Uint8Array): void {
    const { renderer, uniforms } = this.subject;
    this.subject.prepare();
    for (const target of Object.values(this.targets) as WebGLRenderTarget[]) {
      target.setSize(tile.width, tile.height);
    }
    renderer.setClearColor(0x000000, 0);
    renderer.setRenderTarget(this.targets.sum);
    renderer.clear();
    uniforms.pixelOrigin.value.set(tile.x, this.height - tile.y - tile.height);
    pixelOffsets(this.samples).forEach(([right, up], index) => {
      const turn = (index * 2 * Math.PI * GOLDEN) % (2 * Math.PI);
      uniforms.shadowTurn.value.set(Math.cos(turn), Math.sin(turn));
      this.sample(tile, right, up);
    });
    uniforms.shadowTurn.value.set(1, 0);
    uniforms.pixelOrigin.value.set(0, 0);
    this.output.develop(this.targets.sum.texture, this.targets.print);
    renderer.readRenderTargetPixels(this.targets.print, 0, 0, tile.width, tile.height, into);
    renderer.setRenderTarget(null);
  }

  private sample(tile: Tile, right: number, up: number): void {
    const { renderer, scene, materials, look, range } = this.subject;
    const frustum = partOfFrustum(this.view.frustum, tilePart(tile, this.width, this.height));
    const jittered = jitterFrustum(frustum, right / tile.width, up / tile.height);
    aim(this.camera, { ...this.view, frustum: jittered }, range);
    renderer.setRenderTarget(this.targets.sample);
    renderer.setClearColor(0x000000, 1);
    renderer.clear();
    drawLook(renderer, scene, this.camera, materials, look);
    this.output.add(this.targets.sample.texture, 1 / this.samples, this.targets.sum);
  }

  dispose(): void {
    this.output.dispose();
    this.targets.dispose();
  }
}

/** Lays a tile, read bottom row first, into a row of tiles kept top row first. */
function lay(pixels: Uint8Array, tile: Tile, row: Uint8Array, width: number): void {
  for (let y = 0; y < tile.height; y++) {
    const from = (tile.height - 1 - y) * tile.width * 4;
    row.set(pixels.subarray(from, from + tile.width * 4), (y * width + tile.x) * 4);
  }
}

/**
 * Renders a picture and hands it on in bands of RGBA rows, top down, straight alpha of 255. Memory does
 * not grow with the picture's height.
 * @throws RangeError for a size that is not in whole pixels, AbortError when the signal is raised,
 * StillInterrupted when the scene changes meanwhile or the graphics context is lost.
 */
export async function* renderStill(
  subject: StillSubject,
  view: Camera,
  width: number,
  height: number,
  options: StillOptions = {},
): AsyncGenerator<Uint8Array<ArrayBuffer>, void, undefined> {
  const side = Math.min(
    options.tileSide ?? LONGEST_TILE,
    subject.renderer.capabilities.maxTextureSize,
  );
  const rows = planTiles(width, height, { side, rowArea: ROW_AREA });
  const tiles = rows.flat();
  const largest: Tile = {
    x: 0,
    y: 0,
    width: Math.max(...tiles.map((tile) => tile.width)),
    height: Math.max(...tiles.map((tile) => tile.height)),
  };
  const samples = Math.max(1, Math.round(options.samples ?? SAMPLES));
  const still = new StillRenderer(subject, view, width, height, samples, largest);
  const pixels = new Uint8Array(largest.width * largest.height * 4);
  let done = 0;
  try {
    let pending = new Uint8Array(0);
    for (const row of rows) {
      const rowHeight = (row[0] as Tile).height;
      const lines = new Uint8Array(pending.length + width * rowHeight * 4);
      lines.set(pending);
      for (const tile of row) {
        await breath();
        options.signal?.throwIfAborted();
        if (!subject.current())
          throw new StillInterrupted('the scene changed while the still was made');
        still.tile(tile, pixels);
        lay(pixels, tile, lines.subarray(pending.length), width);
        done += tile.width * tile.height;
        options.onProgress?.(done / (width * height));
      }
      const band = width * 4 * (options.bandHeight ?? rowHeight);
      const last = row === rows.at(-1);
      let from = 0;
      for (; from + band <= lines.length; from += band) yield lines.slice(from, from + band);
      pending = lines.slice(from);
      if (last && pending.length > 0) yield pending;
    }
  } finally {
    still.dispose();
  }
}
