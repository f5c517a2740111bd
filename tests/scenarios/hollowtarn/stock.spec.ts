import {
  consequenceOfHold,
  expiryLosses,
  type Hold,
  openingStock,
  projectCaches,
  type StockOutlook,
} from '@drumline/stock';
import { describe, expect, it } from 'vitest';
import {
  dateOf,
  flagsWithoutDelivery,
  levelsWithoutDelivery,
  mondayMorning,
  recall,
} from './stock-tables.js';

const hold: Hold = { reason: 'supplier recall', by: 'fuel quality', at: '2027-06-14T06:00Z' };

describe('the fortnight without a delivery', () => {
  const projections = projectCaches(mondayMorning);

  it.each(projections)('book projection: $place ends every day at the level worked out by hand', (cache) => {
    expect(cache.book).toEqual(levelsWithoutDelivery[cache.place]);
  });

  it.each(projections)(
    '$place falls below its minimum and critical level and runs out on the days worked out by hand',
    ({ place, belowMinimumDay, belowCriticalDay, runOutDay }) => {
      expect({ belowMinimumDay, belowCriticalDay, runOutDay }).toEqual(flagsWithoutDelivery[place]);
    },
  );

  it('covers every cache of the territory', () => {
    expect(projections.map((cache) => cache.place)).toEqual(Object.keys(levelsWithoutDelivery));
  });
});

describe('a recall of the batch that stands in seven places', () => {
  const held = consequenceOfHold(
    mondayMorning.picture,
    mondayMorning.caches,
    { batch: recall.batch },
    hold,
    dateOf(1),
  );

  it('names every drum of the batch, place by place', () => {
    expect({ drums: held.drums, litres: held.litres }).toEqual({
      drums: recall.drums,
      litres: recall.litres,
    });
    expect(Object.fromEntries(held.places.map(({ place, drums }) => [place, drums.length]))).toEqual(
      recall.drumsByPlace,
    );
  });

  it('usable stock: held drums leave usable at once', () => {
    const atCaches = held.places.filter(({ place }) => place in recall.usableLitresAfter);
    expect(
      Object.fromEntries(atCaches.map(({ place, usableLitresAfter }) => [place, usableLitresAfter])),
    ).toEqual(recall.usableLitresAfter);
  });

  it('says which caches are below minimum and below critical', () => {
    expect([...held.belowMinimum].sort()).toEqual(recall.belowMinimum);
    expect([...held.belowCritical].sort()).toEqual(recall.belowCritical);
  });

  it('usable stock: the book at LOR stays 2,200 L while 1,000 L are usable', () => {
    expect(openingStock(['LOR'], held.picture, dateOf(1)).get('LOR')).toMatchObject({
      bookLitres: 2200,
      heldLitres: 1200,
      usableLitres: 1000,
    });
  });
});

describe('the batch due for retest on day 9', () => {
  it('age at use: twelve drums of the old batch are not usable after day 9', () => {
    const drums = expiryLosses(mondayMorning).flatMap((cache) => cache.drums);
    const byPlace = Object.fromEntries(
      ['BIR', 'DUN', 'HAS', 'JUN'].map((place) => [
        place,
        drums.filter((drum) => drum.place === place).length,
      ]),
    );
    expect(byPlace).toEqual({ BIR: 6, DUN: 2, HAS: 1, JUN: 3 });
    expect(drums).toHaveLength(12);
    expect(new Set(drums.map((drum) => drum.dueDay))).toEqual(new Set([9]));
  });

  it('age at use: what the draws before day 10 burn is not lost', () => {
    const lost = new Map(expiryLosses(mondayMorning).map((cache) => [cache.place, cache.litresByDay[9]]));
    // 460 L of the old batch at DUN less the 150 L drawn on day 3; 200 L at HAS less the 30 L that the part-used drum lacks.
    expect([lost.get('BIR'), lost.get('DUN'), lost.get('HAS'), lost.get('JUN')]).toEqual([
      1200, 310, 170, 600,
    ]);
  });

  it('retest date: the drums are usable on day 9 and not on day 10', () => {
    const bir = projectCaches(mondayMorning).find((cache) => cache.place === 'BIR')!;
    expect(bir.usable.slice(9, 11)).toEqual([2800, 1600]);
    expect(bir.book.slice(9, 11)).toEqual([2800, 2800]);
  });
});

describe('the counts of Monday morning', () => {
  const atEight: StockOutlook = {
    ...mondayMorning,
    picture: { ...mondayMorning.picture, asOf: '2027-06-14T08:00Z' },
  };
  const stock = openingStock(['CIN', 'ESK'], atEight.picture, dateOf(1));

  it('tolerance of a count: 250 L short of 2,400 L is outside 48 L, so the count holds', () => {
    const cin = stock.get('CIN')!;
    expect(cin.lastCount).toMatchObject({ verdict: 'lower', toleranceLitres: 48, ageHours: 0.5 });
    expect(cin).toMatchObject({ bookLitres: 2400, countShortfallLitres: 250, usableLitres: 2150 });
    expect(projectCaches(atEight).find((cache) => cache.place === 'CIN')!.usable[0]).toBe(2150);
  });

  it('tolerance of a count: 15 L short of 2,400 L is accepted and changes nothing', () => {
    const esk = stock.get('ESK')!;
    expect(esk.lastCount).toMatchObject({ verdict: 'accepted', toleranceLitres: 48 });
    expect(esk).toMatchObject({ bookLitres: 2400, usableLitres: 2400, remarks: [] });
  });

  it('usable stock: at six o’clock the counts are not known yet, and that is said', () => {
    const early = openingStock(['CIN'], mondayMorning.picture, dateOf(1)).get('CIN')!;
    expect(early).toMatchObject({ usableLitres: 2400, lastCount: null });
    expect(early.remarks).toEqual([
      'CIN: the count of 2150 L at 2027-06-14T07:30Z is later than the picture and was not used.',
    ]);
  });
});
