/** "head-shot-day-village-hall-players.pdf": a title as a file's name. */
export const fileName = (title: string, extension: string): string =>
  `${
    title
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '') || 'session'
  }.${extension}`;
