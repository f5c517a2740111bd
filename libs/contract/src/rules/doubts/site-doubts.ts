import { printFigure } from '../print-figure.js';
import { each, type Rule } from '../rule.js';

/** Drums where they should not stand, yet may: people land them where they have to. */
export const siteDoubts: readonly Rule[] = [
  each('drums', ['places', 'caches', 'bases'], function* (drum, { places, caches, bases }) {
    const kept = [...caches, ...bases].some(({ place }) => place === drum.place);
    if (!kept && places.some(({ code }) => code === drum.place))
      yield [
        ['place'],
        `drum ${drum.number} is at ${drum.place}, which keeps no drums.`,
        `Add ${drum.place} to caches.`,
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
        `${cache.place} holds ${printFigure(litres, 'L')}, ${asDrums.toFixed(1)} drums, on a site for ${cache.capacityDrums}: no drum is planned to it until there is room.`,
        'Correct the capacity, or where the drums are.',
      ];
  }),
];
