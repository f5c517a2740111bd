export interface Column {
  readonly head: string;
  /** Numbers stand right, words left. */
  readonly align?: 'left' | 'right';
}

/** Lines of a plain table: heads, a rule, rows; columns parted by two spaces, no line ends in a space. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const widths = columns.map((column, i) =>
    Math.max(column.head.length, ...rows.map((row) => (row[i] ?? '').length)),
  );
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => (columns[i]?.align === 'right' ? cell.padStart(widths[i]!) : cell.padEnd(widths[i]!)))
      .join('  ')
      .trimEnd();
  return [
    line(columns.map((column) => column.head)),
    widths.map((width) => '-'.repeat(width)).join('  '),
    ...rows.map(line),
  ];
}

/** The lines, each moved in by the given number of spaces. */
export function indent(lines: readonly string[], spaces: number): string[] {
  return lines.map((line) => (line === '' ? '' : ' '.repeat(spaces) + line));
}
