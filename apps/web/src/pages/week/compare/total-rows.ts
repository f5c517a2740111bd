import { type PrintedCost, printedCost, printedHours, printedRise } from './add-up.js';
import type { Differences } from './differences-read.js';

export interface TotalRow {
  readonly name: string;
  readonly before: number;
  readonly after: number;
  readonly rise: number;
  readonly unit: string;
  readonly digits: number;
  /** A sum of those above it. */
  readonly isSum: boolean;
}

/** What both plans add up to. Money adds up as printed, down and across. */
export const totalRows = (differences: Differences, currency: string): readonly TotalRow[] => [
  ...moneyRows(differences, currency),
  ...flownRows(differences, currency),
  ...baseRows(differences),
];

const row = (
  name: string,
  [before, after]: readonly [number, number],
  unit: string,
  digits = 0,
): TotalRow => ({
  name,
  before,
  after,
  rise: rounded(after, digits) - rounded(before, digits),
  unit,
  digits,
  isSum: false,
});

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

const parts: readonly (readonly [keyof PrintedCost, string])[] = [
  ['flight', 'Flight cost'],
  ['fuel', 'Fuel'],
  ['handling', 'Handling'],
  ['total', 'Whole plan'],
];

const moneyRows = ({ totals }: Differences, currency: string): readonly TotalRow[] => {
  const before = printedCost(totals.before.cost);
  const rise = printedRise(totals.before.cost, totals.after.cost);
  return parts.map(([part, name]) => ({
    name,
    before: before[part],
    after: before[part] + rise[part],
    rise: rise[part],
    unit: currency,
    digits: 0,
    isSum: part === 'total',
  }));
};

const flownRows = ({ totals, expectedDrums }: Differences, currency: string): readonly TotalRow[] => {
  const { before, after } = totals;
  const perLitre = [before, after].map(({ cost }) => (cost.perLitre ?? 0) / 100);
  return [
    row('Delivered', [before.litres, after.litres], 'L'),
    row('Cost per litre', [perLitre[0]!, perLitre[1]!], `${currency}/L`, 2),
    row('Drums', [before.drums, after.drums], 'drums'),
    row('Flights', [before.flights, after.flights], ''),
    blockRow(before.blockHours, after.blockHours),
    row('Expected, weather', [expectedDrums.before, expectedDrums.after], 'drums', 1),
  ];
};

/** The rise is that under the list of differences, to the hundredth; across it adds up as printed. */
const blockRow = (before: number, after: number): TotalRow => {
  const [rise] = printedHours([after - before]);
  const printed = rounded(before, 2);
  return { ...row('Block', [printed, rounded(printed + rise!, 2)], 'h', 2), rise: rise! };
};

/** Drums taken from each base, and what it has left at the last of the days. */
const baseRows = ({ totals, bases }: Differences): readonly TotalRow[] => {
  const taken = (of: Differences['totals']['before'], at: string) =>
    of.drumsFromBase.find(({ place }) => place === at)?.drums ?? 0;
  return bases.after.flatMap(({ place, leftLitres }) => {
    const before = bases.before.find((base) => base.place === place);
    return [
      row(`From ${place}`, [taken(totals.before, place), taken(totals.after, place)], 'drums'),
      row(`Left at ${place}`, [before?.leftLitres ?? leftLitres, leftLitres], 'L'),
    ];
  });
};
