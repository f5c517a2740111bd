import { printFigure } from './print-figure.js';
import { across, each, type Rule } from './rule.js';

/** A cache's levels lie in order and fit its site; the planning drum can be. */
export const stockRules: readonly Rule[] = [
  each('caches', [], function* (cache) {
    if (cache.criticalLitres > cache.minimumLitres)
      yield [
        ['criticalLitres'],
        `${printFigure(cache.criticalLitres, 'L')} is above the minimum, ${printFigure(cache.minimumLitres, 'L')}.`,
        'Swap or correct them.',
      ];
    if (cache.medevacReserveLitres > cache.minimumLitres)
      yield [
        ['medevacReserveLitres'],
        `${printFigure(cache.medevacReserveLitres, 'L')} is above the minimum, ${printFigure(cache.minimumLitres, 'L')}, of which it is the bottom slice.`,
        'Raise the minimum, or lower the reserve.',
      ];
  }),
  each('caches', ['policy'], function* (cache, { policy }) {
    for (const level of ['minimumLitres', 'endTargetLitres'] as const) {
      const asked = cache[level];
      if (asked !== undefined && asked > cache.capacityDrums * policy.drum.fillLitres)
        yield [
          [level],
          `${printFigure(asked, 'L')} does not fit on a site for ${cache.capacityDrums} drums.`,
          'Lower it, or correct the capacity.',
        ];
    }
  }),
  across(['policy'], function* ({ policy: { dipTables = [] } }) {
    for (const [index, table] of dipTables.entries()) {
      if (table.kind !== 'own table') continue;
      const at = table.rows.findIndex((row, next) => {
        const before = table.rows[next - 1];
        return before !== undefined && (row.dipCm <= before.dipCm || row.litres < before.litres);
      });
      if (at > 0)
        yield [
          ['policy', 'dipTables', index, 'rows', at],
          `${printFigure(table.rows[at]!.dipCm, 'cm')} is ${printFigure(table.rows[at]!.litres, 'L')}, and the row before is not below it in both.`,
          'Write the rows from the bottom of the drum up.',
        ];
    }
  }),
  across(['policy'], function* ({ policy: { drum } }) {
    if (drum.fillLitres > drum.brimLitres)
      yield [
        ['policy', 'drum', 'fillLitres'],
        `a fill of ${printFigure(drum.fillLitres, 'L')} is more than to the brim, ${printFigure(drum.brimLitres, 'L')}.`,
        'Correct one of the two.',
      ];
    if (drum.grossKg < drum.tareKg)
      yield [
        ['policy', 'drum', 'grossKg'],
        `the planning drum weighs ${printFigure(drum.grossKg, 'kg')}, less than its tare of ${printFigure(drum.tareKg, 'kg')}.`,
        'Correct one of the two.',
      ];
  }),
];
