import { centsPerLitre, hours, kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { BookedFlight, Scenario, StandingFlight } from '../scenario.js';
import { tinyDrums, tinyTerritory } from '../tiny-territory.js';
import { buildProblem } from './build-problem.js';

const built = (changes: Partial<Scenario> = {}) => buildProblem(tinyTerritory(changes), 'minimum');
const problemOf = (changes: Partial<Scenario> = {}) => built(changes).problem;
const routeTo = (place: string, changes: Partial<Scenario> = {}) => {
  const { problem, map } = built(changes);
  const route = problem.routes.find(
    ({ stops }) => stops.length === 1 && stops[0] === map.storeOf.get(place),
  )!;
  return { route, days: route.conditionByDay.map((index) => route.conditions[index] ?? null) };
};

const flight = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'approved',
  date: '2031-03-04',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 3 }],
  to: 'HOM',
  ...changes,
});

const mail = (changes: Partial<BookedFlight> = {}): BookedFlight => ({
  id: 'X1',
  date: '2031-03-04',
  aircraft: 'T1',
  configuration: 'drums',
  purpose: 'mail',
  heldHours: hours(2.5),
  legs: [
    { from: 'HOM', to: 'NOR', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(450) },
    { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
  ],
  ...changes,
});

describe('routes of a territory', () => {
  it('take the drums that the loading rules allow, and cost block hours and landing fees', () => {
    const { route, days } = routeTo('NOR');
    expect(route.conditions).toHaveLength(1);
    expect(days[0]!.legPacks).toEqual([4]);
    // Two legs of 50 NM at 125 kt and 3 minutes each, 900 cr an hour; two landings at 5 cr.
    expect(days[0]!.blockHours).toBeCloseTo(0.9, 9);
    expect(days[0]!.cost).toBe(82_000);
    expect(days[0]!.dutyHours).toBeCloseTo(1.9, 9);
  });

  it('whose stock own fuel draws: taxi and legs, in litres at the book density', () => {
    const burnLb = 20 + 2 * (20 + (50 / 125) * 300);
    expect(routeTo('NOR').days[0]!.ownUse).toBeCloseTo((burnLb * 0.45359237) / 0.8, 6);
  });

  it('expected surface: a strip reported soft until a day takes drums off the flights up to that day', () => {
    const surfaceReports: Scenario['surfaceReports'] = [
      { place: 'NOR', state: 'soft', at: '2031-03-03T04:00Z', by: 'helper', untilDate: '2031-03-04' },
    ];
    const { days } = routeTo('NOR', { surfaceReports });
    expect(days.map((each) => each!.legPacks[0])).toEqual([3, 3, 4, 4, 4]);
  });

  it('hazard notices: a closed strip is not flown to while the notice holds', () => {
    const notices: Scenario['notices'] = [
      {
        id: 'N1',
        places: ['NOR'],
        from: '2031-03-04T00:00Z',
        until: '2031-03-05T23:00Z',
        source: 'office',
        text: '',
      },
    ];
    expect(routeTo('NOR', { notices }).days.map((each) => each !== null)).toEqual([
      true,
      false,
      false,
      true,
      true,
    ]);
    expect(routeTo('SOU', { notices }).days.every((each) => each !== null)).toBe(true);
  });

  it('are not flown on no-flying days, nor when nobody is fit', () => {
    const pilots = [{ ...tinyTerritory().pilots[0]!, daysOff: ['2031-03-06'] }];
    const { days } = routeTo('NOR', { pilots, noFlyingDays: ['2031-03-03'] });
    expect(days.map((each) => each !== null)).toEqual([false, true, true, false, true]);
  });
});

describe('the base', () => {
  const supply = (changes: Partial<Scenario> = {}) => problemOf(changes).stores[0]!.supply!;
  const [base] = tinyTerritory().bases;

  it('drums ready at a base: the filled ones, then what is filled a day, up to the empties', () => {
    expect(supply().packsByDay).toEqual([20, 30, 40, 50, 50]);
  });

  it('a drum costs its fuel, at the scarcity price where there is one, and its handling', () => {
    expect(supply().packCost).toBe(200 * 150 + 900);
    const scarce = [{ ...base!, scarcityPricePerLitre: centsPerLitre(400) }];
    expect(supply({ bases: scarce }).packCost).toBe(200 * 400 + 900);
  });

  it('base stock: a frozen flight takes its drums and its own fuel, a booked one its own fuel', () => {
    const fuel = routeTo('NOR').days[0]!.ownUse;
    const flown = supply({ flights: [flight()] });
    expect(flown.packsByDay).toEqual([20, 27, 37, 47, 47]);
    expect(flown.unitsByDay![1]).toBeCloseTo(24_000 - 600 - fuel, 6);
    expect(supply({ bookedFlights: [mail()] }).unitsByDay![1]).toBeCloseTo(24_000 - fuel, 6);
  });
});

describe('flights that fly anyway', () => {
  it('a booked flight takes drums beside its freight', () => {
    const [route] = problemOf({ bookedFlights: [mail()] }).booked;
    // 450 kg are 992 lb: the freight place holds 450 lb, two of the four drum positions the rest.
    expect(route).toMatchObject({ id: 'X1', day: 1, source: 0, stops: [1], legPacks: [2] });
  });

  it('a booked flight that comes back to a strip leaves its drums there the first time', () => {
    const leg = (from: string, to: string, freightKg: number) => ({
      from,
      to,
      passengers: 0,
      passengersKg: kilograms(0),
      freightKg: kilograms(freightKg),
    });
    const legs = [
      leg('HOM', 'NOR', 0),
      leg('NOR', 'HOM', 450),
      leg('HOM', 'NOR', 0),
      leg('NOR', 'SOU', 0),
      leg('SOU', 'HOM', 0),
    ];
    const [route] = problemOf({ bookedFlights: [mail({ legs })] }).booked;
    expect(route!.stops).toEqual([1, 0, 2]);
    expect(route!.legPacks[0]).toBe(4);
    expect(route!.legPacks[2]).toBeLessThanOrEqual(route!.legPacks[1]!);
  });

  it('passengers and drums: a leg with a passenger takes no drum', () => {
    const [out, back] = mail().legs;
    const legs = [{ ...out!, passengers: 1, passengersKg: kilograms(80) }, back!];
    expect(problemOf({ bookedFlights: [mail({ legs })] }).booked[0]!.legPacks).toEqual([0]);
  });

  it('frozen flights: take the hours of the pilot they name, and no drum more', () => {
    const { booked, crews } = problemOf({ flights: [flight({ pilot: 'P1' })] });
    expect(booked[0]).toMatchObject({ id: 'F1', day: 1, legPacks: [0] });
    expect(crews[0]!.groupsByDay[1]).toContain(booked[0]!.crewGroup);
  });

  it('offered flights of days to come may move at the change price; those of past days are gone', () => {
    const flights = [
      flight({ id: 'F1', state: 'offered' }),
      flight({ id: 'F2', state: 'offered', date: '2031-03-03' }),
    ];
    const problem = problemOf({ flights, asOf: '2031-03-04T05:00Z' });
    expect(problem.standing).toEqual([{ vehicle: 0, day: 1, stops: [1] }]);
    expect(problem.changePrice).toBe(10_000);
  });
});

describe('end targets', () => {
  const targets = (mode: 'minimum' | 'operator' | 'hand plan', changes: Partial<Scenario> = {}) =>
    buildProblem(tinyTerritory(changes), mode)
      .problem.stores.slice(1)
      .map(({ endTarget }) => endTarget);

  it('are the minimum, or what the operator sets for the cache', () => {
    const [nor, sou] = tinyTerritory().caches;
    const caches = [{ ...nor!, endTargetLitres: litres(900) }, sou!];
    expect(targets('minimum', { caches })).toEqual([400, 400]);
    expect(targets('operator', { caches })).toEqual([900, 400]);
  });

  it('are what the plan made by hand leaves, whatever has been flown since', () => {
    const handPlan = [flight({ state: 'offered' })];
    expect(targets('hand plan', { handPlan })).toEqual([900, 300]);
    expect(targets('hand plan', { handPlan, flights: [flight()] })).toEqual([900, 300]);
  });

  it('cost, where the operator has no figure, the dearest delivered litre', () => {
    const { days } = routeTo('SOU');
    const dearest = (days[0]!.cost / 4 + 200 * 150 + 900) / 200;
    expect(problemOf().stores[1]!.prices.belowEndTarget).toBeCloseTo(dearest, 9);
  });
});

describe('other places', () => {
  it('a strip without a cache takes no drum from a booked flight', () => {
    const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('HOM', 20, 300)];
    const problem = problemOf({ caches: tinyTerritory().caches.slice(1), drums, bookedFlights: [mail()] });
    expect(problem.stores.map(({ id }) => id)).toEqual(['HOM', 'SOU', 'NOR']);
    expect(problem.stores[2]!.packsPerDay).toEqual([0, 0, 0, 0, 0]);
  });
});
