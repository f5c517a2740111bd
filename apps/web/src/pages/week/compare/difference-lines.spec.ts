import { describe, expect, it } from 'vitest';
import { printedHours } from './add-up.js';
import { differenceGroups } from './difference-lines.js';
import { drumsWords, purposeWords, withoutWords } from './difference-words.js';
import type { Differences } from './differences-read.js';
import { day, flight, softTuesday } from './testing/soft-tuesday.js';

describe('the list of differences', () => {
  const groups = differenceGroups(softTuesday, day);

  it('always has its five groups, and line numbers through all of them', () => {
    expect(groups.map(({ name, flights }) => [name, flights])).toEqual([
      ['Removed', 1],
      ['Moved', 1],
      ['Added', 2],
      ['Drums changed', 0],
      ['Same', 2],
    ]);
    expect(groups.flatMap(({ lines }) => lines.map(({ number }) => number))).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('says why a flight is gone, and what a new one keeps and is bound by', () => {
    expect(groups[0]!.lines[0]).toMatchObject({
      flight: 'F05',
      was: 'B1 15, XALD-XLOR, 6 drums',
      why: 'XLOR when soft accepts 7,600 lb.',
      litres: -1200,
      flightCost: -2454,
    });
    expect(groups[2]!.lines[0]).toMatchObject({
      flight: null,
      why: 'Keeps XLOR above minimum, 15. Binds: XLOR landing.',
    });
  });

  it('of an accepted plan have their numbers', () => {
    const [, , added] = differenceGroups(softTuesday, day, new Map([['P01', 'F017']]));
    expect(added!.lines.map(({ flight }) => flight)).toEqual(['F017', null]);
  });

  it('marks what is not offered yet, and tells flown flights from those that were left as they were', () => {
    expect(groups[2]!.lines.map(({ isIdea }) => isIdea)).toEqual([false, true]);
    expect(groups[4]!.lines.map(({ flight, was, why }) => [flight, was, why])).toEqual([
      ['Flown or away', 'F01, 15', 'Never changes.'],
      ['Offered', 'F09, 15', 'Not touched.'],
    ]);
  });

  it('a flight with another take-off says when, and when it was', () => {
    const moved = [{ before: flight('F02'), after: flight('F02', { departs: '11:41' }) }];
    const { wouldBe } = differenceGroups({ ...softTuesday, moved }, day)[1]!.lines[0]!;
    expect(wouldBe.map(({ text }) => text).join('')).toContain('at 11:41 (was 07:00)');
  });

  it('says of a moved flight what flies there instead; or that no limit asked for it', () => {
    const whyOf = (change: Partial<Differences>) =>
      differenceGroups({ ...softTuesday, ...change }, day)[1]!.lines[0]!.why;
    const before = flight('F07', { stops: [{ place: 'XESK', drums: 5 }] });
    const moved = [{ before, after: { ...before, date: '2027-06-17' } }];
    expect(whyOf({ moved })).toMatch(/^In its place XMER-XLOR\. Keeps XLOR above minimum/);
    expect(whyOf({ moved, added: [] })).toMatch(/^No limit asked for it\. Keeps/);
    expect(whyOf({ moved: [{ before, after: { ...before, departs: '11:41' } }] })).toMatch(/^Keeps XLOR/);
  });

  it('shows only what a moved flight has new', () => {
    expect(groups[1]!.lines[0]!.wouldBe.filter(({ isNew }) => isNew)).toEqual([{ text: 'A2', isNew: true }]);
  });
});

describe('a line of the list', () => {
  it('has hours that add up as printed: 17.48 h in the lines is 17.48 h under them', () => {
    const hours = Array.from({ length: 12 }, () => 1.4567);
    const printed = printedHours(hours);
    expect(printed.reduce((sum, each) => sum + each, 0)).toBeCloseTo(17.48, 6);
    expect(12 * Number((1.4567).toFixed(2))).toBeCloseTo(17.52, 6);
    expect(printed.every((each) => Math.abs(each - 1.4567) < 0.01)).toBe(true);

    const added = hours.map((blockHours, at) => flight(`P${at + 10}`, { blockHours }));
    const lines = differenceGroups({ ...softTuesday, removed: [], moved: [], added }, day).flatMap(
      (group) => group.lines,
    );
    expect(lines.reduce((sum, line) => sum + (line.blockHours ?? 0), 0)).toBeCloseTo(17.48, 6);
  });

  it('names the stop at which drums are landed where another has none', () => {
    const stops = (...drums: number[]) =>
      flight('F07', { stops: drums.map((each, at) => ({ place: `X${at}`, drums: each })) });
    expect(drumsWords(stops(2, 4))).toBe('2 and 4 drums');
    expect(drumsWords(stops(0, 4))).toBe('4 drums at X1');
    expect(drumsWords(stops(1, 0, 4))).toBe('1 drum at X0, 4 drums at X2');
    expect(drumsWords(stops(0, 0))).toBe('no drums');
  });

  it('says of a removed flight who brings its drums instead, and how low the cache gets', () => {
    const level = {
      place: 'XLOR',
      beforeLitres: 1885,
      afterLitres: 1485,
      minimumLitres: 1200,
      criticalLitres: 600,
    };
    const lowest = [{ ...level, withIdeas: { beforeLitres: 1885, afterLitres: 1485 } }];
    const [removed] = softTuesday.removed;
    expect(withoutWords(removed!, { ...softTuesday, lowest })).toBe(
      'Other flights bring XLOR 8 drums instead. XLOR is lowest at 1,485 L without it, minimum 1,200 L.',
    );
    expect(withoutWords(removed!, { ...softTuesday, added: [], lowest })).toBe(
      'XLOR is lowest at 1,485 L without it, minimum 1,200 L.',
    );
  });
});

describe('why a flight is there', () => {
  it('where nothing falls short without it, is in the words of the plan: never without a reason', () => {
    const text =
      'Adds stock that no cache needs by the end: without it XLOR ends at 1,200 L instead of 1,400 L.';
    expect(purposeWords(flight('P03', { drums: 1, reason: { protects: null, text } }), String)).toBe(text);
  });
});
