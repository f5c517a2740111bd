import { z } from 'zod';
import {
  centsPerLitre,
  drums,
  instant,
  isoDate,
  kg,
  kgPerLitre,
  litres,
  percent,
  placeCode,
  reference,
  text,
} from './field.js';

const holdSchema = z
  .strictObject({
    reason: text('Why', 'water found in a sample'),
    by: text('Who', 'fuel quality'),
    at: instant('When', '2027-06-12T08:15Z'),
  })
  .meta({ id: 'Hold', description: 'Not to be used until somebody lifts it' });

export const batchSchema = z
  .strictObject({
    id: text('Number of the certificate', 'J27-041'),
    grade: text('Grade', 'Jet A-1'),
    filledOn: isoDate('Day of filling', '2027-04-19'),
    retestDue: isoDate('Last day of use without a laboratory pass', '2028-04-19'),
    densityAt15KgPerLitre: kgPerLitre('Density at 15 degC', 0.804),
    filledAt: z
      .array(placeCode('Base; listed in `places`', 'XALD'))
      .min(1)
      .meta({ description: 'Where it was drummed', examples: [['XALD']] }),
    held: holdSchema.exactOptional(),
  })
  .meta({ id: 'Batch', description: 'Fuel with one certificate' });

export const drumSchema = z
  .strictObject({
    number: text('Number painted on the drum', '0447'),
    batch: reference('batches', 'Batch', 'J27-012'),
    place: placeCode('Where it is; listed in `places`', 'XALD'),
    content: z
      .enum(['filled sealed', 'part used', 'clean empty', 'empty with residue', 'drained'])
      .meta({ description: 'What is in it', examples: ['filled sealed'] }),
    litres: litres('Litres in it', 200),
    openedOn: isoDate('Day of opening; only and always for a part-used drum', '2027-06-09').exactOptional(),
    tareKg: kg('Weight empty', 19.7),
    grossKg: kg('Weight now', 179.1),
    held: holdSchema.exactOptional(),
  })
  .meta({ id: 'Drum', description: 'One drum' });

export const cacheSchema = z
  .strictObject({
    place: placeCode('Where; listed in `places`', 'XLOR'),
    minimumLitres: litres('Minimum, usable; it should not fall below', 1200),
    criticalLitres: litres('Critical, usable; it must not fall below', 600),
    medevacReserveLitres: litres('Medevac reserve; bottom slice kept from routine draws', 400),
    capacityDrums: drums('Capacity; filled drums the site can hold', 30),
    empties: drums('Empty drums there', 8),
    endTargetLitres: litres(
      'End target; level to leave on the last day; absent: the minimum',
      1800,
    ).exactOptional(),
    permitUntil: isoDate(
      'Permit until; last day on which drums may be on the site',
      '2027-09-30',
    ).exactOptional(),
  })
  .meta({ id: 'Cache', description: 'Drums kept at a strip or a pad' });

const resupplySchema = z
  .strictObject({ date: isoDate('Day', '2027-06-24'), litres: litres('Litres', 60000) })
  .meta({ id: 'Resupply', description: 'Bulk fuel expected at a base' });

export const baseStockSchema = z
  .strictObject({
    place: placeCode('Base; listed in `places`', 'XMER'),
    bulkLitres: litres('Fuel in bulk', 18000),
    pricePerLitre: centsPerLitre('Price', 245),
    scarcityPricePerLitre: centsPerLitre(
      'What a litre is worth to the planner; absent: its price',
      300,
    ).exactOptional(),
    fillDrumsPerDay: drums('Drums that can be filled in a day', 12),
    emptiesFitForUse: drums('Empty drums fit for filling', 45),
    resupplies: z.array(resupplySchema).meta({ description: 'Bulk fuel expected' }),
    note: text('Anything else', 'winter road only').exactOptional(),
  })
  .meta({ id: 'BaseStock', description: 'Bulk fuel and filling at a base' });

export const countSchema = z
  .strictObject({
    place: placeCode('Where; listed in `places`', 'XCIN'),
    at: instant('When', '2027-06-14T07:30Z'),
    litres: litres('Litres counted', 2150),
    openDrums: drums('Open drums among them', 0),
    by: text('Who', 'strip helper'),
    seenFrom: z.enum(['ground', 'air']).meta({ description: 'From where', examples: ['ground'] }),
  })
  .meta({ id: 'Count', description: 'Someone looked' });

export const countToleranceSchema = z
  .strictObject({
    percentOfBook: percent('Share of the book', 2),
    litresPerOpenDrum: litres('For each open drum', 10),
    reference: text('Document and revision', 'fuel manual, counts, revision 1'),
  })
  .meta({
    id: 'CountTolerance',
    description: 'Difference between book and count accepted without a case: the greater of the two',
  });

export const drawSchema = z
  .strictObject({
    date: isoDate('Day', '2027-06-15'),
    place: placeCode('Cache; listed in `caches`', 'XCIN'),
    litres: litres('Litres', 200),
    for: text('For what', 'B1 top-up'),
  })
  .meta({
    id: 'PlannedUplift',
    description: 'Fuel an aeroplane is planned to take from a cache, on a flight outside this plan',
  });
