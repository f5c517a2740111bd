import { describe, expect, it } from 'vitest';
import { countAgainstBook } from '../../counting/count-words.js';
import { instantOfTime, litresTyped } from '../../counting/typed.js';
import { levelScale, litreLines, stepped } from '../../ui/index.js';
import { type Choices, chosen, named } from './cache-list.js';
import { coverInShort, coverWords, dayNames, finding, levelAhead, lowestWords } from './cache-words.js';
import type { Cache } from './caches-read.js';
import { touchedRows } from './consequence-rows.js';
import { dayRows, sumOf } from './day-rows.js';
import { entryLines, entryWords } from './entry-words.js';
import { deliveryMarks, drawDays, topOf } from './graph-scale.js';
import { overRoom } from './minimum-form.js';
import { litresAfter } from './programme-read.js';

const dates = ['2027-06-14', '2027-06-15', '2027-06-16'];
const dayName = dayNames(dates, (date) => `day ${Number(date.slice(8))}`);

const lowestEnd = (usable: readonly number[]) => {
  const litres = Math.min(...usable.slice(1));
  return { litres, day: usable.indexOf(litres, 1) };
};

const levels = (usableLitres: number[], rest: object = {}): Cache['projections']['offered'] => ({
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

const cacheAt = (place: string, rest: Partial<Cache> = {}): Cache => ({
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

const countOf = (ageHours: number): Cache['stock'] => ({
  ...cacheAt('XMAR').stock,
  lastCount: {
    count: { at: '2027-06-03T16:00Z', by: 'crew of A1', seenFrom: 'ground', litres: 600 },
    countedLitres: 600,
    toleranceLitres: 12,
    verdict: 'accepted',
    ageHours,
  },
});

const falling = {
  offered: levels([600, 600, 600, 375], { belowMinimumDay: 3 }),
  noDeliveries: levels([600, 600, 600, 375]),
};
const all: Choices = { text: '', sort: 'cover', only: 'all', kind: 'all' };
const placesIn = (caches: readonly Cache[], choices: Partial<Choices>) =>
  chosen(named(caches, [{ code: 'XMAR', name: 'Marrow Pad', kind: 'pad', stripClass: null }]), {
    ...all,
    ...choices,
  }).map(({ cache }) => cache.place);

describe('which caches, in which order', () => {
  const caches = [
    cacheAt('XBIR', { daysOfCover: null, stock: countOf(2) }),
    cacheAt('XMAR', { daysOfCover: 15, projections: falling }),
    cacheAt('XLOR', { daysOfCover: 3, stock: countOf(254) }),
  ];

  it('the first day below critical first, then below minimum, then cover: cover for 15 days does not hide a fall', () => {
    const critical = {
      ...falling,
      offered: levels([600, 600, 100, 100], { belowCriticalDay: 2, belowMinimumDay: 2 }),
    };
    const all = [...caches, cacheAt('XKNA', { daysOfCover: 20, projections: critical })];
    expect(placesIn(all, { sort: 'first' })).toEqual(['XKNA', 'XMAR', 'XLOR', 'XBIR']);
  });

  it('least cover first, and last what nothing is drawn from', () =>
    expect(placesIn(caches, {})).toEqual(['XLOR', 'XMAR', 'XBIR']));

  it('by code, by room above the minimum, by age of the count with the uncounted first', () => {
    expect(placesIn(caches, { sort: 'name' })).toEqual(['XBIR', 'XLOR', 'XMAR']);
    expect(placesIn(caches, { sort: 'room' })[0]).toBe('XMAR');
    expect(placesIn(caches, { sort: 'count' })).toEqual(['XMAR', 'XLOR', 'XBIR']);
  });

  it('by name or code, below minimum ahead, an old count, a kind of place', () => {
    expect(placesIn(caches, { text: 'marrow' })).toEqual(['XMAR']);
    expect(placesIn(caches, { text: 'xl' })).toEqual(['XLOR']);
    expect(placesIn(caches, { only: 'below' })).toEqual(['XMAR']);
    expect(placesIn(caches, { only: 'old' })).toEqual(['XLOR', 'XMAR']);
    expect(placesIn(caches, { kind: 'pad' })).toEqual(['XMAR']);
  });
});

describe('what is said of a cache', () => {
  it('the worst that lies ahead comes before an old count', () => {
    expect(levelAhead(cacheAt('XMAR', { projections: falling, stock: countOf(254) }), dayName)).toEqual({
      level: 'below',
      words: 'Below, day 16',
    });
    expect(levelAhead(cacheAt('XKNA', { stock: countOf(254) }), dayName)).toEqual({
      level: 'unknown',
      words: 'Count 10 days old',
    });
  });

  it('days of cover say of which moment and at which draw, and why a cache runs out before', () => {
    const noDeliveries = levels([2200, 1405, -55, -320], {
      belowMinimumDay: 2,
      belowCriticalDay: 2,
      runOutDay: 2,
    });
    const lorn = cacheAt('XLOR', { daysOfCover: 10.6, projections: { ...falling, noDeliveries } });
    expect(coverWords(lorn, dayName)).toBe(
      'Without deliveries: below minimum day 15, below critical day 15, run out day 15. 10.6 days of cover: 2,200 L now at the mean draw of 3 days, 208 L a day; the draws come early, so it runs out before.',
    );
    expect(coverWords(cacheAt('XBIR', { daysOfCover: 12 }), dayName)).toBe(
      'Without deliveries it stays above its minimum. 12.0 days of cover: 600 L now at the mean draw of 3 days, 50 L a day.',
    );
    expect(coverWords(cacheAt('XBIR', { daysOfCover: null }), dayName)).toContain('Nothing is drawn.');
    // Beside "Critical, Tue 15" a mean is not called cover.
    const inShort = [lorn, cacheAt('XBIR', { daysOfCover: 12 }), cacheAt('XBIR', { daysOfCover: null })];
    expect(inShort.map(coverInShort)).toEqual(['10.6 days, mean draw', '12.0 days of cover', 'no draws']);
  });

  it('the finding of a graph names the lowest level, its day and what happens without deliveries', () => {
    const cache = cacheAt('XMAR', { projections: falling });
    expect(finding(cache, dayName)).toBe(
      'XMAR: lowest 375 L day 16, minimum 400 L. Without deliveries it stays above its minimum.',
    );
  });

  it('no cache holds less than nothing: it runs out, and is so much short', () => {
    const short = levels([600, -40, -1515], { belowMinimumDay: 1, belowCriticalDay: 1, runOutDay: 1 });
    expect(lowestWords(short, dayName)).toBe('runs out day 14, 1,515 L short');
    expect(lowestWords(levels([600, -40], { runOutDay: 1 }), dayName)).toBe('runs out day 14, 40 L short');
    expect(lowestWords(levels([600, 0], { runOutDay: 1 }), dayName)).toBe('lowest 0 L day 14');
  });

  it('a cache that is below now and filled today says both levels', () => {
    expect(lowestWords(levels([720, 1800, 1400]), dayName)).toBe('720 L now, then lowest 1,400 L day 15');
  });

  it('a dip outside the tolerance opens a case before it is sent; one inside agrees', () => {
    expect(countAgainstBook(2150, 2400, 48)).toMatch(
      /^250 L short of the book of 2,400 L, 48 L allowed: a difference case opens, and the projection uses 2,150 L/,
    );
    expect(countAgainstBook(2385, 2400, 48)).toBe('15 L under the book of 2,400 L, 48 L allowed: agrees.');
  });
});

describe('a graph', () => {
  it('has one of three scales from zero, and grows above them', () => {
    const holding = (litres: number) =>
      topOf(cacheAt('X', { projections: { ...falling, offered: levels([litres]) } }));
    expect([1990, 2001, 3001, 5001].map(holding)).toEqual([2000, 3000, 5000, 10000]);
    expect(litreLines(2000)).toEqual([0, 1000, 2000]);
    expect(litreLines(10000)).toHaveLength(6);
  });

  it('steps down at the end of a day, and never below the foot', () => {
    const scale = levelScale({ width: 158, height: 146 }, 2, 2000);
    expect(stepped([2000, 1000, -50], scale)).toBe(
      `M36 19H${scale.x(1)}V${scale.y(1000)}H${scale.right}V${scale.bottom}`,
    );
  });

  it('marks a day once: asked before offered before approved, and a sling that comes in', () => {
    const delivery = {
      flight: 'F1',
      date: dates[0]!,
      drums: 4,
      heldDrums: 0,
      litres: 800,
      state: 'approved',
      needsDecision: null,
    };
    const load = { drums: 6, litres: 1200 };
    const sling = { date: dates[2]!, helicopter: 'H1', from: 'XESK', to: 'XMAR', drums: 6, load };
    const cache = cacheAt('XMAR', {
      deliveries: [
        delivery,
        { ...delivery, state: 'offered' },
        { ...delivery, date: dates[1]!, needsDecision: 'strip soft' },
      ],
      slings: [sling, { ...sling, from: 'XMAR', to: 'XNED', date: dates[1]! }],
      draws: [{ date: dates[0]!, litres: 225, for: 'P1', helicopter: 'H1' }],
    });
    expect(deliveryMarks(cache, dates, 20).map(({ drums, look }) => [drums, look])).toEqual([
      [8, 'open'],
      [4, 'asked'],
      [6, 'filled'],
    ]);
    expect(drawDays(cache, dates)).toEqual([1, 2]);
    const [first, second] = dayRows(cache, dates);
    expect([sumOf(first!.landed), sumOf(first!.drawn)]).toEqual([1600, 225]);
    expect([second!.landed[0]!.isAsked, second!.drawn[0]!.by]).toEqual([true, 'sling XNED']);
  });

  it('drums on hold are no litre of a delivery and no drum of its mark, and the row says so', () => {
    const held = { flight: 'F1', date: dates[0]!, drums: 5, heldDrums: 5, litres: 0, state: 'given' };
    const cache = cacheAt('XLOR', { deliveries: [{ ...held, needsDecision: 'J27-041 is held.' }] });
    expect(dayRows(cache, dates)[0]!.landed).toEqual([
      { litres: 0, by: 'F1, 5 of 5 drums HOLD', isAsked: true },
    ]);
    expect(deliveryMarks(cache, dates, 20)).toMatchObject([{ drums: 0, look: 'asked' }]);
  });

  it('a sling whose place has too little: the row and the mark say what it takes along', () => {
    const planned = { date: dates[0]!, helicopter: 'H1', from: 'XESK', to: 'XMAR', drums: 6 };
    const short = { ...planned, load: { drums: 2, litres: 400 } };
    const none = { ...planned, load: { drums: 0, litres: 0 } };
    const rowOf = (place: string, sling: typeof short) =>
      dayRows(cacheAt(place, { slings: [sling] }), dates)[0]!;
    expect(rowOf('XMAR', short).landed).toMatchObject([{ litres: 400, by: 'sling XESK, 2 of 6 drums' }]);
    expect(rowOf('XESK', none).drawn).toMatchObject([{ litres: 0, by: 'sling XMAR, 0 of 6 drums' }]);
    expect(deliveryMarks(cacheAt('XMAR', { slings: [short] }), dates, 20)).toMatchObject([{ drums: 2 }]);
    expect(drawDays(cacheAt('XESK', { slings: [none] }), dates)).toEqual([]);
  });
});

describe('the counts of deliveries', () => {
  const landsDaily = cacheAt('XLOR', {
    deliveries: [2, 6, 6].map((drums, index) => ({
      ...{ flight: `F${index}`, date: dates[index]!, drums, heldDrums: 0, litres: drums * 200 },
      state: 'approved',
      needsDecision: index === 0 ? null : 'strip soft',
    })),
  });
  const rows = (dayWidth: number) => deliveryMarks(landsDaily, dates, dayWidth).map(({ row }) => row);

  it('stand on one line where the days are far enough apart, else one above the other', () => {
    expect(rows(20)).toEqual([0, 0, 0]);
    expect(rows(10)).toEqual([0, 1, 0]);
    expect(rows(5.8)).toEqual([0, 1, 2]);
  });
});

describe('a change before it is made', () => {
  it('a minimum above the room of its place is refused before the press, with the room', () => {
    expect(overRoom(30, 99_999, 200)).toBe(
      '99,999 L does not fit on a site for 30 drums, 6,000 L: lower it, or correct the capacity at Set-up.',
    );
    expect([overRoom(30, 6000, 200), overRoom(30, undefined, 200)]).toEqual([undefined, undefined]);
  });

  it('3 h more at MAR: 39 L for 375 L on day 3, and that it was short before', () => {
    const course = { minimumLitres: 400, criticalLitres: 200 };
    const [row] = touchedRows(
      {
        items: [
          {
            place: 'XMAR',
            before: { ...course, levels: falling.offered },
            after: {
              ...course,
              levels: levels([600, 600, 600, 39], { belowMinimumDay: 3, belowCriticalDay: 3 }),
            },
          },
        ],
      },
      dayName,
    );
    expect(row).toMatchObject({ place: 'XMAR', day: 3, before: 375, after: 39 });
    expect(row!.words).toBe(
      'below minimum day 16, below critical day 16 (minimum 400 L, critical 200 L); before the change already below minimum day 16.',
    );
  });

  it('more hours burn by the litres an hour of the helicopter', () => {
    const task = { date: dates[2]!, helicopter: 'H1', programme: 'P1', place: 'XMAR', hours: 2, litres: 225 };
    expect(litresAfter(task, 5, 112)).toBe(225 + 336);
  });
});

describe('what is typed and read', () => {
  it('a time of day is of today, and of yesterday where it has not come yet', () => {
    const clock = { now: new Date('2027-06-14T06:20Z'), time: () => '06:20' };
    expect(instantOfTime('06:10', clock)).toBe('2027-06-14T06:10Z');
    expect(instantOfTime('1740', clock)).toBe('2027-06-13T17:40Z');
    expect(instantOfTime('25:00', clock)).toBeUndefined();
  });

  it('litres are whole', () =>
    expect(['2,150', '2150', '', '12.5'].map(litresTyped)).toEqual([2150, 2150, undefined, undefined]));

  it('entries are sentences; the opening of the ledger is one line, a draw always its own', () => {
    const entry = { happenedAt: '2027-06-14T06:00Z', by: 'opening of the ledger', means: 'paper' };
    const received = ['0001', '0002'].map((drum) => ({ ...entry, id: drum, kind: 'received', drum }));
    const drawn = {
      ...entry,
      id: 'd',
      kind: 'drawn',
      drum: '0001',
      millilitres: 150_000,
      into: 'H1',
      programme: 'P1',
    };
    expect(entryWords(drawn)).toBe('150 L drawn from 0001 into H1 for P1');
    expect(entryLines([...received, drawn]).map(({ words }) => words)).toEqual([
      '2 drums received',
      '150 L drawn from 0001 into H1 for P1',
    ]);
  });
});
