/** Lines of cells as columns: the first to the left, the others to the right. */
export function columns(lines: readonly (readonly string[])[]): string[] {
  const widths = lines.reduce<number[]>(
    (most, line) => line.map((cell, i) => Math.max(most[i] ?? 0, cell.length)),
    [],
  );
  return lines.map((line) =>
    line
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  '),
  );
}
