/**
 * So many random bytes as hexadecimal digits. Unlike crypto.randomUUID, this is there on a page without a
 * certificate too.
 */
export const randomHex = (bytes: number): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(bytes)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
