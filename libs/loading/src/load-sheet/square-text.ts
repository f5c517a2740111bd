import { print, printNumber } from '@drumline/units';
import { alternateLines } from '../go-back/alternates.js';
import { checkCode } from './check-code.js';
import type { LoadSheet, SheetLeg } from './load-sheet.js';
import type { WeightRow } from './weight-rows.js';

/** What the code square of a sheet is written from: everything on it but its own code, and what goes by that. */
export type SquareOf = Omit<LoadSheet, 'checkCode' | 'square' | 'replacesWords'>;

/** More signs than this, and a printed square gets too fine for the eye of a phone. */
const mostSigns = 1300;

/** The words before the code in the last line that it covers. */
const codeWords = 'CHECK CODE ';

/**
 * The text of the code square: plain words in capitals, as any reader of code squares shows them, a line for each thing.
 * It holds what the sheet says of each leg with a load. What follows the check code is not covered by it: alternates
 * have other room by the hour, and a print of the same load keeps its code. Where all of it is too long, the ways out
 * of a closed strip are left out and the text says so.
 */
export function squareText(sheet: SquareOf): { readonly text: string; readonly checkCode: string } {
  const covered = coveredLines(sheet).map(inSquare);
  const code = checkCode(covered.join('\n'), sheet.flight.id, sheet.flight.version);
  const head = [...covered, `${codeWords}${code}`];
  const whole = [...head, ...loadedLegs(sheet).flatMap(linesOfAlternates).map(inSquare)].join('\n');
  const text =
    whole.length <= mostSigns ? whole : [...head, 'LEFT OUT HERE: ALTERNATES. SEE THE SHEET.'].join('\n');
  return { text, checkCode: code };
}

/** The check code of a square's text that was read, or why it is none. */
export function readSquareCode(
  text: string,
): { readonly ok: true; readonly checkCode: string } | { readonly ok: false; readonly fault: string } {
  const lines = text.trim().split('\n');
  const at = lines.findIndex((line) => line.startsWith(codeWords));
  const head = /^(\S+) V(\d+) /.exec(lines[0]!);
  if (at < 0 || head === null)
    return { ok: false, fault: 'This is no code square of a load, or some of it is missing: scan it again.' };
  const code = lines[at]!.slice(codeWords.length);
  const expected = checkCode(lines.slice(0, at).join('\n'), head[1]!, Number(head[2]));
  return code === expected
    ? { ok: true, checkCode: code }
    : { ok: false, fault: `The check code is ${code}, the text gives ${expected}: scan it again.` };
}

function coveredLines(sheet: SquareOf): string[] {
  const { flight, drums, cargo, legs, holds } = sheet;
  const { id, version, aircraft, date, departs, pilot } = flight;
  const held = drums.filter(({ onHold }) => onHold).map(({ number }) => number);
  const stops = new Set(drums.map(({ leaveAt }) => leaveAt)).size;
  return [
    `${id} V${version} ${aircraft} ${date} OFF ${departs}${pilot === null ? '' : ` PILOT ${pilot}`}`,
    ...(holds ? [] : ['THIS LOAD DOES NOT HOLD. DO NOT LOAD BY IT.']),
    ...(held.length === 0 ? [] : [`HOLD. DO NOT LOAD BY IT: ${held.join(' ')}`]),
    ...drums.map(
      ({ number, position, grossKg, lb, leaveAt }) =>
        `${position} ${number} ${print(grossKg, 'kg', 1)} ${print(lb, 'lb')}${stops > 1 ? ` ${leaveAt}` : ''}`,
    ),
    ...cargo.map(({ name, place, lb }) => `${place ?? 'NO PLACE'} ${name} ${print(lb, 'lb')}`),
    ...legs.flatMap((leg) => (leg.totals.items.length > 0 ? loadedLines(leg) : emptyLines(leg))),
  ];
}

const loadedLegs = ({ legs }: SquareOf): readonly SheetLeg[] =>
  legs.filter(({ totals }) => totals.items.length > 0);

const loadedLines = (leg: SheetLeg): string[] => [
  `${leg.from}-${leg.to} ${print(leg.distanceNm, 'NM', 1)} LOAD ${print(leg.totals.loadLb, 'lb')}`,
  ...leg.rows.filter(isTold).map(rowWords),
  ...leg.goBack.lines.filter((line) => !linesOfAlternates(leg).includes(line)),
];

const emptyLines = (leg: SheetLeg): string[] => [
  `${leg.from}-${leg.to} EMPTY ${leg.rows
    .filter(({ kind }) => kind === 'sum')
    .slice(1)
    .map((row) => rowWords({ ...row, cg: null }))
    .join(' - ')}`,
];

const linesOfAlternates = ({ goBack, from, to }: SheetLeg): readonly string[] =>
  alternateLines({ from, to }, goBack.alternates);

/** Weights held against a limit; leaving the strip again stands in the lines below them. */
const isTold = ({ limit, forbiddenBy, label }: WeightRow): boolean =>
  (limit !== null || forbiddenBy !== null) && !label.startsWith('leave ');

const rowWords = ({ label, lb, limit, forbiddenBy, cg }: WeightRow): string => {
  const spare = limit === null ? 0 : limit.spareLb;
  const against =
    limit === null
      ? (forbiddenBy ?? '')
      : `LIMIT ${printNumber(limit.lb)} ${spare < 0 ? `OVER ${printNumber(-spare)}` : `SPARE ${printNumber(spare)}`}`;
  const balance = cg === null ? '' : ` CG ${printNumber(cg.armIn, 1)} ${cg.inside ? 'OK' : 'OUT'}`;
  return `${label} ${print(lb, 'lb')} ${against}${balance}`.trim();
};

/** In capitals and, as far as it goes, in the 45 signs that a code square packs best; figures without their commas. */
const inSquare = (line: string): string =>
  line
    .replace(/(\d),(?=\d{3})/g, '$1')
    .replace(/\s*\(([^)]*)\)/g, ': $1')
    .replace(/[;,]/g, ' -')
    .replace(/\s+/g, ' ')
    .replaceAll('−', '-')
    .toUpperCase();
