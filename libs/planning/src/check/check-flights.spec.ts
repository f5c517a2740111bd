import { centsPerLitre, hours, kilograms, litres, minutes, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyDrums, tinyPlace, tinyTerritory } from '../tiny-territory.js';
import { checkFlights } from './check-flights.js';

const day1 = '2031-03-03';
const day2 = '2031-03-04';

const flight = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: day1,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
  pilot: 'P1',
  ...changes,
});

const found = (changes: Partial<Scenario>, ...flights: readonly StandingFlight[]): readonly string[] =>
  checkFlights(tinyTerritory(changes), flights).map(({ where, what, mend }) => `${where}: ${what} ${mend}`);

const tiny = tinyTerritory();
const [tinyType] = tiny.aircraftTypes;
const [pilot] = tiny.pilots;
const withType = (changes: Partial<typeof tinyType>) => ({ aircraftTypes: [{ ...tinyType!, ...changes }] });
const withPilot = (changes: Partial<typeof pilot>) => ({ pilots: [{ ...pilot!, ...changes }] });
const withStrip = (changes: Parameters<typeof tinyPlace>[2]) => ({
  places: [tinyPlace('HOM', 60), tinyPlace('NOR', 60.83, changes), tinyPlace('SOU', 58.67)],
});
const soft = {
  surfaceReports: [{ place: 'NOR', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' }],
};

describe('a flight within every rule', () => {
  it('has no fault', () => {
    expect(found({}, flight())).toEqual([]);
  });

  it('is found good over two stops as well', () => {
    const stops = [
      { place: 'NOR', drums: 2 },
      { place: 'SOU', drums: 2 },
    ];
    expect(found({}, flight({ stops }))).toEqual([]);
  });
});

describe('weights', () => {
  it('drums on a leg: a soft strip takes one drum off this leg', () => {
    // 4000 + 720 kg + 560 ramp - 20 taxi - 140 trip = 5,987.3 lb; 6,800 - 900 when soft.
    expect(found(soft, flight())).toEqual([
      'F1, Mon 3 Mar, HOM-NOR: NOR when soft accepts 5,900 lb landing; this load lands at 5,987 lb at 180 kg a drum. Unload 87 lb (1 drum).',
    ]);
    expect(found(soft, flight({ stops: [{ place: 'NOR', drums: 3 }] }))).toEqual([]);
  });

  it('surface states: a strip closed when soft refuses the type', () => {
    const stripLimits = tiny.stripLimits.map((line) => ({ ...line, whenSoft: 'closed' as const }));
    expect(found({ ...soft, stripLimits }, flight())).toEqual([
      'F1, Mon 3 Mar, NOR: NOR is soft, and when soft it is closed to type T. Wait until it is dry, or send another type.',
    ]);
  });

  it('drums on a leg: the least of take-off, landing and zero-fuel weight binds', () => {
    expect(found(withType({ maxTakeoffLb: pounds(6100) }), flight())[0]).toContain(
      'type T accepts 6,100 lb take-off; this load takes off at 6,127 lb at 180 kg a drum. Unload 27 lb (1 drum).',
    );
    expect(found(withType({ maxLandingLb: pounds(5900) }), flight())[0]).toContain(
      'lands at 5,987 lb at 180 kg a drum',
    );
    expect(found(withType({ maxZeroFuelLb: pounds(5500) }), flight())[0]).toContain(
      'type T accepts 5,500 lb without fuel; this load weighs 5,587 lb at 180 kg a drum',
    );
  });

  it('fuel: the last, empty leg must be able to leave', () => {
    const stripLimits = tiny.stripLimits.map((line) =>
      line.place === 'NOR' ? { ...line, takeoffLb: pounds(4300) } : line,
    );
    expect(found({ stripLimits }, flight())).toEqual([
      'F1, Mon 3 Mar, NOR-HOM: NOR accepts 4,300 lb take-off; this load takes off at 4,400 lb. Even without drums it is too heavy: 100 lb less fuel or freight, or another aircraft.',
    ]);
  });

  it('fuel: the tanks must hold the ramp fuel', () => {
    expect(found(withType({ fuelCapacityLb: pounds(500) }), flight())[0]).toContain('needs 560 lb of fuel');
  });

  it('drums on a leg: more drums than places', () => {
    expect(found({}, flight({ stops: [{ place: 'NOR', drums: 5 }] }))).toContain(
      'F1, Mon 3 Mar, HOM-NOR: 5 drums are aboard; drums on boards has 4 places for drums. Unload 1 drum.',
    );
  });

  it('passengers and drums: refused on one leg, with the rule', () => {
    const legs = [
      { from: 'HOM', to: 'NOR', passengers: 2, passengersKg: kilograms(180), freightKg: kilograms(0) },
      { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
    ];
    const bookedFlights = [
      {
        id: 'X1',
        date: day1,
        aircraft: 'T1',
        configuration: 'drums',
        purpose: 'crew',
        legs,
        heldHours: hours(2),
      },
    ];
    const drum = flight({ id: 'X1', stops: [{ place: 'NOR', drums: 1 }] });
    expect(found({ bookedFlights }, drum)).toEqual([
      'X1, Mon 3 Mar, HOM-NOR: 2 passengers and 1 drum are aboard together. Take the drums off: tiny manual.',
    ]);
  });
});

describe('balance', () => {
  it('drums on a leg: only as many as stand in places that balance', () => {
    const envelope = [
      { weightLb: pounds(3800), forwardIn: tinyType!.fuelArmIn, aftIn: tinyType!.fuelArmIn },
      { weightLb: pounds(7000), forwardIn: tinyType!.fuelArmIn, aftIn: tinyType!.fuelArmIn },
    ];
    expect(found(withType({ envelope }), flight())[0]).toContain('stand in no places that balance');
  });
});

describe('days and places', () => {
  it('hazard notices: a named place is closed on the days of the notice', () => {
    const notices = [
      {
        id: 'N1',
        places: ['NOR'],
        from: '2031-03-03T10:00Z',
        until: '2031-03-03T11:00Z',
        source: 'fire service',
        text: 'smoke',
      },
    ];
    const faults = found({ notices }, flight());
    expect(faults).toHaveLength(2);
    expect(faults[0]).toContain('closed by notice N1 (fire service): smoke');
    expect(found({ notices }, flight({ date: day2 }))).toEqual([]);
  });

  it('a day without flying, and a day outside the plan', () => {
    expect(found({ noFlyingDays: [day1] }, flight())[0]).toContain('is a day without flying');
    expect(found({}, flight({ date: '2031-03-08' }))[0]).toContain('is not a day of the plan');
  });

  it('a type without a line in the strip table is not approved', () => {
    const stripLimits = tiny.stripLimits.filter(({ place }) => place !== 'NOR');
    expect(found({ stripLimits }, flight())[0]).toContain('Type T is not approved at NOR');
  });
});

describe('crews', () => {
  it('crew fit: rated, on duty, cleared for the class', () => {
    expect(found(withPilot({ types: ['U'] }), flight())[0]).toContain(
      'P1 is not rated for type T. No pilot may fly it',
    );
    expect(found(withPilot({ daysOff: [day1] }), flight())[0]).toContain('P1 is off on Mon 3 Mar');
    expect(found(withPilot({ stripClasses: [1] }), flight())[0]).toContain(
      'P1 is not cleared for NOR (class 2)',
    );
  });

  it('crew fit: the last landing at that very strip is within the days on the date of the flight', () => {
    const hard = withStrip({ stripClass: 3 });
    const landed = (date: string) =>
      withPilot({ stripClasses: [1, 2, 3], lastLandings: [{ place: 'NOR', date }] });
    expect(found({ ...hard, ...landed('2030-12-03') }, flight())).toEqual([]);
    expect(found({ ...hard, ...landed('2030-12-02') }, flight())[0]).toContain(
      'P1 last landed at NOR 91 days before; 90 are allowed',
    );
    expect(found({ ...hard, ...withPilot({ stripClasses: [1, 2, 3] }) }, flight())[0]).toContain(
      'P1 has no recorded landing at NOR',
    );
  });

  it('crew fit: a flight without a named pilot needs at least one who may fly it', () => {
    const { pilot: _, ...nobody } = flight();
    expect(found({}, nobody)).toEqual([]);
    expect(found(withPilot({ daysOff: [day1] }), nobody)[0]).toContain('No pilot may fly it. P1 is off');
  });

  it('crew fit: a booked flight that nobody may fly is found, with or without drums', () => {
    const legs = [
      { from: 'HOM', to: 'NOR', passengers: 2, passengersKg: kilograms(180), freightKg: kilograms(0) },
      { from: 'NOR', to: 'HOM', passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
    ];
    const crewChange = {
      id: 'X1',
      date: day1,
      aircraft: 'T1',
      configuration: 'drums',
      purpose: 'crew',
      legs,
    };
    const bookedFlights = [{ ...crewChange, heldHours: hours(2) }];
    expect(found({ bookedFlights, ...withPilot({ daysOff: [day1] }) })[0]).toContain(
      'X1, Mon 3 Mar: No pilot may fly it',
    );
  });

  it('crew hours: flight hours a day, duty hours a day, and flight hours in any 7 days with those before the plan', () => {
    // One flight is 2 x (0.4 h + 3 min) = 0.9 h of block and 1.9 h of duty.
    const rules = (changes: Partial<Scenario['policy']['crew']>) => ({
      policy: { ...tiny.policy, crew: { ...tiny.policy.crew, ...changes } },
    });
    const twice = [flight(), flight({ id: 'F2', stops: [{ place: 'NOR', drums: 1 }] })];
    expect(found(rules({ flightHoursPerDay: hours(1.7) }), ...twice)[0]).toContain(
      'P1 would have 1.80 h of flight with F1 and F2; 1.70 h are allowed. Give 0.10 h of it to another pilot or day.',
    );
    expect(found(rules({ dutyHoursPerDay: hours(3.7) }), ...twice)[0]).toContain('3.80 h of duty');
    const flown = withPilot({ flown: [{ date: '2031-02-25', blockHours: hours(31.5) }] });
    expect(found(flown, flight())[0]).toContain(
      'the 7 days to Mon 3 Mar: P1 would have 32.40 h of flight with F1',
    );
    expect(found(flown, flight({ date: day2 }))).toEqual([]);
  });
});

describe('times', () => {
  it('crew hours: a pilot may fly two aircraft in a day, not at once', () => {
    const aircraft = [...tiny.aircraft, { tail: 'T2', type: 'T', home: 'HOM', absences: [] }];
    const other = flight({ id: 'F2', aircraft: 'T2', stops: [{ place: 'SOU', drums: 1 }] });
    const at = (one: string, two: string) =>
      found({ aircraft }, flight({ departs: one }), { ...other, departs: two });
    expect(at('07:00', '08:54')).toEqual([]);
    expect(at('07:00', '08:53')[0]).toContain('P1 would fly both at once');
  });

  it('an aircraft that is away, and one that stands elsewhere', () => {
    const [aircraft] = tiny.aircraft;
    const away = { ...aircraft!, absences: [{ from: day1, until: day1, reason: 'inspection' }] };
    expect(found({ aircraft: [away] }, flight())[0]).toContain('T1 is away: inspection');
    expect(found({ aircraft: [{ ...aircraft!, home: 'SOU' }] }, flight())[0]).toContain(
      'T1 stands at SOU; this flight starts at HOM',
    );
  });

  it('a flight keeps to the flying day and to daylight less the margin', () => {
    expect(found({}, flight({ departs: '06:59' }))[0]).toContain('the first departure is at 07:00');
    expect(found({}, flight({ departs: '15:36' }))).toEqual([]);
    expect(found({}, flight({ departs: '15:37' }))[0]).toContain(
      'Landing at 17:01; the last landing is at 17:00',
    );
    const late = { ...tiny.policy, flyingDay: { ...tiny.policy.flyingDay, lastLanding: '20:00' } };
    expect(found({ policy: late }, flight({ departs: '16:00' }))[0]).toContain('30 min before sunset at');
  });

  it('a day without times has a fault when no order of its flights fits', () => {
    const short = { ...tiny.policy, flyingDay: { ...tiny.policy.flyingDay, lastLanding: '10:00' } };
    const second = flight({ id: 'F2', stops: [{ place: 'NOR', drums: 1 }] });
    expect(found({ policy: short }, flight())).toEqual([]);
    expect(found({ policy: short }, flight(), second)[0]).toContain('The day has no schedule');
  });
});

describe('caches', () => {
  it('landing capacity: drums from every flight of a day', () => {
    const strip = withStrip({ landingCapacityDrumsPerDay: 6 });
    const second = flight({ id: 'F2', stops: [{ place: 'NOR', drums: 3 }] });
    expect(found(strip, flight(), second)).toEqual([
      'NOR, Mon 3 Mar: 7 drums would be unloaded; the hands there unload 6 a day. Land 1 drum on another day.',
    ]);
    expect(found(strip, flight({ state: 'home' }), second)).toHaveLength(1);
  });

  it('capacity: held and past-retest drums count, empties do not', () => {
    const caches = [tinyCache('NOR', { capacityDrums: 8, empties: 20 }), tinyCache('SOU')];
    expect(found({ caches }, flight())).toEqual([]);
    const [first, ...others] = tinyDrums('NOR', 5, 100);
    const held = { ...first!, held: { reason: 'water', by: 'QA', at: '2031-03-01T10:00Z' } };
    const drums = [held, ...others, ...tinyDrums('HOM', 20, 300)];
    expect(found({ caches, drums }, flight())[0]).toContain(
      '9 drums would stand there after the landings; the site holds 8. Land 1 drum less, or later.',
    );
  });

  it('capacity: a cache that is overfull already is no fault of the plan; one more drum is', () => {
    const caches = [tinyCache('NOR', { capacityDrums: 3 }), tinyCache('SOU')];
    expect(found({ caches }, flight({ stops: [{ place: 'SOU', drums: 1 }] }))).toEqual([]);
    expect(found({ caches }, flight({ stops: [{ place: 'NOR', drums: 1 }] }))[0]).toContain(
      '5 drums would stand there after the landings; the site holds 3.',
    );
  });

  it('order of a day: slings out leave after the landings have had to fit', () => {
    const caches = [tinyCache('NOR', { capacityDrums: 7 }), tinyCache('SOU')];
    const slings = [
      {
        date: day1,
        helicopter: 'H',
        from: 'NOR',
        to: 'SOU',
        drums: 3,
        distanceNm: tiny.distances[2]!.distanceNm,
      },
    ];
    expect(found({ caches, slings }, flight())[0]).toContain('8 drums would stand there');
  });

  it('a permit that has ended refuses drums', () => {
    const caches = [tinyCache('NOR', { permitUntil: '2031-03-03' }), tinyCache('SOU')];
    expect(found({ caches }, flight())).toEqual([]);
    expect(found({ caches }, flight({ date: day2 }))[0]).toContain('until Mon 3 Mar only');
  });
});

describe('bases', () => {
  const base = (changes: Partial<Scenario['bases'][number]>) => ({
    bases: [{ ...tiny.bases[0]!, ...changes }],
  });
  const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('HOM', 2, 300)];

  it('drums ready at a base: a drum filled on a day flies from the next', () => {
    expect(found({ drums }, flight())[0]).toContain(
      '4 drums would have been taken by then; 2 stood filled and fit, and 0 more can be filled. Take 2 drums less',
    );
    expect(found({ drums }, flight({ date: day2 }))).toEqual([]);
    expect(found({ drums, ...base({ emptiesFitForUse: 1 }) }, flight({ date: day2 }))[0]).toContain(
      '1 more can be filled',
    );
  });

  it('base stock: drums taken and own fuel come out of bulk, filled drums and resupplies', () => {
    // Own fuel: 20 taxi + 280 trip = 300 lb = 170.1 L at 0.8 kg/L.
    const filled = [...tinyDrums('NOR', 4, 100), ...tinyDrums('HOM', 4, 300)];
    expect(found({ drums: filled, ...base({ bulkLitres: litres(171) }) }, flight())).toEqual([]);
    expect(found({ drums: filled, ...base({ bulkLitres: litres(170) }) }, flight())[0]).toContain(
      'Drums and own fuel would need 971 L by then; filled drums, bulk and resupplies come to 970 L',
    );
    const vessel = { resupplies: [{ date: day1, litres: litres(100) }], pricePerLitre: centsPerLitre(1) };
    expect(found({ drums: filled, ...base({ bulkLitres: litres(80), ...vessel }) }, flight())).toEqual([]);
  });
});

it('frozen flights: a flight that is away is a fact, and counts without being judged', () => {
  expect(found(soft, flight({ state: 'away' }))).toEqual([]);
  expect(found(soft, flight({ state: 'approved' }))).toHaveLength(1);
  expect(found({ ...soft, asOf: '2031-03-04T05:00Z' }, flight({ state: 'approved' }))).toEqual([]);
});

it('duty: a turn-round at every landing lengthens the day', () => {
  const long = withType({ turnRoundMinutes: minutes(300) });
  expect(found(long, flight({ departs: '07:00' }))).toEqual([]);
  expect(found(long, flight({ departs: '11:10' }))[0]).toContain('Landing at 17:04');
});
