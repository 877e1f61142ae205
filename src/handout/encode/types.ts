/** What every writer of a picture file has in common. */

export const FORMATS = ['png', 'jpeg', 'webp'] as const;
export type Format = (typeof FORMATS)[number];

export const MIME: Readonly<Record<Format, string>> = {
  png: 'image/png',
  jpeg: 'image/jpeg',
  webp: 'image/webp',
};

export interface RowWriter {
  /** Adds whole rows, top down, as RGBA; alpha is dropped. The writer may keep the buffer. */
  write(rgba: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Closes the file. Fails if the rows do not make up the height. */
  finish(): Promise<Blob>;
  /** Gives up; nothing remains. */
  abort(): Promise<void>;
}

/** Counts the rows that were written. @throws RangeError when they are not whole or not as many as asked. */
export class RowCount {
  private rows = 0;

  constructor(
    private readonly width: number,
    private readonly height: number,
  ) {}

  /** How many rows these bytes hold. */
  add(rgba: Uint8Array): number {
    const count = rgba.length / (4 * this.width);
    if (!Number.isInteger(count)) throw new RangeError('The rows are not whole.');
    this.rows += count;
    return count;
  }

  close(): void {
    if (this.rows !== this.height)
      throw new RangeError(`${this.rows} rows were written of ${this.height}.`);
  }
}
