/** Huffman codes and the bits of a scan (T.81, annexes C and F.1.2). */
import type { HuffmanTable } from './tables';

/** The code of each value, with its length above it: `length << 16 | code`; 0 where there is none. */
export function huffmanCodes({ counts, values }: HuffmanTable): Uint32Array {
  const codes = new Uint32Array(256);
  let code = 0;
  let i = 0;
  for (const [shorter, count] of counts.entries()) {
    for (let n = 0; n < count; n++, i++, code++)
      codes[values[i] as number] = ((shorter + 1) << 16) | code;
    code <<= 1;
  }
  return codes;
}

const FIRST_SIZE = 1 << 16;

/** Collects bits into bytes; a byte of ones is followed by a nought, so that it is no marker. */
export class BitWriter {
  private bytes = new Uint8Array(FIRST_SIZE);
  private length = 0;
  /** Bits not yet written, fewer than eight after each call. */
  private held = 0;
  private heldLength = 0;

  /** At most sixteen bits. */
  write(bits: number, length: number): void {
    this.held = (this.held << length) | bits;
    this.heldLength += length;
    while (this.heldLength >= 8) {
      this.heldLength -= 8;
      this.byte((this.held >>> this.heldLength) & 0xff);
    }
    this.held &= (1 << this.heldLength) - 1;
  }

  code(code: number): void {
    this.write(code & 0xffff, code >>> 16);
  }

  /** Fills the last byte with ones. */
  pad(): void {
    if (this.heldLength > 0) this.write((1 << (8 - this.heldLength)) - 1, 8 - this.heldLength);
  }

  /** The whole bytes so far, which are then forgotten. */
  take(): Uint8Array<ArrayBuffer> {
    const taken = this.bytes.slice(0, this.length);
    this.length = 0;
    return taken;
  }

  private byte(value: number): void {
    if (this.length + 2 > this.bytes.length) {
      const larger = new Uint8Array(2 * this.bytes.length);
      larger.set(this.bytes);
      this.bytes = larger;
    }
    this.bytes[this.length++] = value;
    if (value === 0xff) this.bytes[this.length++] = 0;
  }
}
