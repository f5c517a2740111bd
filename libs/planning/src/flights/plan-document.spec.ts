import type { PlanCost, Proof } from '@drumline/routing';
import { kilograms, kilogramsPerLitre, knots, litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyDrums, tinyTerritory } from '../tiny-territory.js';
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
      'Ramp fuel: contingency 10 % of the trip, final reserve 45 min, up to the next 10 lb (tiny fuel policy).',
      'Every drum is planned at 180 kg and 200 L; own fuel in litres at 0.800 kg/L.',
      'Tip arm not published, tail-tipping not checked: type T.',
    ]);
  });

  it('still air: is said of the legs without a planned wind only', () => {
    const winds = [{ from: 'HOM', to: 'NOR', componentKt: knots(-10) }];
    expect(documentOf({ winds }).remarks[0]).toBe(
      'Wind is given on HOM-NOR (10 kt headwind, Mon 3 Mar); still air on 1 other leg.',
    );
    const both = [...winds, { from: 'NOR', to: 'HOM', componentKt: knots(10) }];
    expect(documentOf({ winds: both }).remarks[0]).toBe(
      'Wind is given on HOM-NOR (10 kt headwind, Mon 3 Mar) and NOR-HOM (10 kt tailwind, Mon 3 Mar).',
    );
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
      'SOU: a report "soft" is entered for Mon 3 Mar 06:00, still to come at Mon 3 Mar 05:00, and was not used.',
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
      'Notice N1 (range), Fri 7 Mar 10:00 to Sun 9 Mar 10:00 local time: balloons. It closes every leg across its circle, but no strip.',
    ]);
  });

  it('a planning drum and the density keep the decimals they are given with', () => {
    const { policy } = tinyTerritory();
    const heavy = { ...policy, bookDensityKgPerLitre: kilogramsPerLitre(0.805) };
    const { remarks } = documentOf({
      policy: { ...heavy, drum: { ...policy.drum, grossKg: kilograms(182.5) } },
    });
    expect(remarks).toContain(
      'Every drum is planned at 182.5 kg and 200 L; own fuel in litres at 0.805 kg/L.',
    );
  });

  it('hazard notices: in local time, with the strips that they close and their days', () => {
    const { remarks } = documentOf({
      timeZone: 'Etc/GMT-1',
      notices: [
        {
          id: 'N1',
          places: ['NOR'],
          from: '2031-03-04T23:30Z',
          until: '2031-03-06T12:00Z',
          source: 'office',
          text: 'Crane.',
        },
      ],
    });
    expect(remarks).toContain(
      'Notice N1 (office), Wed 5 Mar 00:30 to Thu 6 Mar 13:00 local time: Crane. It closes NOR on Wed 5 Mar and Thu 6 Mar.',
    );
  });

  it('expected surface: a strip that is soft as a rule is told too', () => {
    const [home, nor, sou] = tinyTerritory().places;
    const { remarks } = documentOf({
      places: [home!, { ...nor!, surface: { ...nor!.surface, expected: 'soft' } }, sou!],
    });
    expect(remarks).toContain('NOR is planned soft on Mon 3 Mar to Fri 7 Mar.');
  });

  it('usable stock: held drums and drums past their retest date, by place and batch, with the reason', () => {
    const [batch] = tinyTerritory().batches;
    const held = { reason: 'water found', by: 'quality', at: '2031-03-03T04:00Z' };
    const one = { reason: 'dented', by: 'quality', at: '2031-03-03T04:00Z' };
    const drums = [
      ...tinyDrums('NOR', 2, 100),
      { ...tinyDrums('NOR', 1, 102)[0]!, held: one },
      ...tinyDrums('SOU', 3, 200).map((drum) => ({ ...drum, batch: 'OLD' })),
      ...tinyDrums('HOM', 4, 300).map((drum) => ({ ...drum, batch: 'BAD' })),
    ];
    const batches = [
      batch!,
      { ...batch!, id: 'OLD', retestDue: '2031-03-01' },
      { ...batch!, id: 'BAD', held },
    ];
    const unusable = documentOf({ drums, batches }).remarks.filter((remark) => remark.startsWith('Not'));
    expect(unusable).toEqual([
      'Not usable at NOR: 1 drum of batch B1, 200 L, held: dented.',
      'Not usable at SOU: 3 drums of batch OLD, 600 L, past the retest date Sat 1 Mar.',
      'Not usable at HOM: 4 drums of batch BAD, 800 L, held: water found.',
    ]);
  });

  it('age at use: drums that pass their retest date unburnt are named with their last day of use', () => {
    const [batch] = tinyTerritory().batches;
    expect(documentOf({ batches: [{ ...batch!, retestDue: '2031-03-05' }] }).remarks).toContain(
      'SOU: 2 drums with 300 L left, last day of use Wed 5 Mar (retest date).',
    );
  });

  it('tells the pilots off and the aircraft away in the offered days, and no others', () => {
    const { pilots, aircraft } = tinyTerritory();
    const { remarks } = documentOf({
      pilots: [{ ...pilots[0]!, daysOff: ['2031-03-03', '2031-03-05', '2031-03-07'] }],
      aircraft: [
        { ...aircraft[0]!, absences: [{ from: '2031-03-04', until: '2031-03-09', reason: 'check' }] },
      ],
    });
    expect(remarks).toContain('Pilots off in the offered days: P1 on Mon 3 Mar and Wed 5 Mar.');
    expect(remarks).toContain('Aircraft away in the offered days: T1 on Tue 4 Mar and Wed 5 Mar (check).');
  });

  it('usable stock: a count still to come by the clock is told once, as another beside one that is used', () => {
    const count = {
      place: 'NOR',
      litres: litres(2500),
      openDrums: 0,
      by: 'helper',
      seenFrom: 'ground' as const,
    };
    const { remarks } = documentOf({ counts: [{ ...count, at: '2031-03-03T06:00Z' }] });
    expect(remarks).toContain(
      'NOR: not counted yet; a count of 2,500 L is entered for Mon 3 Mar 06:00, still to come at Mon 3 Mar 05:00, and was not used.',
    );
    const known = { ...count, litres: litres(400), at: '2031-03-03T04:00Z' };
    const both = documentOf({ counts: [known, { ...count, at: '2031-03-03T06:00Z' }] });
    expect(both.remarks.filter((remark) => /^NOR: .*count/.test(remark))).toEqual([
      expect.stringMatching(/^NOR: counted 400 L against a book of .* the plan uses the count/),
      'NOR: another count of 2,500 L is entered for Mon 3 Mar 06:00, still to come at Mon 3 Mar 05:00, and was not used.',
    ]);
  });

  it('chance of falling below critical: in words, with the seed', () => {
    const weather = [{ place: 'NOR', morningCancel: 0.25, afternoonCancel: 0.5 }];
    const plan = documentOf({ weather }, { fortnights: 100, seed: 3 });
    expect(plan.risk).toMatchObject({ fortnights: 100, seed: 3, expectedDrums: 1.5, belowCritical: 0 });
    expect(plan.remarks.at(-1)).toBe(
      'Weather: in 0.0 % of 100 drawn runs of the weather (seed 3) a cache ends a day below critical; 1.5 of 2 drums are expected to land.',
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
