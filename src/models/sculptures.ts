/** Address of each file of models/sculpture/ in the page and its workers, by its name. */
export const sculptureUrls: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(
    import.meta.glob<string>('../../models/sculpture/*', {
      eager: true,
      query: '?url',
      import: 'default',
    }),
  ).map(([path, url]) => [path.replace('../../models/sculpture/', ''), url]),
);
