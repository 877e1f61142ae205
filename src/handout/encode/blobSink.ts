/**
 * Collects a file's bytes. Whenever some megabytes have gathered they become a Blob, which the browser keeps
 * outside the page's memory (and on disk when there are many), so that memory stays flat.
 */
const GATHERED = 4 * 1024 * 1024;

export class BlobSink {
  private blobs: Blob[] = [];
  private bytes: Uint8Array<ArrayBuffer>[] = [];
  private size = 0;

  push(...parts: readonly Uint8Array<ArrayBuffer>[]): void {
    for (const part of parts) {
      this.bytes.push(part);
      this.size += part.length;
    }
    if (this.size < GATHERED) return;
    this.blobs.push(new Blob(this.bytes));
    this.bytes = [];
    this.size = 0;
  }

  blob(type: string): Blob {
    return new Blob([...this.blobs, ...this.bytes], { type });
  }

  clear(): void {
    this.blobs = [];
    this.bytes = [];
    this.size = 0;
  }
}
