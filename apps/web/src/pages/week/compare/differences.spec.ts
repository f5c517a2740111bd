import { describe, expect, it } from 'vitest';
import type { ListedPlan } from '../plan/plan-read.js';
import { printedHours, wholeMoney } from './add-up.js';
import { differenceGroups } from './difference-lines.js';
import { drumsWords, purposeWords, withoutWords } from './difference-words.js';
import type { ComparedFlight, Differences, Totals } from './differences-read.js';
import { findingOf } from './finding.js';
import { acceptWords, leftOutOff } from './left-out.js';
import { lineRanges } from './line-ranges.js';
import { keptByIdeasWords } from './lowest-words.js';
import { newerPlan } from './newer-plan.js';
import { openToLetGo } from './open-to-let-go.js';
import { totalRows } from './total-rows.js';

const money = (flight: number, fuel: number, handling: number) => ({
  flight,
  fuel,
  handling,
  total: flight + fuel + handling,
  litres: 0,
  perLitre: null,
});

const totals = (cost: Totals['cost'], rest: Partial<Totals>): Totals => ({
  flights: 16,
  drums: 73,
  litres: 14_600,
  blockHours: 18.9,
  cost,
  drumsFromBase: [],
  ...rest,
});

const flight = (id: string, rest: Partial<ComparedFlight> = {}): ComparedFlight => ({
  id,
  kind: 'positioning',
  state: 'offered',
  date: '2027-06-15',
  departs: '07:00',
  aircraft: 'A1',
  pilot: null,
  from: 'XMER',
  stops: [{ place: 'XLOR', drums: 4 }],
  legs: [
    {
      drumsAboard: 4,
      drumsPossible: 4,
      spareLb: 20,
      binding: { name: 'strip landing limit', place: 'XLOR' },
    },
  ],
  drums: 4,
  litres: 800,
  blockHours: 1.37,
  cost: money(134_400, 196_000, 3_600),
  reason: { protects: { place: 'XLOR', date: '2027-06-15', level: 'below minimum' }, text: 'Keeps XLOR.' },
  ...rest,
});

// Figures of product.md, T1: the reference re-plan after LOR and HAS went soft.
const softTuesday: Differences = {
  removed: [
    flight('F05', {
      aircraft: 'B1',
      from: 'XALD',
      stops: [{ place: 'XLOR', drums: 6 }],
      drums: 6,
      litres: 1200,
      blockHours: 1.98,
      cost: money(245_440, 180_000, 5_400),
    }),
  ],
  moved: [{ before: flight('F06'), after: flight('F06', { aircraft: 'A2' }) }],
  added: [flight('P01'), flight('P02', { date: '2027-06-23' })],
  drumsChanged: [],
  cannotKeep: [],
  remarks: [],
  same: [
    { before: flight('F01', { state: 'reported' }), after: flight('F01', { state: 'reported' }) },
    { before: flight('F09'), after: flight('F09') },
  ],
  totals: {
    before: totals(money(2_202_100, 3_254_000, 65_700), {
      drumsFromBase: [
        { place: 'XALD', drums: 17 },
        { place: 'XMER', drums: 56 },
      ],
    }),
    after: totals(money(2_114_500, 3_384_000, 63_900), {
      drums: 71,
      litres: 14_200,
      blockHours: 19,
      drumsFromBase: [
        { place: 'XALD', drums: 5 },
        { place: 'XMER', drums: 66 },
      ],
    }),
  },
  lowest: [],
  asOf: '2027-06-15T06:52Z',
  lastOfferedDay: '2027-06-21',
  lastDay: '2027-06-28',
  laterIdeas: { before: 0, after: 1 },
  mayLeaveOut: ['F05', 'F06', 'P01'],
  leftOut: [],
  faultsAfter: [],
  faults: [{ flight: 'F05', text: 'XLOR when soft accepts 7,600 lb.' }],
  bases: {
    before: [{ place: 'XMER', drumsReady: 114, leftLitres: 11_600, note: 'nothing before November' }],
    after: [{ place: 'XMER', drumsReady: 114, leftLitres: 9_600, note: 'nothing before November' }],
  },
  expectedDrums: { before: 60.6, after: 58.8 },
  levels: [],
};

const day = (date: string) => date.slice(8);
const find = (change: Partial<Differences['totals']>) =>
  findingOf({ ...softTuesday, totals: { ...softTuesday.totals, ...change } }, 'cr');

describe('the finding', () => {
  it('says the flight bill and the whole plan, and what the rise is about', () => {
    expect(findingOf(softTuesday, 'cr')).toBe(
      'The flight bill falls by 876 cr and the whole plan rises by 406 cr, because ten more drums come from XMER.',
    );
  });

  it('names the drums in all where more are landed than come from another base', () => {
    const { before } = softTuesday.totals;
    const from = (XALD: number, XMER: number) =>
      find({
        after: {
          ...before,
          cost: money(2_202_100, 3_754_000, 65_700),
          drumsFromBase: [
            { place: 'XALD', drums: XALD },
            { place: 'XMER', drums: XMER },
          ],
        },
      });
    expect(from(29, 66)).toMatch(/because 22 more drums are landed\.$/);
    expect(from(17, 68)).toMatch(/because twelve more drums come from XMER\.$/);
    expect(from(9, 68)).toMatch(/because twelve more drums come from XMER\.$/);
  });

  it('names flights where the flight bill makes the difference', () => {
    const after = totals(money(2_000_000, 3_254_000, 65_700), { flights: 14 });
    expect(find({ after })).toBe(
      'The flight bill falls by 2,021 cr and the whole plan falls by 2,021 cr, because two fewer flights are flown.',
    );
  });

  it('gives no cause where none of its figures goes the way of the whole', () => {
    const { before } = softTuesday.totals;
    expect(find({ after: { ...before, cost: money(2_202_100, 3_254_000, 75_700) } })).toBe(
      'The flight bill stays and the whole plan rises by 100 cr.',
    );
  });

  it('of a first plan, and of one that changes nothing', () => {
    const before = totals(money(0, 0, 0), { drums: 0 });
    expect(find({ before })).toBe('16 flights land 71 drums for 55,624 cr; no plan stood before.');
    const nothing = { ...softTuesday, removed: [], moved: [], added: [] };
    expect(findingOf(nothing, 'cr')).toBe('Nothing changes: the flights that stand are the plan.');
    const short = { ...nothing, cannotKeep: [{ text: 'XLOR is below critical.', blockedBy: 'the night.' }] };
    expect(findingOf(short, 'cr')).toBe(
      'No better flights were found than those that stand, and what is short stays so: see what it cannot keep, and why.',
    );
    const none = { ...short.totals.after, flights: 0 };
    expect(findingOf({ ...short, totals: { ...short.totals, after: none } }, 'cr')).toBe(
      'No flight was found, and what is short stays so: see what it cannot keep, and why.',
    );
  });
});

const groupsOf = (differences: Differences) =>
  differenceGroups(differences, day).flatMap(({ lines }) => lines);

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

describe('the lowest levels', () => {
  // a-diff: the first plan of the demo.
  const lowest = (place: string, afterLitres: number, withIdeas: number) => ({
    ...{ place, minimumLitres: 1000, criticalLitres: 600, beforeLitres: -1, afterLitres },
    withIdeas: { beforeLitres: -1, afterLitres: withIdeas },
  });

  it('name the caches that only ideas keep, which no line of what it cannot keep has', () => {
    expect(
      keptByIdeasWords([lowest('XFAL', 5, 1005), lowest('XKNA', -20, 1400), lowest('XMAR', 375, 375)]),
    ).toBe('Kept by ideas only, not offered yet: XFAL (5 L without them), XKNA (runs out).');
    expect(keptByIdeasWords([lowest('XMAR', 375, 375), lowest('XGAN', 1480, 1480)])).toBeNull();
  });
});

describe('lines that are left out', () => {
  const without = (leftOut: readonly string[], faultsAfter: Differences['faultsAfter'] = []) => {
    const differences = { ...softTuesday, leftOut: [...leftOut], faultsAfter };
    return { differences, groups: differenceGroups(differences, day) };
  };

  it('can be those that decide something: no idea, no flight that stays', () => {
    expect(groupsOf(softTuesday).map(({ key }) => key)).toEqual(['F05', 'F06', 'P01', null, null, null]);
  });

  it('change nothing, and the sums are of the lines that are taken', () => {
    const [removed] = without(['F05']).groups;
    expect(removed!.lines[0]).toMatchObject({ isLeftOut: true, litres: null, flightCost: null });
    expect(groupsOf(without(['F05']).differences)[1]).toMatchObject({ isLeftOut: false });
  });

  it('are named where the plan is accepted', () => {
    expect(acceptWords(without([]).groups)).toBe('Accept lines 1 to 4');
    expect(acceptWords(without(['F06']).groups)).toBe('Accept lines 1, 3, 4');
    expect(lineRanges([1, 2, 3, 5, 7, 8])).toBe('lines 1 to 3, 5, 7, 8');
    expect(lineRanges([4])).toBe('line 4');
  });

  it('keep Accept off while they are checked, when nothing is left, and when what is left breaks a limit', () => {
    const part = without(['F05']);
    expect(leftOutOff(part.differences, ['F05'], part.groups)).toBeUndefined();
    expect(leftOutOff(part.differences, [], part.groups)).toBe('What is left is being checked.');
    const none = without(['F05', 'F06', 'P01']);
    expect(leftOutOff(none.differences, ['P01', 'F05', 'F06'], none.groups)).toBe(
      'Every line is left out: nothing would change.',
    );
    const broken = without(['F05'], [{ flights: ['F05', 'P01'], text: 'XLOR unloads 6 drums a day.' }]);
    expect(leftOutOff(broken.differences, ['F05'], broken.groups)).toBe(
      'Without line 1 it breaks a limit. XLOR unloads 6 drums a day.',
    );
  });
});

describe('a newer plan', () => {
  const plan = (id: string, rest: Partial<ListedPlan> = {}): ListedPlan => ({
    id,
    request: { endTarget: 'operator', seconds: 20 },
    state: 'solved',
    requestedByName: 'T. Orrin',
    asOf: '2027-06-15T06:53Z',
    secondsGone: 20,
    cancelAsked: false,
    progress: null,
    cost: money(1, 1, 1),
    moneyGap: null,
    acceptedByName: null,
    number: null,
    ...rest,
  });

  it('is the latest that was found or is being made after the one that is shown', () => {
    const failed = plan('4', { state: 'failed', cost: null });
    expect(newerPlan([failed, plan('3'), plan('2'), plan('1')], '2')?.id).toBe('3');
    expect(newerPlan([plan('3', { state: 'solving', cost: null }), plan('2')], '2')?.id).toBe('3');
    expect(newerPlan([failed, plan('2')], '2')).toBeUndefined();
  });

  it('is the latest of all where the one that is shown is too old to be listed', () => {
    expect(newerPlan([plan('30'), plan('29')], '2')?.id).toBe('30');
    expect(newerPlan([], '2')).toBeUndefined();
  });
});

describe('totals', () => {
  it('add up as printed, down and across, with what each base gives and has left', () => {
    const rows = totalRows(softTuesday, 'cr');
    const [flown, fuel, handling, whole] = rows;
    expect([flown!.rise, fuel!.rise, handling!.rise, whole!.rise]).toEqual([-876, 1300, -18, 406]);
    expect(whole).toMatchObject({ before: 55_218, after: 55_624, isSum: true });
    expect(rows.find(({ name }) => name === 'From XMER')).toMatchObject({ before: 56, after: 66, rise: 10 });
    expect(rows.find(({ name }) => name === 'Left at XMER')).toMatchObject({ rise: -2000, unit: 'L' });
  });

  it('hours rise in the totals as under the list, to the hundredth, and add up across', () => {
    const { before, after } = softTuesday.totals;
    const hours = { before: { ...before, blockHours: 18.886 }, after: { ...after, blockHours: 19.048 } };
    const block = totalRows({ ...softTuesday, totals: hours }, 'cr').find(({ name }) => name === 'Block');
    // 18.89 to 19.05 h, and under the list 19.048 - 18.886 = 0.16 h.
    expect(block).toMatchObject({ before: 18.89, rise: 0.16, after: 19.05, digits: 2 });
  });

  it('three parts of 33.4 are 33, 34 and 33: together the 100 that are printed', () => {
    expect(wholeMoney([3340, 3340, 3340])).toEqual([33, 34, 33]);
  });
});

describe('frozen flights that a plan counts on and that cannot be flown', () => {
  const broken = { fault: { what: 'XLOR when soft accepts 7,600 lb.', mend: '' }, consequence: '' };
  const found = { needsDecision: ['F05', 'F06', 'F07'].map((id) => ({ ...broken, flight: id })) };
  const standing = (id: string, state: string, needsDecision: string | null) => ({
    id,
    state,
    needsDecision,
  });

  it('stand in the way of Accept until each is let go, kept or called off', () => {
    const open = openToLetGo(found, [
      standing('F05', 'given', 'XLOR when soft accepts 7,600 lb.'),
      standing('F06', 'approved', null),
      standing('F07', 'offered', 'XLOR when soft accepts 7,600 lb.'),
      standing('F08', 'approved', 'XHAS is closed.'),
    ]);
    expect(open.map(({ id }) => id)).toEqual(['F05']);
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
