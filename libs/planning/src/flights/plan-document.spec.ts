import type { PlanCost, Proof } from '@drumline/routing';
import { kilograms, knots, litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { describeFlights } from './describe-flights.js';
import { planDocument } from './plan-document.js';

const flight: StandingFlight = {
  id: 'F1',
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 2 }],
  to: 'HOM',
};
const nothing = 0;
const tiers: PlanCost = {
  travel: nothing,
  packs: nothing,
  changes: nothing,
  endShort: nothing,
  belowCushion: nothing,
  belowMinimum: nothing,
  belowCritical: nothing,
  unmet: nothing,
  total: nothing,
};
const proof: Proof = {
  objective: 0,
  bound: null,
  gap: null,
  seconds: 0,
  solver: 'none',
  seed: 1,
  iterations: 0,
};
const documentOf = (
  changes: Partial<Scenario>,
  weather: { fortnights: number; seed: number } | null = null,
) => {
  const scenario = tinyTerritory(changes);
  const described = describeFlights(scenario, [flight], 'minimum');
  return planDocument(scenario, described, { endTarget: 'minimum', tiers, proof, shortages: [], weather });
};

describe('a plan document', () => {
  it('says what it assumes: still air, the fuel policy, what is not checked', () => {
    expect(documentOf({}).remarks).toEqual([
      'Still air on every leg.',
      'Ramp fuel: contingency 10 % of the trip, final reserve 45 min, up to the next 10 lb (tiny fuel policy); litres at 0.80 kg/L.',
      'Tip arm not published, tail-tipping not checked: type T.',
    ]);
  });

  it('still air: is said of the legs without a planned wind only', () => {
    const winds = [{ from: 'HOM', to: 'NOR', componentKt: knots(-10) }];
    expect(documentOf({ winds }).remarks[0]).toBe('Still air on 1 of 2 legs.');
    const both = [...winds, { from: 'NOR', to: 'HOM', componentKt: knots(10) }];
    expect(documentOf({ winds: both }).remarks[0]).toContain('Ramp fuel');
  });

  it('expected surface: names the days that a report makes other than usual, and reports not known yet', () => {
    const report = { place: 'NOR', state: 'soft' as const, by: 'helper' };
    const { remarks } = documentOf({
      surfaceReports: [
        { ...report, at: '2031-03-03T04:00Z', untilDate: '2031-03-04' },
        { ...report, place: 'SOU', at: '2031-03-03T06:00Z' },
      ],
    });
    expect(remarks).toContain('NOR is planned soft on Mon 3 Mar and Tue 4 Mar; else dry.');
    expect(remarks).toContain(
      'SOU: the report "soft" of 2031-03-03T06:00Z is later than the picture and was not used.',
    );
  });

  it('hazard notices: those in force within the days of the plan', () => {
    const notice = (id: string, from: string, until: string) => ({
      id,
      places: [],
      circle: { latitudeDeg: 0, longitudeDeg: 0, radiusNm: nauticalMiles(5) },
      from,
      until,
      source: 'range',
      text: 'balloons',
    });
    const { remarks } = documentOf({
      notices: [
        notice('N1', '2031-03-07T10:00Z', '2031-03-09T10:00Z'),
        notice('N2', '2031-03-08T00:00Z', '2031-03-09T10:00Z'),
      ],
    });
    expect(remarks.filter((remark) => remark.startsWith('Notice'))).toEqual([
      'Notice N1 (range), 2031-03-07T10:00Z to 2031-03-09T10:00Z: balloons',
    ]);
  });

  it('usable stock: counts later than the picture are named as not used', () => {
    const count = {
      place: 'NOR',
      litres: litres(500),
      openDrums: 0,
      by: 'helper',
      seenFrom: 'ground' as const,
    };
    const { remarks } = documentOf({ counts: [{ ...count, at: '2031-03-03T06:00Z' }] });
    expect(remarks.some((remark) => remark.includes('later than the picture'))).toBe(true);
  });

  it('chance of falling below critical: in words, with the seed', () => {
    const weather = [{ place: 'NOR', morningCancel: 0.25, afternoonCancel: 0.5 }];
    const plan = documentOf({ weather }, { fortnights: 100, seed: 3 });
    expect(plan.risk).toMatchObject({ fortnights: 100, seed: 3, expectedDrums: 1.5, belowCritical: 0 });
    expect(plan.remarks.at(-1)).toBe(
      'Weather: in 0.0 % of 100 drawn fortnights (seed 3) a cache ends a day below critical; 1.5 of 2 drums are expected to land.',
    );
    expect(documentOf({ weather }).risk).toBeNull();
  });

  it('whose stock own fuel draws: shown with the drums taken at the base', () => {
    expect(documentOf({}).bases).toMatchObject([{ place: 'HOM', drumsTaken: 2 }]);
    expect(documentOf({}).bases[0]!.ownFuelLitres).toBeCloseTo(170.1, 1);
  });
});

it('drums beside freight that has no place in the cabin are told to be without positions', () => {
  const legs = [
    { from: 'HOM', to: 'NOR', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(400) },
    { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
  ];
  const bookedFlights = [
    {
      id: 'F1',
      date: '2031-03-03',
      aircraft: 'T1',
      configuration: 'drums',
      purpose: 'stores',
      legs,
      heldHours: 2 as never,
    },
  ];
  expect(documentOf({ bookedFlights }).remarks).toContain(
    'F1: positions of the drums are not worked out (no place is given for its freight).',
  );
});
