/**
 * Baseline JPEG (ITU-T T.81) written as its rows arrive: Huffman tables of annex K, so that one pass is
 * enough, and colour at full resolution. Own code because the encoders for browsers that are kept up want
 * the whole picture first.
 */
import { BitWriter, huffmanCodes } from './bits';
import { forwardDct, quantisers } from './dct';
import { frameHeader, huffmanTables, marker, quantisationTables, scanHeader } from './segments';
import { HUFFMAN, quantisation, ZIGZAG } from './tables';

const BLOCK = 8;
const END_OF_BLOCK = 0x00;
const SIXTEEN_NOUGHTS = 0xf0;

/** One of the three: how it is quantised and coded, and its last mean. */
interface Component {
  readonly block: Float64Array;
  readonly quantiser: Float64Array;
  readonly dc: Uint32Array;
  readonly ac: Uint32Array;
  mean: number;
}

const codes = {
  dcLuminance: huffmanCodes(HUFFMAN.dcLuminance),
  acLuminance: huffmanCodes(HUFFMAN.acLuminance),
  dcChrominance: huffmanCodes(HUFFMAN.dcChrominance),
  acChrominance: huffmanCodes(HUFFMAN.acChrominance),
};

export class JpegEncoder {
  private readonly bits = new BitWriter();
  private readonly tables: readonly [Uint8Array, Uint8Array];
  private readonly components: readonly [Component, Component, Component];
  private readonly quantised = new Int32Array(64);
  /** Rows that do not yet make up a row of blocks. */
  private readonly pending: Uint8Array;
  private pendingRows = 0;

  /** @param quality 1..100 */
  constructor(
    private readonly width: number,
    private readonly height: number,
    quality: number,
  ) {
    this.pending = new Uint8Array(4 * width * BLOCK);
    this.tables = quantisation(quality);
    const component = (table: Uint8Array, dc: Uint32Array, ac: Uint32Array): Component => ({
      block: new Float64Array(64),
      quantiser: quantisers(table),
      dc,
      ac,
      mean: 0,
    });
    const [luminance, chrominance] = this.tables;
    this.components = [
      component(luminance, codes.dcLuminance, codes.acLuminance),
      component(chrominance, codes.dcChrominance, codes.acChrominance),
      component(chrominance, codes.dcChrominance, codes.acChrominance),
    ];
  }

  /** All before the first row; `segments` are application segments, whole. */
  begin(segments: readonly Uint8Array<ArrayBuffer>[]): Uint8Array<ArrayBuffer>[] {
    return [
      marker('start'),
      ...segments,
      quantisationTables(this.tables),
      frameHeader(this.width, this.height),
      huffmanTables(),
      scanHeader(),
    ];
  }

  /** Adds whole rows of RGBA, top down. */
  rows(rgba: Uint8Array): Uint8Array<ArrayBuffer> {
    const stride = 4 * this.width;
    for (let from = 0; from < rgba.length; from += stride) {
      this.pending.set(rgba.subarray(from, from + stride), stride * this.pendingRows);
      this.pendingRows += 1;
      if (this.pendingRows === BLOCK) this.encodePending();
    }
    return this.bits.take();
  }

  /** The last blocks, filled with the last row, and the end. */
  end(): Uint8Array<ArrayBuffer>[] {
    if (this.pendingRows > 0) {
      const stride = 4 * this.width;
      const last = this.pending.slice(stride * (this.pendingRows - 1), stride * this.pendingRows);
      while (this.pendingRows < BLOCK) this.pending.set(last, stride * this.pendingRows++);
      this.encodePending();
    }
    this.bits.pad();
    return [this.bits.take(), marker('end')];
  }

  private encodePending(): void {
    for (let x = 0; x < this.width; x += BLOCK) {
      this.convert(x);
      for (const component of this.components) this.encodeBlock(component);
    }
    this.pendingRows = 0;
  }

  /** RGB to the three of JFIF (ITU-T T.871: luma of BT.601 at full range); past the edge, its last pixel. */
  private convert(left: number): void {
    const { pending, width } = this;
    const [luma, blue, red] = this.components.map(({ block }) => block) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    for (let y = 0, i = 0; y < BLOCK; y++) {
      for (let x = 0; x < BLOCK; x++, i++) {
        const at = 4 * (y * width + Math.min(width - 1, left + x));
        const r = pending[at] as number;
        const g = pending[at + 1] as number;
        const b = pending[at + 2] as number;
        luma[i] = 0.299 * r + 0.587 * g + 0.114 * b - 128;
        blue[i] = -0.168736 * r - 0.331264 * g + 0.5 * b;
        red[i] = 0.5 * r - 0.418688 * g - 0.081312 * b;
      }
    }
  }

  private encodeBlock(component: Component): void {
    const { block, quantiser, dc, ac } = component;
    const { bits, quantised } = this;
    forwardDct(block);
    let last = 0;
    for (let k = 0; k < 64; k++) {
      const i = ZIGZAG[k] as number;
      const value = Math.round((block[i] as number) * (quantiser[i] as number));
      quantised[k] = value;
      if (value !== 0) last = k;
    }
    const mean = quantised[0] as number;
    const step = mean - component.mean;
    component.mean = mean;
    const size = 32 - Math.clz32(Math.abs(step));
    bits.code(dc[size] as number);
    this.amount(step, size);
    let noughts = 0;
    for (let k = 1; k <= last; k++) {
      const value = quantised[k] as number;
      if (value === 0) {
        noughts += 1;
        continue;
      }
      for (; noughts > 15; noughts -= 16) bits.code(ac[SIXTEEN_NOUGHTS] as number);
      const length = 32 - Math.clz32(Math.abs(value));
      bits.code(ac[(noughts << 4) | length] as number);
      this.amount(value, length);
      noughts = 0;
    }
    if (last < 63) bits.code(ac[END_OF_BLOCK] as number);
  }

  /** The bits of a value within its size (T.81 F.1.2.1.1). */
  private amount(value: number, size: number): void {
    if (size > 0) this.bits.write(value < 0 ? value + (1 << size) - 1 : value, size);
  }
}
