import { describe, expect, it } from 'vitest';
import { levelScale, litreLines, stepped } from '../../../ui/index.js';
import { dayRows, sumOf } from '../table/day-rows.js';
import { cacheAt, dates, falling, levels } from '../testing/example-caches.js';
import { deliveryMarks, drawDays, topOf } from './graph-scale.js';

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
