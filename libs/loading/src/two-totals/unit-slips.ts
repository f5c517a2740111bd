import { kilograms, kilogramsFromPounds, pounds, poundsFromKilograms, print } from '@drumline/units';
import { printedLbOf } from '../printed-weights.js';
import { itemTotals, roundingRoomLb, type SheetItem } from './sheet-item.js';
import {
  apartOf,
  lbWords,
  namesWords,
  nearest,
  type Slip,
  type SlipFinder,
  type SlipQuestion,
} from './slip.js';

// Kilograms stand here as they do on the sheet, with one decimal: of the load the sum of its kg column, of a take-off
// weight, which has no such column, its pounds converted once.

/** Kilograms in the pounds column: the whole figure, one row, the whole load, or the fuel. */
export const kilogramsForPounds: SlipFinder = (question) => {
  const { of, sheet, typed, items } = question;
  const sheetKg = of === 'load' ? itemTotals(items).kg : kilogramsFromPounds(pounds(sheet));
  if (Math.abs(typed - sheetKg) <= room(question))
    return [
      {
        kind: 'kg for lb',
        title: 'Kilograms in the pounds box',
        words: `The ${of} is ${lbWords(sheet)}, ${print(sheetKg, 'kg', 1)}. One figure may be in kg.`,
      },
    ];
  const fits = items.map((item) => ({ of: item, lb: printedLbOf(item.kg) - item.kg }));
  const rows = nearest(apartOf(question), fits, 1);
  return rows.length > 0
    ? [oneRow('kg for lb', 'kg', question, rows)]
    : [...wholeLoad(question), ...wholeFuel(question)];
};

/** Pounds taken for kilograms and converted again: the whole figure, or one row of it. */
export const poundsForKilograms: SlipFinder = (question) => {
  const { sheet, typed, items } = question;
  if (Math.abs(sheet - kilogramsFromPounds(pounds(typed))) <= room(question))
    return [
      {
        kind: 'lb for kg',
        title: 'Pounds taken for kilograms',
        words: `${lbWords(sheet)} times 2.2046 is ${lbWords(poundsFromKilograms(kilograms(sheet)))}. One figure may be converted once too often.`,
      },
    ];
  const fits = items.map((item) => {
    const lb = printedLbOf(item.kg);
    return { of: item, lb: poundsFromKilograms(kilograms(lb)) - lb };
  });
  const rows = nearest(apartOf(question), fits, 2);
  return rows.length > 0 ? [oneRow('lb for kg', 'lb taken for kg', question, rows)] : [];
};

/** A take-off weight in which the whole load was added in kg. */
function wholeLoad(question: SlipQuestion): readonly Slip[] {
  if (question.of !== 'take-off weight') return [];
  const { kg, lb } = itemTotals(question.items);
  if (lb === 0 || Math.abs(apartOf(question) - (lb - kg)) > room(question)) return [];
  return [
    {
      kind: 'kg for lb',
      title: 'The load added in kilograms',
      words: `${lbWords(apartOf(question))} apart. The load is ${lbWords(lb)}, ${print(kg, 'kg', 1)}; one figure may have its kg added as lb.`,
    },
  ];
}

/** A take-off weight in which the fuel was added in kg: all of it, or what is left of it after taxi. */
function wholeFuel(question: SlipQuestion): readonly Slip[] {
  const { of, sheet, typed, fuelLb, taxiLb } = question;
  if (of !== 'take-off weight' || fuelLb === 0) return [];
  const fuel = [fuelLb - taxiLb, fuelLb].map((lb) => ({ lb, kg: kilogramsFromPounds(pounds(lb)) }));
  const one = fuel.find(({ lb, kg }) => Math.abs(sheet - typed - (lb - kg)) <= 1);
  if (one === undefined) return [];
  return [
    {
      kind: 'kg for lb',
      title: 'The fuel added in kilograms',
      words: `${lbWords(sheet - typed)} apart. The fuel is ${lbWords(one.lb)}, ${print(one.kg, 'kg', 1)}; one figure may have its kg added as lb.`,
    },
  ];
}

/** Room for rounding row by row; the kg column may be rounded as well. */
const room = ({ items }: SlipQuestion): number => Math.max(1, roundingRoomLb(items));

const oneRow = (
  kind: Slip['kind'],
  unit: string,
  question: SlipQuestion,
  rows: readonly SheetItem[],
): Slip => ({
  kind,
  title: 'One weight in the other unit',
  words: `${lbWords(apartOf(question))} apart. The weight of ${namesWords(rows)} may be added as ${unit} in one figure.`,
});
