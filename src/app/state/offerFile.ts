/** Hands a file to the person, under the browser's own rules for downloads. */
export function offerFile(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = name;
  anchor.click();
  // The download has taken its hold of the blob by then.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
