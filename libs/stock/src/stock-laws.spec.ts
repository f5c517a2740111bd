import { type Litres, litres } from '@drumline/units';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Drum } from './drum.js';
import { exampleCache, exampleOutlook, partDrum, sealedDrum } from './example-stock.js';
import { withHold } from './hold.js';
import { projectCaches, type StockOutlook } from './project-caches.js';

const dates = ['2027-06-14', '2027-06-15', '2027-06-16'];
const place = fc.constantFrom('STRIP', 'PAD');
const date = fc.constantFrom(...dates);
const amount = fc.integer({ min: 0, max: 600 }).map(litres);
const drums: fc.Arbitrary<readonly Drum[]> = fc
  .array(fc.record({ batch: fc.constantFrom('old', 'new'), place, left: fc.integer({ min: 1, max: 200 }) }), {
    maxLength: 12,
  })
  .map((rows) =>
    rows.map(({ batch, place, left }, index) =>
      left === 200 || index % 2
        ? sealedDrum(`${index}`, batch, place)
        : partDrum(`${index}`, batch, place, left),
    ),
  );
const draws = fc.array(fc.record({ date, place, litres: amount, for: fc.constant('survey') }), {
  maxLength: 8,
});
const landings = fc.array(
  fc.record({
    date,
    place,
    litres: fc.integer({ min: 1, max: 4 }).map((count) => litres(count * 200)),
    retestDue: fc.constantFrom(null, '2027-06-15'),
  }),
  { maxLength: 4 },
);
const slings = fc.array(
  fc
    .record({ date, drums: fc.integer({ min: 1, max: 4 }) })
    .map((move) => ({ ...move, from: 'STRIP', to: 'PAD' })),
  { maxLength: 3 },
);
const counts = fc.array(
  fc.record({
    place,
    at: fc.constant('2027-06-13T12:00Z'),
    litres: fc.integer({ min: 0, max: 2000 }).map(litres),
    openDrums: fc.constant(0),
    by: fc.constant('helper'),
    seenFrom: fc.constant('ground' as const),
  }),
  { maxLength: 2 },
);
const reserve = fc.constantFrom(0, 200).map(litres);
const outlook: fc.Arbitrary<StockOutlook> = fc
  .record({ drums, draws, landings, slings, counts, reserve })
  .map(({ drums, counts, reserve, ...rest }) => {
    const plain = exampleOutlook(drums, rest);
    return {
      ...plain,
      picture: { ...plain.picture, counts },
      caches: plain.caches.map(({ place }) => exampleCache(place, { medevacReserveLitres: reserve })),
    };
  });
const hold = { reason: 'recall', by: 'fuel quality', at: '2027-06-14T05:00Z' };

const sum = (figures: readonly Litres[]) => figures.reduce<number>((total, figure) => total + figure, 0);
const upTo = (figures: readonly Litres[], day: number) => sum(figures.slice(0, day + 1));

it('usable stock: usable never exceeds the book', () => {
  fc.assert(
    fc.property(outlook, (any) => {
      for (const { book, usable } of projectCaches(any))
        for (const [day, level] of usable.entries()) expect(level).toBeLessThanOrEqual(book[day]!);
    }),
  );
});

it('book projection: opening book + landed + slung in - slung out - drawn', () => {
  fc.assert(
    fc.property(outlook, (any) => {
      for (const { book, landed, slungIn, slungOut, drawn } of projectCaches(any))
        for (const [day, level] of book.entries())
          expect(level).toBe(
            book[0]! + upTo(landed, day) + upTo(slungIn, day) - upTo(slungOut, day) - upTo(drawn, day),
          );
    }),
  );
});

it('usable stock: what stands there is never less than nothing, and no draw goes below the reserve', () => {
  fc.assert(
    fc.property(outlook, (any) => {
      for (const { usable, unmet, drawn, reserveLitres } of projectCaches(any))
        for (const [day, level] of usable.entries()) {
          const stands = level + upTo(unmet, day);
          expect(stands).toBeGreaterThanOrEqual(0);
          if (drawn[day]! > unmet[day]!) expect(stands).toBeGreaterThanOrEqual(reserveLitres);
        }
    }),
  );
});

it('order of a day: the order of the draws within a day does not matter for the levels', () => {
  fc.assert(
    fc.property(outlook, (any) => {
      const reversed = { ...any, draws: [...any.draws].reverse() };
      expect(projectCaches(reversed)).toEqual(projectCaches(any));
    }),
  );
});

it('slings: litres are conserved between strip and pad', () => {
  fc.assert(
    fc.property(outlook, (any) => {
      const bookOfAll = (of: StockOutlook) => {
        const [strip, pad] = projectCaches(of);
        return strip!.book.map((level, day) => level + pad!.book[day]!);
      };
      expect(bookOfAll(any)).toEqual(bookOfAll({ ...any, slings: [] }));
      const [strip, pad] = projectCaches(any);
      expect(pad!.slungIn).toEqual(strip!.slungOut);
    }),
  );
});

it('slings: no litre from nothing: what the levels of strip and pad hold comes from before or from a landing', () => {
  fc.assert(
    fc.property(outlook, (any) => {
      const caches = projectCaches(any);
      const held = (day: number) => caches.reduce((all, { usable }) => all + Math.max(0, usable[day]!), 0);
      const landed = (day: number) => caches.reduce((all, { landed }) => all + landed[day]!, 0);
      for (let day = 1; day <= dates.length; day++)
        expect(held(day)).toBeLessThanOrEqual(held(day - 1) + landed(day));
    }),
    { numRuns: 300 },
  );
});

it('usable stock: holding a drum never raises usable, and leaves the book alone', () => {
  fc.assert(
    fc.property(outlook, fc.nat({ max: 11 }), (any, number) => {
      // Without slings: a hold may send fresher drums to the pad, which then last longer there.
      const before = { ...any, slings: [] };
      const after = { ...before, picture: withHold(before.picture, { drums: [`${number}`] }, hold) };
      const free = projectCaches(before);
      for (const [index, { usable, book }] of projectCaches(after).entries()) {
        expect(book).toEqual(free[index]!.book);
        for (const [day, level] of usable.entries())
          expect(level).toBeLessThanOrEqual(free[index]!.usable[day]!);
      }
    }),
    { numRuns: 300 },
  );
});
