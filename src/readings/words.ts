/** What a language must say about the readings; one file a language implements it. */
import type { Units } from './format';
import type { Measures } from './measures';
import type { Comparing, ReadingId } from './rows';

/** To whom the sentences speak and of whom. */
export interface Say {
  readonly units: Units;
  readonly pronoun: 'her' | 'him' | 'them';
}

/** One picture of several that stand side by side. */
export interface Lettered {
  readonly letter: string;
  readonly measures: Measures;
}

export interface RowWords {
  readonly name: (say: Say) => string;
  readonly formula: string;
  /** One picture's sentence, with its own values. */
  readonly meaning: (m: Measures, say: Say) => string;
  /** The sentence under two or more pictures' values. */
  readonly together: (pictures: readonly Lettered[], say: Say) => string;
  /** Why a picture may have no value. */
  readonly missing?: string;
}

/** How much more one picture has: a share of the other's, or a length, or an angle. */
export type Difference =
  | { readonly kind: 'share'; readonly by: number }
  | { readonly kind: 'length' | 'angle'; readonly by: number; readonly shown: string };

/** Readings that exist only between two pictures. */
export type PairId = 'nose_to_ear_gain_against_other_percent' | 'match_the_look_distance_m';

export interface PairWords {
  readonly name: (a: Lettered, b: Lettered) => string;
  readonly formula: string;
  readonly meaning: (a: Lettered, b: Lettered, value: number, shown: string) => string;
  readonly missing: string;
}

export interface Words {
  readonly locale: string;
  readonly rows: Readonly<Record<ReadingId, RowWords>>;
  readonly pair: Readonly<Record<PairId, PairWords>>;
  /** Words for the codes of text readings. */
  readonly codes: Readonly<Record<string, string>>;
  readonly yes: string;
  readonly no: string;
  readonly infinite: string;
  readonly none: string;
  /** Reason for a missing value where the row gives none of its own. */
  readonly missing: string;
  readonly stops: (value: number) => string;
  readonly megapixels: (value: number) => string;
  readonly equal: string;
  readonly nearlyEqual: string;
  /** "25 % more", "2.00 m nearer", "45.4° wider". */
  readonly difference: (comparing: Exclude<Comparing, 'none'>, difference: Difference) => string;
}
