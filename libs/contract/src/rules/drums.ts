import { ordered } from './dates.js';
import { printFigure } from './print-figure.js';
import { each, type Rule } from './rule.js';

/** A drum holds what its content says, weighs more than it did empty, and was opened after it was filled. */
export const drumRules: readonly Rule[] = [
  each('drums', [], function* (drum) {
    if (drum.grossKg < drum.tareKg)
      yield [
        ['grossKg'],
        `drum ${drum.number} weighs ${printFigure(drum.grossKg, 'kg')}, less than its tare of ${printFigure(drum.tareKg, 'kg')}.`,
        'Weigh it again, or swap the two figures.',
      ];
    if (drum.content === 'part used' && drum.openedOn === undefined)
      yield [['openedOn'], `drum ${drum.number} is part used without the day it was opened.`, 'Add the day.'];
    if (drum.content !== 'part used' && drum.openedOn !== undefined)
      yield [
        ['openedOn'],
        `drum ${drum.number} is ${drum.content} and has a day of opening.`,
        'Remove it, or make the drum part used.',
      ];
    const holdsFuel = drum.content === 'filled sealed' || drum.content === 'part used';
    if (holdsFuel && drum.litres === 0)
      yield [
        ['litres'],
        `drum ${drum.number} is ${drum.content} with 0 L in it.`,
        'Give its litres, or call it empty.',
      ];
    if (!holdsFuel && drum.litres > 0)
      yield [
        ['litres'],
        `drum ${drum.number} is ${drum.content} with ${printFigure(drum.litres, 'L')} in it.`,
        'Write 0, or correct its content.',
      ];
  }),
  each('drums', ['policy'], function* (drum, { policy: { drum: size } }) {
    if (drum.litres > size.brimLitres)
      yield [
        ['litres'],
        `drum ${drum.number} holds ${printFigure(drum.litres, 'L')}, more than to the brim, ${printFigure(size.brimLitres, 'L')}.`,
        'Correct the litres, or policy.drum.brimLitres.',
      ];
    else if (drum.content === 'filled sealed' && drum.litres > size.fillLitres)
      yield [
        ['litres'],
        `drum ${drum.number} is filled with ${printFigure(drum.litres, 'L')}, more than a fill of ${printFigure(size.fillLitres, 'L')}.`,
        'Correct the litres, or policy.drum.fillLitres.',
      ];
  }),
  each('drums', ['batches'], (drum, { batches }) => {
    const batch = batches.find(({ id }) => id === drum.batch);
    return batch === undefined || drum.openedOn === undefined
      ? []
      : ordered(batch.filledOn, drum.openedOn, ['openedOn'], 'the day its batch was filled');
  }),
];
