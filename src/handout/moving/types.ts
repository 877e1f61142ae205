/** What a moving page holds; nothing else of the session goes into it. */

/** A rendered picture with its caption. */
export interface MovingPicture {
  /** JPEG or WebP as a data address. */
  readonly image: string;
  /** What it shows, for whoever does not see it. */
  readonly alt: string;
  readonly title: string;
  readonly details: readonly string[];
  /** A value for each row of the readings, as shown. */
  readonly cells: readonly string[];
}

/** A place of the move, with all that follows the slider. */
export interface MovingFrame extends MovingPicture {
  /** Metres, exactly as rendered. */
  readonly standpoint: number;
  /** The same as shown. */
  readonly place: string;
  /** What changes, in one sentence. */
  readonly changes: string;
  /** The sentence of each row. */
  readonly says: readonly string[];
}

export interface MovingLabels {
  readonly slider: string;
  readonly hint: string;
  readonly measured: string;
  /** Where scripts do not run. */
  readonly noScript: string;
}

export interface MovingContent {
  /** BCP 47. */
  readonly language: string;
  readonly title: string;
  readonly lead: string;
  readonly labels: MovingLabels;
  /** Pixels of every picture. */
  readonly size: { readonly width: number; readonly height: number };
  /** Letters of the picture that stays and of the one that moves. */
  readonly letters: { readonly start: string; readonly moving: string };
  /** Their CSS colours on white. */
  readonly accents: { readonly start: string; readonly moving: string };
  /** The ends of the move, as shown below the slider. */
  readonly ends: readonly [string, string];
  /** The picture that stays beside the moving one, where one does. */
  readonly start: MovingPicture | null;
  readonly rows: readonly string[];
  readonly frames: readonly [MovingFrame, ...MovingFrame[]];
  /** The typeface, WOFF2 as data addresses; whoever has no such letters falls back on what is there. */
  readonly fonts: readonly { readonly weight: number; readonly address: string }[];
  /** Cautions, and how it was computed. */
  readonly notes: readonly string[];
}
