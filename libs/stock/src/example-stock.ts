import { kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import type { Batch, Cache, Drum } from './drum.js';
import type { StockPicture } from './opening-stock.js';
import type { StockOutlook } from './project-caches.js';

// Small stock for the tests beside this file: a strip, a pad, and three days from 14 June.

/** Retest due on the second day of the plan. */
export const oldBatch = exampleBatch('old', '2027-06-15');
export const newBatch = exampleBatch('new', '2028-05-31');

function exampleBatch(id: string, retestDue: string): Batch {
  const densityAt15KgPerLitre = kilogramsPerLitre(0.8);
  return {
    id,
    grade: 'Jet A-1',
    filledOn: '2026-06-15',
    retestDue,
    densityAt15KgPerLitre,
    filledAt: ['BASE'],
  };
}

export function sealedDrum(number: string, batch: string, place: string): Drum {
  return {
    number,
    batch,
    place,
    content: 'filled sealed',
    litres: litres(200),
    tareKg: kilograms(20),
    grossKg: kilograms(180),
  };
}

export function partDrum(number: string, batch: string, place: string, left: number): Drum {
  return {
    ...sealedDrum(number, batch, place),
    content: 'part used',
    litres: litres(left),
    openedOn: '2027-06-10',
  };
}

export function exampleCache(place: string, levels: Partial<Cache> = {}): Cache {
  return {
    place,
    minimumLitres: litres(400),
    criticalLitres: litres(200),
    medevacReserveLitres: litres(0),
    capacityDrums: 10,
    empties: 0,
    ...levels,
  };
}

export function examplePicture(drums: readonly Drum[], rest: Partial<StockPicture> = {}): StockPicture {
  return {
    asOf: '2027-06-14T06:00Z',
    drums,
    batches: [oldBatch, newBatch],
    counts: [],
    countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' },
    ...rest,
  };
}

export function exampleOutlook(drums: readonly Drum[], rest: Partial<StockOutlook> = {}): StockOutlook {
  return {
    picture: examplePicture(drums),
    caches: [exampleCache('STRIP'), exampleCache('PAD')],
    dates: ['2027-06-14', '2027-06-15', '2027-06-16'],
    fillLitres: litres(200),
    draws: [],
    landings: [],
    slings: [],
    ...rest,
  };
}
