import { type Choices, chosen, named } from '../cache-list.js';
import { dayNames } from '../cache-words.js';
import type { Cache } from '../caches-read.js';

export const dates = ['2027-06-14', '2027-06-15', '2027-06-16'];
export const dayName = dayNames(dates, (date) => `day ${Number(date.slice(8))}`);

const lowestEnd = (usable: readonly number[]) => {
  const litres = Math.min(...usable.slice(1));
  return { litres, day: usable.indexOf(litres, 1) };
};

export const levels = (usableLitres: number[], rest: object = {}): Cache['projections']['offered'] => ({
  usableLitres,
  // As the server has it: at the end of a day; levels of one figure have only the opening.
  lowest: lowestEnd(usableLitres.length > 1 ? usableLitres : [0, ...usableLitres]),
  outOfReserveLitres: usableLitres.map(() => 0),
  unmetLitres: usableLitres.map(() => 0),
  belowMinimumDay: null,
  belowCriticalDay: null,
  runOutDay: null,
  ...rest,
});

export const cacheAt = (place: string, rest: Partial<Cache> = {}): Cache => ({
  place,
  minimumLitres: 400,
  criticalLitres: 200,
  medevacReserveLitres: 200,
  capacityDrums: 10,
  suggestedMinimum: { litres: 411, leadTimeUseLitres: 80, safetyStockLitres: 131, reserveLitres: 200 },
  stock: {
    bookLitres: 600,
    usableLitres: 600,
    drawableLitres: 400,
    heldLitres: 0,
    pastRetestLitres: 0,
    isOverCapacity: false,
    sealedDrums: 3,
    partUsedDrums: 0,
    emptyDrums: 1,
    confidence: 'low',
    why: [],
    lastCount: null,
  },
  daysOfCover: 5,
  projections: { offered: levels([600, 600, 600, 600]), noDeliveries: levels([600, 600, 600, 600]) },
  deliveries: [],
  draws: [],
  slings: [],
  notReported: [],
  agedOut: [],
  ...rest,
});

export const countOf = (ageHours: number): Cache['stock'] => ({
  ...cacheAt('XMAR').stock,
  lastCount: {
    count: { at: '2027-06-03T16:00Z', by: 'crew of A1', seenFrom: 'ground', litres: 600 },
    countedLitres: 600,
    toleranceLitres: 12,
    verdict: 'accepted',
    ageHours,
  },
});

export const falling = {
  offered: levels([600, 600, 600, 375], { belowMinimumDay: 3 }),
  noDeliveries: levels([600, 600, 600, 375]),
};
export const all: Choices = { text: '', sort: 'cover', only: 'all', kind: 'all' };
export const placesIn = (caches: readonly Cache[], choices: Partial<Choices>) =>
  chosen(named(caches, [{ code: 'XMAR', name: 'Marrow Pad', kind: 'pad', stripClass: null }]), {
    ...all,
    ...choices,
  }).map(({ cache }) => cache.place);
