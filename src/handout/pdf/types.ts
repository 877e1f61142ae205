/** A page as it is put on paper: what is drawn where, and what it means. Lengths are points, y down. */

/** [a, b, c, d, e, f] of SVG and PDF alike. */
export type Matrix = readonly [number, number, number, number, number, number];

export interface Ink {
  /** #rrggbb */
  readonly colour: string;
  /** 0..1 */
  readonly opacity: number;
}

export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly baseline: number;
  readonly size: number;
  readonly bold: boolean;
  /** As wide as on screen. */
  readonly width: number;
  readonly ink: Ink;
  readonly matrix?: Matrix;
}

/** A filled or drawn path, in coordinates of its own. */
export interface PathMark {
  readonly kind: 'path';
  /** Path data of SVG. */
  readonly d: string;
  readonly matrix: Matrix;
  readonly fill: Ink | null;
  readonly stroke: (Ink & { readonly width: number; readonly dash: readonly number[] }) | null;
  readonly cap: 'butt' | 'round' | 'square';
  readonly join: 'miter' | 'round' | 'bevel';
  /** Paths that it is cut to, each with its matrix. */
  readonly clips: readonly { readonly d: string; readonly matrix: Matrix }[];
}

export interface ImageMark {
  readonly kind: 'image';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly element: HTMLImageElement;
}

export type Mark = TextMark | PathMark | ImageMark;

/** Standard structure types of ISO 32000-1, 14.8.4. */
export type Tag =
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Caption'
  | 'Figure'
  | 'Artifact';

export interface Block {
  readonly tag: Tag;
  readonly alt?: string;
  readonly parts: readonly (Mark | Block)[];
}

export interface PaperPage {
  readonly width: number;
  readonly height: number;
  /** For the bookmarks. */
  readonly title: string;
  readonly content: Block;
}
