import { describe, expect, it } from 'vitest';
import { heardOf } from './heard.js';
import type { Sling } from './map-read.js';
import { approachInWords, indexOf, placeRows, shortInWords } from './place-rows.js';
import { cache, place, sling } from './testing/example-map.js';

describe('places', () => {
  const outlook = {
    dates: ['2027-06-14', '2027-06-15'],
    items: [cache('XLOR', [2200, 1000, 500]), cache('XKNA', [1520, 1520, 1520], 12 * 24)],
  };
  const places = [
    place('XKNA', { latitudeDeg: 65 }),
    place('XLOR', { latitudeDeg: 67 }),
    place('XMER', { kind: 'base', latitudeDeg: 66 }),
  ];
  const at = (day: string) =>
    placeRows(places, {
      outlook,
      filled: new Map([['XMER', { usable: 14, held: 10, pastRetest: 0 }]]),
      index: indexOf(outlook, day),
    });

  it('stand from north to south with their level at the end of the day', () => {
    expect(at('2027-06-14').map(({ place: { code }, words }) => `${code}: ${words}`)).toEqual([
      'XLOR: 1,000 L, below minimum',
      'XMER: 14 drums fit, 10 held',
      'XKNA: 1,520 L, count 12 days old',
    ]);
    expect(at('2027-06-15')[0]).toMatchObject({ level: 'critical', short: '500 L, critical' });
  });

  it('litres of a flight that needs a decision are marked from its day on, where it lands any', () => {
    const levelWith = (litres: number, day: string) => {
      const deliveries = [{ date: '2027-06-15', litres, needsDecision: 'strip soft' }];
      const items = outlook.items.map((each) => ({ ...each, deliveries }));
      const index = indexOf(outlook, day);
      return placeRows(places, { outlook: { ...outlook, items }, filled: new Map(), index })[0]!.words;
    };
    expect(levelWith(400, '2027-06-14')).toBe('1,000 L, below minimum');
    expect(levelWith(400, '2027-06-15')).toBe('500 L ?, below critical');
    expect(levelWith(0, '2027-06-15')).toBe('500 L, below critical');
  });

  it('so are litres slung on from there to a pad, from the day of the sling on', () => {
    const levelWith = (rest: Partial<Sling>) => {
      const pad = { ...outlook.items[0]!, slings: [sling({ from: 'XGAN', to: 'XLOR', ...rest })] };
      const index = indexOf(outlook, '2027-06-15');
      return placeRows(places, { outlook: { ...outlook, items: [pad] }, filled: new Map(), index })[0]!.words;
    };
    const inQuestion = { drums: 2, litres: 400 };
    expect(levelWith({ inQuestion })).toBe('500 L ?, below critical');
    expect(levelWith({})).toBe('500 L, below critical');
    expect(levelWith({ inQuestion, date: '2027-06-16' })).toBe('500 L, below critical');
    // What leaves is in question where it goes.
    expect(levelWith({ inQuestion, from: 'XLOR', to: 'XGAN' })).toBe('500 L, below critical');
  });

  it('where more is asked for than there is, the level says how much is short, never a negative stock', () => {
    const [cache] = outlook.items;
    const short = { ...cache!, projections: { offered: { usableLitres: [2200, -120, -120] } } };
    const [row] = placeRows(places, {
      outlook: { ...outlook, items: [short] },
      filled: new Map(),
      index: indexOf(outlook, '2027-06-14'),
    });
    expect([row!.words, row!.short]).toEqual(['short 120 L, below critical', 'short 120 L, critical']);
  });

  it('a day that the figures do not reach shows what is there now', () => {
    expect(at('2027-06-01')[0]!.words).toBe('2,200 L, above minimum');
    expect(shortInWords(at('2027-06-01'))).toBe('No cache is below its minimum.');
    expect(shortInWords(at('2027-06-14'))).toBe('XLOR 1,000 L, below minimum.');
  });

  it('a one-way strip says from which side, or that nobody has written it down', () => {
    const runway = { ...places[0]!.runway!, oneWay: true };
    expect(approachInWords(place('XGAN', { runway: { ...runway, approachFromDeg: 20 } }))).toBe(
      'one way, from 020° true',
    );
    expect(approachInWords(place('XGAN', { runway }))).toBe('one way; the side is not written down');
    expect(approachInWords(places[0]!)).toBeNull();
  });

  it('a surface report that is stale counts as unknown', () => {
    const report = { place: 'XLOR', state: 'dry', at: '2027-06-14T05:50Z', by: 'strip helper' } as const;
    const of = (time: string) =>
      heardOf([report], { at: new Date(time), timeZone: 'UTC' })(place('XLOR')).surface;
    expect(of('2027-06-14T17:00Z')).toBe('dry');
    expect(of('2027-06-14T18:00Z')).toBe('unknown');
  });
});
