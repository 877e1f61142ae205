/** What of the document the handout is made of: its sheet, who signs it and its pages. */
import type { Orientation } from '../optics/types';

export const PAPERS = ['a4', 'letter'] as const;
export type Paper = (typeof PAPERS)[number];

/**
 * comparisons: one comparison a page; lesson: claim, comparison, numbers, exercise, with the answers on the
 * last page; client: why the camera stands where it stands; day: the plan for the day.
 */
export const TEMPLATES = ['comparisons', 'lesson', 'client', 'day'] as const;
export type Template = (typeof TEMPLATES)[number];

export const PAGE_KINDS = [
  'comparison',
  'lesson',
  'answers',
  'client',
  'day',
  'cards',
  'numbers',
  'notes',
] as const;
export type PageKind = (typeof PAGE_KINDS)[number];

/** Parts that a page can show beside its pictures and words. */
export const PAGE_PARTS = [
  'rail',
  'readings',
  'series',
  'chart',
  'room',
  'cautions',
  'computed',
] as const;
export type PagePart = (typeof PAGE_PARTS)[number];

export interface HandoutPage {
  readonly id: string;
  readonly kind: PageKind;
  /** Which kept comparison it is about; null: the one on the wall. */
  readonly comparison: string | null;
  readonly parts: readonly PagePart[];
  /** Words that were changed where they stand, by their place on the page; the others follow the pictures. */
  readonly words: Readonly<Record<string, string>>;
}

export interface Handout {
  readonly template: Template;
  readonly paper: Paper;
  readonly orientation: Orientation;
  /** Who hands it out. */
  readonly author: {
    readonly name: string;
    readonly words: string;
    /** A PNG or JPEG image as a data address, or none. */
    readonly logo: string | null;
  };
  readonly pages: readonly HandoutPage[];
}
