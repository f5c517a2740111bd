import type { LoadSheet, SheetLeg, WeightRow } from '@drumline/loading';
import { printNumber } from '@drumline/units';
import type { ContentTable } from 'pdfmake/interfaces.js';
import { type Block, type Cell, figure, head, ruled } from '../pdf/parts.js';

const signs: Readonly<Record<WeightRow['kind'], string>> = {
  start: '',
  plus: '+ ',
  minus: '− ',
  sum: '= ',
  again: '',
};

/** The weights of a leg as a sum to follow by finger; the nearest limit between heavy rules. */
export const weightsTable = (leg: SheetLeg): ContentTable => {
  const rows = leg.rows.filter((row, at) => !isSaidElsewhere(row, leg.rows.slice(0, at)));
  const nearest = nearestRow(rows);
  return {
    table: {
      headerRows: 1,
      widths: [96, 34, 38, 39, 35, 76],
      body: [
        [
          head('Weights'),
          ...['lb', 'limit, lb', 'spare, lb', 'CG, in', 'inside, in'].map((title) => head(title, 'right')),
        ],
        ...rows.map(weightRow),
      ],
    },
    layout: ruled({
      across: (at) => {
        const [above, below] = [rows[at - 2], rows[at - 1]];
        if (at === 0) return 0;
        if (at === 1) return 1.2;
        if (nearest !== undefined && (above === nearest || below === nearest)) return 1.8;
        return above?.kind === 'sum' || below?.kind === 'sum' ? 0.8 : 0;
      },
      pad: [1.5, 0.3],
    }),
  };
};

/** Weight and limit of landing once more; leaving as planned stands on the next leg. Leaving full is unload-or-stay. */
const isSaidElsewhere = ({ kind, label, lb, limit }: WeightRow, above: readonly WeightRow[]): boolean =>
  kind === 'again' &&
  !label.includes(' full, ') &&
  (label.startsWith('leave ') ||
    (limit !== null &&
      above.some((row) => row.kind === 'sum' && row.lb === lb && row.limit?.lb === limit.lb)));

const nearestRow = (rows: readonly WeightRow[]): WeightRow | undefined =>
  rows
    .filter(({ kind, limit }) => kind === 'sum' && limit !== null)
    .toSorted((one, other) => one.limit!.spareLb - other.limit!.spareLb)[0];

const weightRow = (row: WeightRow): Cell[] => {
  const { kind, label, lb, cg } = row;
  return [
    { text: `${signs[kind]}${label}`, bold: kind === 'sum', margin: [0, 1.5, 0, 0] },
    figure(printNumber(lb)),
    ...limitCells(row),
    ...(cg === null ? ['', ''] : [figure(printNumber(cg.armIn, 1)), figure(rangeWords(cg))]),
  ];
};

const limitCells = ({ limit, forbiddenBy }: WeightRow): Cell[] => {
  if (forbiddenBy !== null) return [{ text: forbiddenBy, bold: true, colSpan: 2 }, ''];
  return limit === null ? ['', ''] : [figure(printNumber(limit.lb)), figure(printNumber(limit.spareLb))];
};

const rangeWords = ({ forwardIn, aftIn, inside }: NonNullable<WeightRow['cg']>): string => {
  if (forwardIn === null || aftIn === null) return 'OUTSIDE';
  return `${printNumber(forwardIn, 1)} to ${printNumber(aftIn, 1)}${inside ? '' : ' OUT'}`;
};

/** The leg after this one where nothing is carried on it: its sums only. */
export const homeTables = ({ legs }: LoadSheet, leg: number): readonly Block[] => {
  const next = legs[leg + 1];
  return next === undefined || next.totals.items.length > 0
    ? []
    : [{ text: `${next.from} to ${next.to}, empty`, bold: true }, homeTable(next)];
};

/** The three sums of a leg, where its head says the places. */
const moments = ['zero fuel', 'take-off', 'land'];

const homeTable = ({ rows }: SheetLeg): Block => ({
  table: {
    headerRows: 1,
    widths: ['*', 32, 40, 30],
    body: [
      ['', ...['lb', 'spare, lb', 'CG, in'].map((title) => head(title, 'right'))],
      ...rows
        .filter(({ kind }) => kind === 'sum')
        .map(({ lb, limit, cg }, at): Cell[] => [
          { text: moments[at]!, margin: [0, 1.5, 0, 0] },
          figure(printNumber(lb)),
          limit === null ? '' : figure(printNumber(limit.spareLb)),
          cg === null ? '' : figure(`${printNumber(cg.armIn, 1)}${cg.inside ? '' : ' OUT'}`),
        ]),
    ],
  },
  layout: ruled({ across: (at, count) => (at === 1 ? 1.2 : at === count ? 0.8 : 0), pad: [1.5, 0.3] }),
});
