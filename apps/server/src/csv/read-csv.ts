import { type Fault, shapeFaults } from '@drumline/contract';
import { CsvError, parse } from 'csv-parse/sync';
import { atLine } from './csv-faults.js';
import type { Cells, CsvKind } from './csv-kind.js';

export interface Line<Thing> {
  /** In the file, from 1; the headings are line 1. */
  readonly line: number;
  readonly cells: Cells;
  readonly thing: Thing;
}

export interface ReadCsv<Thing> {
  readonly lines: readonly Line<Thing>[];
  /** Every one, by line and column. */
  readonly faults: readonly Fault[];
}

const mostLines = 5000;
/** The rest is read anew behind each. */
const mostBroken = 20;

/** Reads a file of one kind: commas, semicolons or tabs, headings first, in any order. */
export const readCsv = <Thing>(text: string, kind: CsvKind): ReadCsv<Thing> => {
  const { records, faults: broken } = split(text);
  const [headings, ...rows] = records;
  if (headings === undefined) return { lines: [], faults: broken.length > 0 ? broken : [empty] };
  const faults = [...headingFaults(headings.record, kind)];
  if (faults.length > 0) return { lines: [], faults: [...faults, ...broken] };
  if (rows.length > mostLines) return { lines: [], faults: [tooMany] };
  const read = rows.map((row) => readRow<Thing>(row, headings.record, kind));
  return {
    lines: read.flatMap(({ line }) => (line === null ? [] : [line])),
    faults: [...read.flatMap((each) => each.faults), ...broken],
  };
};

interface Row {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

interface Split {
  readonly records: readonly Row[];
  readonly faults: readonly Fault[];
}

/** Up to a quotation mark that is open or stands inside a cell; what comes behind its line is read as well. */
const split = (text: string): Split => {
  const [first = ''] = text.split('\n', 1);
  const cellsBy = (sign: string) => first.split(sign).length;
  const delimiter = [',', ';', '\t'].reduce((best, sign) => (cellsBy(sign) > cellsBy(best) ? sign : best));
  const records: Row[] = [];
  const faults: Fault[] = [];
  for (let from = 1; ; ) {
    const read = parseFrom(text, from, delimiter);
    records.push(...read.records);
    if (read.brokenAt === null) return { records, faults };
    faults.push(broken(read.brokenAt));
    if (faults.length === mostBroken) return { records, faults };
    from = read.brokenAt + 1;
  }
};

/** Lines from a number on, numbered as in the file, up to the first that cannot be taken apart. */
const parseFrom = (
  text: string,
  from: number,
  delimiter: string,
): { readonly records: readonly Row[]; readonly brokenAt: number | null } => {
  const records: Row[] = [];
  const rest = text.split('\n').slice(from - 1);
  try {
    parse(rest.join('\n'), {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      onRecord: (row: unknown) => {
        const { record, info } = row as Row;
        records.push({ record, info: { lines: info.lines + from - 1 } });
      },
    });
    return { records, brokenAt: null };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    // A mark that is left open runs on to the end of the file: it was opened behind the last line that was read.
    const read = (records.at(-1)?.info.lines ?? from - 1) - (from - 1);
    const opened = rest.findIndex((line, index) => index >= read && line.trim() !== '');
    return { records, brokenAt: from + opened };
  }
};

const broken = (line: number): Fault => ({
  path: `line ${line}`,
  problem: 'the line cannot be taken apart: a quotation mark is open, or stands inside a cell.',
  remedy: 'Put quotation marks around the whole cell, and write those inside it twice.',
});

const headingFaults = (headings: readonly string[], { columns }: CsvKind): readonly Fault[] => {
  const known = columns.map(({ heading }) => heading);
  const missing = columns.filter(({ heading, optional }) => !optional && !headings.includes(heading));
  const faultAt = (heading: string, problem: string): Fault => ({
    path: `line 1, ${heading}`,
    problem,
    remedy: `The headings are: ${known.join(', ')}.`,
  });
  return [
    ...missing.map(({ heading }) => faultAt(heading, 'this column is missing.')),
    ...headings
      .filter((heading) => !known.includes(heading))
      .map((heading) => faultAt(heading, 'this column is not known.')),
    ...headings
      .filter((heading, index) => headings.indexOf(heading) < index)
      .map((heading) => faultAt(heading, 'this column stands here twice.')),
  ];
};

const readRow = <Thing>(
  { record, info: { lines: line } }: Row,
  headings: readonly string[],
  kind: CsvKind,
): { readonly line: Line<Thing> | null; readonly faults: readonly Fault[] } => {
  if (record.length !== headings.length) return { line: null, faults: [otherLength(line, record, headings)] };
  const cells = cellsOf(record, headings, kind);
  const read = kind.schema.safeParse(kind.thingOf(cells));
  if (read.success) return { line: { line, cells, thing: read.data as Thing }, faults: [] };
  const faults = shapeFaults(kind.schema, kind.thingOf(cells));
  return { line: null, faults: faults.map((fault) => atLine(line, ofCell(fault))) };
};

/** A file has no fields that are left out, but cells that are empty. */
const ofCell = (fault: Fault): Fault =>
  fault.problem === 'this field is missing.'
    ? {
        ...fault,
        problem: 'the cell is empty.',
        remedy: fault.remedy.replace(/^Add it( \(.*\))?/, 'Fill it in'),
      }
    : fault;

/** A cell that should hold a figure and does not is left as it is: the schema says what is wrong with it. */
const cellsOf = (record: readonly string[], headings: readonly string[], { columns }: CsvKind): Cells =>
  Object.fromEntries(
    headings.flatMap((heading, index) => {
      const cell = (record[index] ?? '').replace(madeHarmless, '');
      if (cell === '') return [];
      const isFigure = columns.some((column) => column.heading === heading && column.holds === 'number');
      return [[heading, isFigure && /^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell]];
    }),
  );

/** As `writeCsv` makes a cell harmless that a spreadsheet would take for a formula. */
const madeHarmless = /^'(?=[=+\-@\t])/;

const otherLength = (line: number, record: readonly string[], headings: readonly string[]): Fault => ({
  path: `line ${line}`,
  problem: `the line has ${record.length} cells, and there are ${headings.length} headings.`,
  remedy: 'Put quotation marks around a cell that has a comma in it; leave empty cells empty.',
});

const empty: Fault = {
  path: 'line 1',
  problem: 'the file is empty.',
  remedy: 'Send the headings, then a line for each thing.',
};
const tooMany: Fault = {
  path: `line ${mostLines + 2}`,
  problem: `the file has more than ${mostLines} lines.`,
  remedy: 'Send it in parts.',
};
