/** One picture rendered at any size, in tiles that the graphics processor can hold. */
import { type Scene, Vector2, type WebGLRenderer } from 'three';
import { type Aperture, throughPupil } from '../optics/aperture';
import { jitterFrustum, partOfFrustum } from '../optics/framing';
import type { Camera } from '../optics/types';
import { metres } from '../optics/units';
import { inBands } from './bands';
import type { DepthRange } from './depthRange';
import type { LampUniforms } from './lampUniforms';
import { drawLook, type Look } from './looks';
import type { Materials } from './materials';
import { OutputPass } from './outputPass';
import { Pace } from './pace';
import { aim, bareCamera } from './projection';
import { type Sample, samplesOf } from './samples';
import { APERTURE_SAMPLES, SAMPLES, StillInterrupted, type StillOptions } from './stillOptions';
import { StillTargets } from './stillTargets';
import { largestOf, planTiles, type Tile, tilePart } from './tiles';

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

/** A view of so small a tile is drawn in a part of a second even by a rasteriser in software. */
const TILE_SIDE = 512;
/** 8 MiB of RGBA for a row of tiles. */
const ROW_AREA = 2 * 1024 * 1024;

/** What is asked for, settled. */
interface Plan {
  readonly width: number;
  readonly height: number;
  readonly samples: readonly Sample[];
  readonly aperture: Aperture | null;
  readonly largest: Pick<Tile, 'width' | 'height'>;
}

class StillRenderer {
  private readonly camera = bareCamera();
  private readonly output: OutputPass;
  private readonly targets: StillTargets;
  private readonly pace = new Pace();
  private readonly pixel = new Uint8Array(4);

  constructor(
    private readonly subject: StillSubject,
    private readonly view: Camera,
    private readonly plan: Plan,
  ) {
    const { width, height } = plan.largest;
    this.output = new OutputPass(subject.renderer);
    this.targets = new StillTargets(subject.renderer, width, height);
  }

  /**
   * Draws one tile and reads it, bottom row first. The page gets turns meanwhile, the screen's state put
   * back: `rested` is called after each with the share of the tile that is drawn, and may throw.
   */
  async tile(tile: Tile, into: Uint8Array, rested: (share: number) => void): Promise<void> {
    const { renderer } = this.subject;
    const { samples, largest } = this.plan;
    const { sum, print } = this.targets;
    // The targets are of one size: what they hold beyond a smaller tile is not read.
    const drawn = { ...tile, ...largest };
    const origin = new Vector2(drawn.x, this.plan.height - drawn.y - drawn.height);
    renderer.setRenderTarget(sum);
    renderer.setClearColor(0x000000, 0);
    renderer.clear();
    for (let from = 0; from < samples.length; ) {
      this.pace.begin();
      const piece = samples.slice(from, from + this.pace.piece);
      this.add(drawn, piece, origin);
      from += piece.length;
      await this.pace.rest(piece.length);
      rested(from / samples.length);
    }
    this.output.develop(sum.texture, print, origin);
    const rise = drawn.height - tile.height;
    renderer.readRenderTargetPixels(print, 0, rise, tile.width, tile.height, into);
    renderer.setRenderTarget(null);
  }

  /** Adds some views to the sum, and waits until they are drawn. */
  private add(tile: Tile, samples: readonly Sample[], origin: Vector2): void {
    const { renderer, uniforms, prepare } = this.subject;
    prepare();
    uniforms.pixelOrigin.value.copy(origin);
    for (const sample of samples) {
      uniforms.shadowTurn.value.set(Math.cos(sample.turn), Math.sin(sample.turn));
      this.draw(tile, sample);
      this.output.add(this.targets.sample.texture, 1 / this.plan.samples.length, this.targets.sum);
    }
    uniforms.shadowTurn.value.set(1, 0);
    uniforms.pixelOrigin.value.set(0, 0);
    renderer.readRenderTargetPixels(this.targets.print, 0, 0, 1, 1, this.pixel);
    renderer.setRenderTarget(null);
  }

  private draw(tile: Tile, { pixel, lens }: Sample): void {
    const { renderer, scene, materials, look, range } = this.subject;
    const { width, height, aperture } = this.plan;
    const view = aperture ? through(this.view, lens, aperture) : this.view;
    const part = partOfFrustum(view.frustum, tilePart(tile, width, height));
    const frustum = jitterFrustum(part, pixel[0] / tile.width, pixel[1] / tile.height);
    aim(this.camera, { ...view, frustum }, range);
    renderer.setRenderTarget(this.targets.sample);
    renderer.setClearColor(0x000000, 1);
    renderer.clear();
    drawLook(renderer, scene, this.camera, materials, look);
  }

  dispose(): void {
    this.output.dispose();
    this.targets.dispose();
  }
}

function through(view: Camera, [right, up]: Sample['lens'], aperture: Aperture): Camera {
  const radius = aperture.diameter / 2;
  const point = { right: metres(right * radius), up: metres(up * radius) };
  return throughPupil(view, point, aperture.focusDepth);
}

/** Lays a tile, read bottom row first, into a row of tiles kept top row first. */
function lay(pixels: Uint8Array, tile: Tile, row: Uint8Array, width: number): void {
  for (let y = 0; y < tile.height; y++) {
    const from = (tile.height - 1 - y) * tile.width * 4;
    row.set(pixels.subarray(from, from + tile.width * 4), (y * width + tile.x) * 4);
  }
}

/** Renders rows of tiles, top down. What is handed on is used again for the next row. */
async function* renderRows(
  subject: StillSubject,
  view: Camera,
  rows: readonly (readonly Tile[])[],
  plan: Plan,
  { signal, onProgress }: StillOptions,
): AsyncGenerator<Uint8Array, void, undefined> {
  const { width, height, largest } = plan;
  const check = () => {
    signal?.throwIfAborted();
    if (!subject.current())
      throw new StillInterrupted('what is shown changed while it was being rendered; try again');
  };
  check();
  const still = new StillRenderer(subject, view, plan);
  const pixels = new Uint8Array(largest.width * largest.height * 4);
  const lines = new Uint8Array(width * largest.height * 4);
  let done = 0;
  try {
    for (const row of rows) {
      for (const tile of row) {
        const area = tile.width * tile.height;
        await still.tile(tile, pixels, (share) => {
          check();
          onProgress?.((done + share * area) / (width * height));
        });
        lay(pixels, tile, lines, width);
        done += area;
      }
      yield lines.subarray(0, width * (row[0] as Tile).height * 4);
      check();
    }
  } finally {
    still.dispose();
  }
}

/**
 * Renders a picture and hands it on in bands of RGBA rows, top down, straight alpha of 255. Memory does
 * not grow with the picture: a tile on the graphics processor, a row of tiles and a band outside it. The
 * page gets a turn every tenth of a second or, where one view of a tile takes longer, after each view.
 * The same picture every time, however it is cut into tiles.
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
  const { aperture = null, tileSide = TILE_SIDE } = options;
  const rows = planTiles(width, height, { side: tileSide, rowArea: ROW_AREA });
  const largest = largestOf(rows);
  const count = options.samples ?? (aperture ? APERTURE_SAMPLES : SAMPLES);
  const samples = samplesOf(Math.max(1, Math.round(count)));
  const plan = { width, height, samples, aperture, largest };
  const pieces = renderRows(subject, view, rows, plan, options);
  yield* inBands(pieces, width * 4 * (options.bandHeight ?? largest.height));
}
