/** Columns of plain text, two spaces apart; the last column is cut at `widthCount` with an ellipsis. Numbers are right-aligned. */
export function printTable(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  options: { readonly right?: readonly number[]; readonly widthCount?: number } = {},
): string {
  const widthCount = options.widthCount ?? 100;
  const right = new Set(options.right ?? []);
  const widths = header.map((cell, column) =>
    Math.max(cell.length, ...rows.map((row) => (row[column] ?? "").length)),
  );
  const line = (cells: readonly string[]) => {
    const text = cells
      .map((cell, column) => {
        const width = widths[column] ?? 0;
        return right.has(column) ? cell.padStart(width) : cell.padEnd(width);
      })
      .join("  ")
      .trimEnd();
    return text.length > widthCount ? `${text.slice(0, widthCount - 1)}…` : text;
  };
  return [line(header), ...rows.map(line)].join("\n");
}
