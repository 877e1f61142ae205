/** A number and its unit stay on one line. */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (?=(%|mm|cm|m|ft|in)\b|%)/g, '$1\u00a0');
