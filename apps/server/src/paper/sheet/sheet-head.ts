import type { LoadSheet } from '@drumline/loading';
import { print } from '@drumline/units';
import { type Block, blank, box, grid, rule } from '../pdf/parts.js';
import { longDay } from '../pdf/print-stamp.js';
import type { SheetPage } from './load-sheet-pages.js';

/** Who, where, version, check code: the code in the corner where a thumb fans a stack. */
export const sheetHead = (page: SheetPage): Block => {
  const { sheet, print: by, leg } = page;
  const { from, to, distanceNm } = sheet.legs[leg]!;
  const { id, aircraft, date, departs, pilot } = sheet.flight;
  const nameOf = (code: string) => [by.names.get(code), code].filter(Boolean).join(' ');
  const facts = [`Aircraft ${aircraft}`, longDay(date), `off ${departs}`, print(distanceNm, 'NM', 1)];
  return {
    stack: [
      topOfPage({
        title: id,
        first: `${nameOf(from)} to ${nameOf(to)}`,
        second: [...facts, `pilot ${pilot ?? blank(6)}`, ...routeWords(sheet.route)].join(' · '),
        code: sheet.checkCode,
      }),
      versionLine(page),
      ...(sheet.heldWords === null ? [] : [notToLoad('HOLD. Do not load by this sheet.', [sheet.heldWords])]),
      ...(sheet.holds
        ? []
        : [notToLoad('This load does not hold. Do not load by this sheet.', sheet.faults)]),
    ],
  };
};

interface Top {
  readonly title: string;
  readonly first: string;
  readonly second: string;
  /** Check code; null: a page that has none. */
  readonly code: string | null;
}

/** Where there is more than there and back. */
const routeWords = (route: readonly string[]): readonly string[] =>
  route.length > 3 ? [`route ${route.join(' ')}`.replaceAll(' ', '\u00a0')] : [];

/** Head of any page: what it is, where or when, and its check code. */
export const topOfPage = ({ title, first, second, code }: Top): Block => ({
  stack: [
    {
      columns: [
        { text: title, fontSize: 28, bold: true, width: 'auto', margin: [0, -1, 0, 0] },
        {
          stack: [
            { text: first, fontSize: 15, bold: true },
            { text: second, margin: [0, 1, 0, 0] },
          ],
          margin: [10, 0, 0, 0],
          width: '*',
        },
        ...(code === null ? [] : [checkCode(code)]),
      ],
    },
    { ...rule(1.8), margin: [0, 2, 0, 2] },
  ],
});

const checkCode = (code: string): Block => ({
  columns: [
    { text: 'check\ncode', alignment: 'right', width: 32, margin: [0, 4, 4, 0] },
    {
      table: { body: [[{ text: code, fontSize: 20, bold: true, characterSpacing: 1.5 }]] },
      layout: grid(1.6, 0, [5, 1]),
      width: 'auto',
    },
  ],
  width: 104,
});

const versionLine = ({ sheet, print: { stamp }, page, pages }: SheetPage): Block => ({
  columns: [
    { text: versionWords(sheet), bold: true, width: '*' },
    {
      text: `Printed ${stamp.at} by ${stamp.by} · page ${page} of ${pages}`,
      alignment: 'right',
      width: 'auto',
    },
  ],
  margin: [0, 0, 0, 2],
});

/** In the row of the version, so that no line is lost; what nobody has approved replaces nothing. */
const versionWords = ({ flight, replacesWords }: LoadSheet): string =>
  flight.notApproved
    ? `NOT APPROVED. Offered, version ${flight.version}. Do not load by this sheet.`
    : (replacesWords ?? `Version ${flight.version}.`);

const notToLoad = (what: string, why: readonly string[]): Block =>
  box({ text: [{ text: `${what} `, bold: true, fontSize: 12 }, why.join(' ')] }, 2.4);

/** A dashed line to fold or cut on, with what it is for. */
export const foldLine = (words: string): Block => ({
  table: {
    widths: ['*', 'auto', '*'],
    body: [[dashes(), { text: words, bold: true, margin: [3, 0, 3, 0] }, dashes()]],
  },
  layout: grid(0, 0, [0, 0]),
  margin: [0, 3, 0, 2],
});

const dashes = (): Block => ({ ...rule(1, { width: 162, dash: true }), margin: [0, 6, 0, 0] });
