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

/** Lines that could be taken as they are; where the headings are wrong, none. */
export const fitLines = (read: number, faultPaths: readonly string[]): number => {
  const faulty = new Set(faultPaths.map((path) => whereOf(path).line).filter((line) => line !== ''));
  return faulty.has('1') ? 0 : read - faulty.size;
};

/** Why a file is not even tried; undefined: it is text with something in it. */
export const unreadable = (text: string): string | undefined => {
  if (text.trim() === '') return 'The file is empty.';
  if (text.startsWith('PK') || text.includes('\0'))
    return 'It is no text file: save it as CSV, from the spreadsheet.';
  return text.includes('\uFFFD') ? 'Some of its letters cannot be read: save it as CSV in UTF-8.' : undefined;
};
