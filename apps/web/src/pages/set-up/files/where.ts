interface Where {
  readonly line: string;
  readonly cell: string;
}

/** "line 9, landingLb" of a CSV file; `stripLimits[12].landingLb` of a document. */
export const whereOf = (path: string): Where => {
  const [csv, line, cell = ''] = /^line (\d+)(?:, (.*))?$/.exec(path) ?? [];
  if (csv !== undefined) return { line: line!, cell };
  const [own, list, at, rest = ''] = /^(\w+)\[(\d+)\]\.?(.*)$/.exec(path) ?? [];
  return own === undefined ? { line: '', cell: path } : { line: `${list} ${Number(at) + 1}`, cell: rest };
};

/** Faults in a row that the same would mend: it is said at the first of them. */
export const remedyAt = (faults: readonly { readonly remedy: string }[], at: number): string =>
  faults[at]!.remedy === faults[at - 1]?.remedy ? 'as above' : faults[at]!.remedy;

/** Lines of a file that have something in them, the headings left out. */
export const linesRead = (text: string): number =>
  Math.max(0, text.split(/\r?\n/).filter((line) => line.trim() !== '').length - 1);

/** Lines that have a fault. */
export const faultyLines = (paths: readonly string[]): number =>
  new Set(paths.map((path) => whereOf(path).line).filter((line) => line !== '')).size;
