/** How finely the files are cut. */
export interface Detail {
  /** Cell over the face, mm. */
  readonly fine: number;
  /** Body and hair are cut at every so-manyth plane of their grids. */
  readonly every: number;
  /** Triangles to keep by mesh name (both halves), and of any other part. */
  readonly triangles: Readonly<Record<string, number>>;
  readonly other: number;
}

export const FULL_DETAIL: Detail = {
  fine: 0.9,
  every: 1,
  triangles: {
    skin: 84_000,
    hair: 9_000,
    beard: 4_000,
    top: 13_000,
    outer: 22_000,
    dress: 14_000,
    hands: 10_000,
  },
  other: 5_000,
};

export const SEXES = ['female', 'male'] as const;
export type Sex = (typeof SEXES)[number];
