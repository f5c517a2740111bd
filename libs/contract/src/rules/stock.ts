import { printFigure } from './print-figure.js';
import { across, each, type Rule } from './rule.js';

/** A drum holds what its content says; a cache's levels lie in order and its drums fit. */
export const stockRules: readonly Rule[] = [
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
  each('drums', ['places', 'caches', 'bases'], function* (drum, { places, caches, bases }) {
    const kept = [...caches, ...bases].some(({ place }) => place === drum.place);
    if (!kept && places.some(({ code }) => code === drum.place))
      yield [
        ['place'],
        `drum ${drum.number} is at ${drum.place}, which keeps no drums.`,
        `Add ${drum.place} to caches.`,
      ];
  }),
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
  each('caches', ['policy', 'drums'], function* (cache, { policy, drums }) {
    const litres = drums
      .filter(({ place }) => place === cache.place)
      .reduce((sum, drum) => sum + drum.litres, 0);
    const asDrums = litres / policy.drum.fillLitres;
    if (asDrums > cache.capacityDrums)
      yield [
        ['capacityDrums'],
        `${cache.place} holds ${printFigure(litres, 'L')}, ${asDrums.toFixed(1)} drums, on a site for ${cache.capacityDrums}.`,
        'Correct the capacity, or where the drums are.',
      ];
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
