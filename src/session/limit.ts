/** A passed limit and what would do. Words for it stand in limit-words.ts. */
import type { Lens, Refusal, RefusalReason } from '../optics/types';

/** A change that would do by itself; SI units. `atLeast` says to which side it may be exceeded. */
export interface Remedy {
  readonly change: 'standpoint' | 'frame-height' | 'focal' | 'f-number' | 'camera-height' | 'tilt';
  readonly value: number;
  readonly atLeast: boolean;
}

export interface Limit {
  readonly reason: RefusalReason | 'no-room' | 'no-clearance' | 'outside-frame';
  readonly limit: number;
  readonly asked: number;
  /** The lens whose limit it is; null when it is not a lens's. */
  readonly lens: Lens | null;
  /** Smallest changes that would do. */
  readonly remedies: readonly Remedy[];
}

export const limitFrom = (
  { reason, limit, asked }: Refusal,
  lens: Lens | null,
  remedies: readonly Remedy[],
): Limit => ({ reason, limit, asked, lens, remedies });
