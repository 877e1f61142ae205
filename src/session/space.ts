/** Whether the browser's storage is nearly full, as its own estimate tells. */

/** Of what the browser allows this page, a share and bytes, from which a warning is due. By eye, no source. */
const FULL_SHARE = 0.8;
const LEAST_LEFT = 8e6;

export interface Space {
  /** Bytes that this page keeps, and may keep. */
  readonly usage: number;
  readonly quota: number;
}

/** An estimate with both of its figures; null where the browser gives none. */
export const spaceOf = ({ usage, quota }: StorageEstimate): Space | null =>
  usage !== undefined && quota !== undefined && quota > 0 ? { usage, quota } : null;

export const isNearlyFull = ({ usage, quota }: Space): boolean =>
  usage / quota > FULL_SHARE || quota - usage < LEAST_LEFT;
