import { type Kilograms, poundsFromKilograms, print, printNumber } from '@drumline/units';
import { printedLbOf } from '../printed-weights.js';
import { roundingRoomLb } from './sheet-item.js';
import { apartOf, lbWords, namesWords, nearest, type SlipFinder } from './slip.js';

/** The difference is no more than rounding of the printed column can make. */
export const rounding: SlipFinder = (question) => {
  const most = roundingRoomLb(question.items);
  return apartOf(question) > most
    ? []
    : [
        {
          kind: 'rounding',
          title: 'Rounding only',
          words: `${lbWords(apartOf(question))} apart. ${printNumber(question.items.length)} weights rounded one by one can differ by up to ${lbWords(Math.floor(most))}. Nothing to look for.`,
        },
      ];
};

/** The difference is one weight of the column: left out of the lower figure, or twice in the higher. */
export const leftOutOrTwice: SlipFinder = (question) => {
  const apart = apartOf(question);
  const fits = question.items.map((item) => ({ of: item, lb: printedLbOf(item.kg) }));
  const items = nearest(apart, fits, 1);
  const [first] = items;
  if (first === undefined) return [];
  const one = items.every(({ tareKg }) => tareKg !== null) ? 'drum' : 'weight';
  const isExact = printedLbOf(first.kg) === apart;
  const weight = `${lbWords(apart)} apart. ${isExact ? 'That' : 'Within 1 lb that'} is the weight of ${namesWords(items)}.`;
  return [
    question.typed < question.sheet
      ? {
          kind: 'left out',
          title: `One ${one} left out`,
          words: `${weight} One figure may be a ${one} short.`,
        }
      : {
          kind: 'counted twice',
          title: `One ${one} counted twice`,
          words: `${weight} One figure may have a ${one} twice.`,
        },
  ];
};

/** The difference is the empty drums: all of them, by their own weights or by one that is planned for all, or one. */
export const grossForNet: SlipFinder = (question) => {
  const apart = apartOf(question);
  const tares = question.items.flatMap((item) =>
    item.tareKg === null ? [] : [{ item, tareKg: item.tareKg }],
  );
  const allKg = tares.reduce((sum, { tareKg }) => sum + tareKg, 0) as Kilograms;
  const allLb = poundsFromKilograms(allKg);
  if (tares.length > 0 && Math.abs(allLb - apart) <= tares.length)
    return [
      {
        kind: 'gross for net',
        title: 'Fuel only, without the drums',
        words: `${lbWords(apart)} apart. ${printNumber(tares.length)} empty drums weigh ${print(allKg, 'kg', 1)}, ${print(allLb, 'lb')}, or a pound more or less each by their planning weight. One figure may be net (fuel), the other gross (fuel and drum).`,
      },
    ];
  const fits = tares.map(({ item, tareKg }) => ({ of: item, lb: poundsFromKilograms(tareKg) }));
  const some = nearest(apart, fits, 1);
  return some.length === 0
    ? []
    : [
        {
          kind: 'gross for net',
          title: 'One drum without its own weight',
          words: `${lbWords(apart)} apart. That is the empty weight of ${namesWords(some)}. One drum may be net in one figure.`,
        },
      ];
};

/** The difference is that between a drum on the sheet and one that is not. */
export const wrongDrum: SlipFinder = ({ items, otherDrums, sheet, typed }) => {
  const swaps = otherDrums.flatMap((other) =>
    items
      .filter(({ tareKg }) => tareKg !== null)
      .filter(({ kg }) => printedLbOf(other.kg) - printedLbOf(kg) === typed - sheet)
      .map((item) => `${other.name} for ${item.name}`),
  );
  return swaps.length === 0
    ? []
    : [
        {
          kind: 'wrong drum',
          title: 'Another drum',
          words: `${lbWords(Math.abs(typed - sheet))} apart, as ${swaps.slice(0, 2).join(', or ')}${swaps.length > 2 ? ', or others' : ''}. Read the drum numbers again.`,
        },
      ];
};

/** The other figure is the plan's, with every drum at its planning weight. */
export const plannedWeight: SlipFinder = ({ planned, typed, sheet }) =>
  planned !== null && Math.abs(planned - typed) <= 1
    ? [
        {
          kind: 'planned weight',
          title: 'Planned weight or real weight',
          words: `${lbWords(Math.abs(typed - sheet))} apart. With drums of planning weight the plan said ${lbWords(planned)}. One figure may be the plan.`,
        },
      ]
    : [];
