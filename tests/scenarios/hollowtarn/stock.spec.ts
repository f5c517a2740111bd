import {
  baseSupply,
  consequenceOfHold,
  expiryLosses,
  type Hold,
  openingStock,
  pickDrums,
  projectCaches,
  type StockOutlook,
} from '@drumline/stock';
import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import {
  bases,
  batches,
  dateOf,
  drums,
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
    const aged = expiryLosses(mondayMorning).flatMap((cache) => cache.drums);
    const drumsAt = Object.fromEntries(
      ['BIR', 'DUN', 'HAS', 'JUN'].map((place) => [
        place,
        aged.filter((drum) => drum.place === place).length,
      ]),
    );
    expect(drumsAt).toEqual({ BIR: 6, DUN: 2, HAS: 1, JUN: 3 });
    expect(aged).toHaveLength(12);
    expect(new Set(aged.map((drum) => drum.dueDay))).toEqual(new Set([9]));
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
    expect(early.countsNotUsed).toMatchObject([{ place: 'CIN', litres: 2150, at: '2027-06-14T07:30Z' }]);
  });
});

describe('what the bases can give', () => {
  it.each([
    { base: 'ALD', ready: [60, 80, 100, 120, 130, 130] },
    { base: 'MER', ready: [24, 36, 48, 60, 69, 69] },
  ])('drums ready at a base: $base fills by its rate until its empties are used up', ({ base, ready }) => {
    const stock = bases.find(({ place }) => place === base)!;
    const supply = baseSupply(stock, drums, batches, mondayMorning.dates, mondayMorning.fillLitres);
    expect(supply.drumsByDay.slice(0, 6)).toEqual(ready);
    expect(supply.litresByDay[0]).toBe(stock.bulkLitres + ready[0]! * 200);
  });

  it('oldest fit first: six drums from ALD are the six on the load sheet, of the batch due first', () => {
    const [pick] = pickDrums([{ id: 'F05', place: 'ALD', drums: 6, plannedUse: dateOf(2) }], drums, batches);
    expect(pick!.drums.map(({ number }) => number)).toEqual(['0447', '0448', '0449', '0450', '0451', '0452']);
  });

  it('oldest fit first: with that batch held the flight takes the next', () => {
    const held = batches.map((batch) => (batch.id === 'J27-012' ? { ...batch, held: hold } : batch));
    const [pick] = pickDrums([{ id: 'F05', place: 'ALD', drums: 6, plannedUse: dateOf(2) }], drums, held);
    const batchOf = new Map(drums.map(({ number, batch }) => [number, batch]));
    expect(pick!.drums.map(({ number }) => batchOf.get(number))).toEqual(Array(6).fill('J27-041'));
  });
});

describe('three more hours at MAR on day 3', () => {
  const more = { date: dateOf(3), place: 'MAR', litres: litres(336), for: 'H1 ridge survey' };
  const busier = { ...mondayMorning, draws: [...mondayMorning.draws, more] };
  const marOf = (outlook: StockOutlook) => projectCaches(outlook).find(({ place }) => place === 'MAR')!;

  it('MAR falls from 375 L, below its minimum already, to 39 L, below critical', () => {
    expect(marOf(mondayMorning).usable[3]).toBe(375);
    expect(marOf(mondayMorning)).toMatchObject({ belowMinimumDay: 3, belowCriticalDay: null });
    expect(marOf(busier).usable[3]).toBe(39);
    expect(marOf(busier)).toMatchObject({ belowMinimumDay: 3, belowCriticalDay: 3 });
  });

  it.each([2, 3])(
    'the sling of six drums from ESK on day %i instead of day 4 keeps MAR above its minimum',
    (day) => {
      const earlier = mondayMorning.slings.map((move) =>
        move.to === 'MAR' ? { ...move, date: dateOf(day) } : move,
      );
      expect(marOf({ ...busier, slings: earlier })).toMatchObject({ belowMinimumDay: null, runOutDay: null });
    },
  );
});
