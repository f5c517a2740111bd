import {
  checkFlights,
  checkPlan,
  comparePlans,
  describeFlights,
  type PlannedFlight,
  riskOfFlights,
  type StandingFlight,
  whyNot,
} from '@drumline/planning';
import { describe, expect, it } from 'vitest';
import { hollowtarn, softMorning, softReplan } from './hand-plan.js';

const scenario = hollowtarn();
const dry = describeFlights(scenario, scenario.handPlan, 'hand plan');
const flightOf = (id: string): PlannedFlight => dry.flights.find((flight) => flight.id === id)!;
const fault = (flights: readonly StandingFlight[], changes: Parameters<typeof hollowtarn>[0] = {}) =>
  checkFlights(hollowtarn(changes), flights).map(({ where, what, mend }) => `${where}: ${what} ${mend}`);

describe('the hand plan', () => {
  it('breaks no rule, and its figures come out again', () => {
    expect(checkFlights(scenario, scenario.handPlan)).toEqual([]);
    expect(checkPlan(scenario, dry)).toEqual([]);
  });

  it('brings 73 drums, 56 of them from XMER, at 3.78 a litre', () => {
    const { totals } = comparePlans(dry, dry);
    expect(totals.after).toMatchObject({ flights: 16, drums: 73, litres: 14_600 });
    expect(totals.after.drumsFromBase).toEqual([
      { place: 'XALD', drums: 17 },
      { place: 'XMER', drums: 56 },
    ]);
    expect(totals.after.blockHours).toBeCloseTo(18.9, 1);
    expect(totals.after.cost).toMatchObject({ fuel: 3_254_000, handling: 65_700 });
    // The table it is compared with drops the cents of every flight.
    expect(Math.abs(totals.after.cost.flight - 2_202_100)).toBeLessThan(16 * 100);
    expect(totals.after.cost.perLitre! / 100).toBeCloseTo(3.78, 2);
  });

  it('expects 60.6 of its drums to land when all are flown in the morning', () => {
    const morning = dry.flights.map((flight) => ({ ...flight, half: 'morning' as const }));
    const { expectedDrums } = riskOfFlights(scenario, morning, dry.caches, { fortnights: 1, seed: 1 });
    expect(expectedDrums).toBeCloseTo(60.6, 1);
  });

  it('leaves only XMAR below minimum within the plan: 375 of 400 L on day 3', () => {
    const short = dry.caches.flatMap(({ place, usable, minimumLitres }) =>
      usable.flatMap((level, day) => (day > 0 && level < minimumLitres ? [[place, day, level]] : [])),
    );
    expect(short).toEqual([['XMAR', 3, 375]]);
  });

  it('declining F05 puts XLOR below minimum on day 2', () => {
    expect(flightOf('F05').reason).toMatchObject({
      protects: { place: 'XLOR', date: '2027-06-15', level: 'below minimum' },
      ifDeclined: 'Without it XLOR falls below minimum on Tue 15 Jun: 945 L of 1,200 L.',
    });
  });

  it('unload or stay: F06 lands at XGAN over what it may take off with', () => {
    const { unloadOrStay, tailwindLimitKt, committalPoint } = flightOf('F06').stops[0]!;
    // 4250 + 590 - 25 - (49.1 / 140 x 330 + 25) + 720 kg = 6,261.6 lb.
    expect(unloadOrStay.arrivalLb).toBeCloseTo(6261.59, 2);
    expect(unloadOrStay).toMatchObject({ takeoffLimitLb: 6250, canLeaveLoaded: false });
    expect(unloadOrStay.overLb).toBeCloseTo(11.59, 2);
    expect(unloadOrStay).toMatchObject({ printedArrivalLb: 6261, printedOverLb: 11 });
    expect(tailwindLimitKt).toBe(3);
    expect(committalPoint).toContain('1.1 NM');
  });

  it('every payload binds as the table says, and a soft XLOR takes 4 of the 6 drums of F05', () => {
    expect(flightOf('F06').legs[0]).toMatchObject({
      drumsPossible: 4,
      binding: { name: 'strip landing limit' },
    });
    expect(flightOf('F05').stops[0]).toMatchObject({
      drumsIfSoft: 4,
      ifSoft:
        'If soft: take 4 of 6; XLOR stays above minimum but ends short of its target on Sun 27 Jun: 1,485 L of 1,885 L. If closed: do not go, as if declined.',
    });
    expect(flightOf('F05').cost.perLitre! / 100).toBeCloseTo(3.59, 2);
  });
});

describe('rules on the invented territory', () => {
  it('surface states: a soft XLOR takes two drums off type B, and is closed to type C', () => {
    const faults = fault(
      scenario.handPlan.filter(({ id }) => ['F05', 'F08'].includes(id)),
      softMorning,
    );
    expect(faults.map((text) => text.split(': ')[0])).toEqual([
      'F05, Tue 15 Jun, XALD-XLOR',
      'F08, Wed 16 Jun, XALD-XLOR',
    ]);
    // 4980 + 1200 - 30 - (150.3 / 160 x 385 + 35) + 1,080 kg = 8,134.3 lb; 8,300 - 700 when soft.
    expect(faults[0]).toContain('Unload 534 lb (2 drums).');
    const byC = { aircraft: 'C1', date: '2027-06-15', stops: [{ place: 'XLOR' }] };
    const answer = whyNot(hollowtarn(softMorning), [], byC, 'hand plan');
    expect(answer).toMatchObject({
      verdict: 'breaks a rule',
      fault: { what: 'XLOR is soft, and when soft it is closed to type C.' },
    });
  });

  it('crew fit: nobody but FW1 lands at XGAN; FW2 is no longer recent at XFAL', () => {
    const given = (id: string, pilot: string) =>
      fault(scenario.handPlan.filter((flight) => flight.id === id).map((flight) => ({ ...flight, pilot })));
    expect(given('F06', 'FW1')).toEqual([]);
    expect(given('F06', 'FW2')[0]).toContain('FW2 is not cleared for XGAN (class 4). Give it to FW1.');
    expect(given('F10', 'FW2')[0]).toContain('FW2 last landed at XFAL 109 days before; 90 are allowed');
  });

  it('landing capacity: never more than 6 drums a day into XLOR', () => {
    const more = scenario.handPlan.map((flight) =>
      flight.id === 'F02' ? { ...flight, date: '2027-06-15' } : flight,
    );
    expect(fault(more)[0]).toContain('11 drums would be unloaded; the hands there unload 6 a day');
  });

  it('passengers and drums: X1 refuses a drum', () => {
    const onX1: StandingFlight = {
      id: 'X1',
      state: 'offered',
      date: '2027-06-14',
      aircraft: 'A1',
      from: 'XMER',
      stops: [{ place: 'XISK', drums: 2 }],
      to: 'XMER',
    };
    expect(fault([onX1])[0]).toContain('4 passengers and 2 drums are aboard together');
  });
});

describe('the plan made again when XLOR goes soft', () => {
  const before = describeFlights(scenario, scenario.handPlan, 'hand plan');
  const morning = hollowtarn(softMorning);
  const after = describeFlights(morning, softReplan, 'hand plan');
  const difference = comparePlans(before, after);

  it('removes F05 and F08, moves F06 and F07 from A1 to A2, adds three flights to XLOR; twelve are the same', () => {
    expect(difference.removed.map(({ id }) => id).sort()).toEqual(['F05', 'F08']);
    expect(
      difference.moved.map((change) => [change.before.id, change.before.aircraft, change.after.aircraft]),
    ).toEqual([
      ['F06', 'A1', 'A2'],
      ['F07', 'A1', 'A2'],
    ]);
    expect(
      difference.added.map(({ day, aircraft, stops }) => [day, aircraft, stops[0]!.place, stops[0]!.drums]),
    ).toEqual([
      [2, 'A1', 'XLOR', 4],
      [2, 'A1', 'XLOR', 2],
      [3, 'A1', 'XLOR', 4],
    ]);
    expect(difference.drumsChanged).toEqual([]);
    expect(difference.same).toHaveLength(12);
  });

  it('costs less to fly and more in all, and takes ten more drums from XMER', () => {
    const { before: dryTotals, after: softTotals } = difference.totals;
    expect(softTotals.drums).toBe(71);
    expect(softTotals.cost.flight).toBeLessThan(dryTotals.cost.flight);
    expect(softTotals.cost.total).toBeGreaterThan(dryTotals.cost.total);
    expect(softTotals.cost).toMatchObject({ fuel: 3_384_000, handling: 63_900 });
    expect(softTotals.drumsFromBase).toContainEqual({ place: 'XMER', drums: 66 });
  });

  it('lowers XLOR from 1,885 to 1,485 L at its lowest, above the minimum of 1,200 L', () => {
    expect(difference.lowest.find(({ place }) => place === 'XLOR')).toMatchObject({
      beforeLitres: 1885,
      afterLitres: 1485,
      minimumLitres: 1200,
    });
  });

  it('breaks no rule', () => {
    expect(checkFlights(morning, softReplan)).toEqual([]);
  });
});
