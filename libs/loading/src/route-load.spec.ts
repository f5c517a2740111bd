import { cents, hours, kilograms, kilogramsFromPounds, knots, minutes, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleLine, examplePolicy, exampleRequest, exampleType, withCabin } from './example-flight.js';
import { type RouteRequest, routeLoad } from './route-load.js';

const there = ['BASE', 'STRIP', 'BASE'];

describe('Fuel', () => {
  it('Fuel: taxi once, 10 % of the trip, 45 minutes, up to the next 10 lb', () => {
    // 75 NM at 150 kt: 0.5 h x 300 + 20 = 170 lb a leg; 30 + 340 + 34 + 225 = 629.
    const load = routeLoad(exampleRequest(there));
    expect(load.rampFuelLb).toBe(630);
    expect(load.burnLb).toBe(370);
    expect(load.legs.map((leg) => leg.fuelAtTakeoffLb)).toEqual([600, 430]);
    expect(load.legs.map((leg) => leg.fuelAtLandingLb)).toEqual([430, 260]);
  });

  it('Fuel: a figure on the step is not pushed up to the next one', () => {
    const request = exampleRequest(there);
    const load = routeLoad({ ...request, type: { ...exampleType, taxiFuelLb: pounds(31) } });
    expect(load.rampFuelLb).toBe(630);
  });

  it('Fuel: a planned uplift cuts the ramp fuel to the legs before it and refuels for the rest', () => {
    const request = exampleRequest(['BASE', 'STRIP', 'FAR', 'BASE']);
    const legs = request.legs.map((leg, i) => ({ ...leg, upliftOnArrival: i === 0 }));
    const load = routeLoad({ ...request, legs });
    // 30 + 170 + 17 + 225 = 442; after the uplift 340 + 34 + 225 = 599.
    expect(load.rampFuelLb).toBe(450);
    expect(load.legs.map((leg) => leg.fuelAtTakeoffLb)).toEqual([420, 600, 430]);
    expect(load.legs.at(-1)!.fuelAtLandingLb).toBe(260);
  });

  it('Fuel: contingency is never under its floor in minutes where the policy sets one', () => {
    const policy = { ...examplePolicy, contingencyFloorMinutes: minutes(10) };
    // 10 minutes are 50 lb, more than 10 % of 340: 30 + 340 + 50 + 225 = 645.
    expect(routeLoad({ ...exampleRequest(there), fuelPolicy: policy }).rampFuelLb).toBe(650);
  });

  it('Still air: without a wind the cruise speed counts, plus is tailwind', () => {
    const calm = routeLoad(exampleRequest(there)).legs[0]!;
    const tail = routeLoad(exampleRequest(there, {}, { windKt: knots(37.5) })).legs[0]!;
    expect(calm.windKt).toBeNull();
    expect(calm.airTimeHours).toBe(0.5);
    expect(tail.airTimeHours).toBe(0.4);
  });

  it('needs a planned uplift when the tanks do not hold the fuel', () => {
    const load = routeLoad({
      ...exampleRequest(there),
      type: { ...exampleType, fuelCapacityLb: pounds(620) },
    });
    expect(load.flyable).toBe(false);
    expect(load.why).toBe('BASE-STRIP: the fuel needed is more than the tanks hold; plan an uplift');
  });
});

describe('time and cost', () => {
  it('Duty: block time and a turn-round at every landing', () => {
    const load = routeLoad(exampleRequest(there));
    expect(load.blockHours).toBeCloseTo(1.1, 12);
    expect(load.dutyHours).toBeCloseTo(2.1, 12);
  });

  it('Rounding: money from unrounded block hours to the nearest cent of the flight', () => {
    const type = { ...exampleType, costPerBlockHour: cents(98_765) };
    expect(routeLoad({ ...exampleRequest(there), type }).cost).toBe(Math.round(1.1 * 98_765) + 5_000);
  });
});

describe('Drums on a leg', () => {
  const outward = (changes: Partial<RouteRequest>, surfaces = {}, leg = {}) =>
    routeLoad({ ...exampleRequest(there, surfaces, leg), ...changes }).legs[0]!;

  it('Drums on a leg: all positions taken leaves the spare of the tightest weight', () => {
    const leg = outward({});
    expect(leg.drums).toBe(6);
    expect(leg.binding).toMatchObject({ name: 'drum positions', place: null, drums: 6 });
    // Landing 7700 - 4500 - 430 = 2770, take-off 7900 - 4500 - 600 = 2800; six drums are 2380.99 lb.
    expect(leg.spareLb).toBeCloseTo(2770 - 2380.99, 2);
    expect(leg.payloadKg).toBeCloseTo(2770 * 0.45359237, 6);
    expect(leg.relax).toBe(
      'A 7th drum takes a 7th standing place; and 8 lb more under STRIP strip landing limit',
    );
  });

  it('Drums on a leg: a soft strip takes drums off this leg', () => {
    const leg = outward({}, { STRIP: 'soft' });
    expect(leg.drums).toBe(5);
    expect(leg.binding).toMatchObject({ name: 'strip landing limit', place: 'STRIP', roomLb: 2320 });
    // Six drums are 2380.99 lb.
    expect(leg.relax).toBe('A 6th drum takes 61 lb more under STRIP strip landing limit');
  });

  it('damp uses the dry figures', () => {
    expect(outward({}, { STRIP: 'damp' })).toEqual(outward({}));
  });

  it.each([
    ['maxTakeoffLb', 7000, 'max take-off weight', 4],
    ['maxLandingLb', 7000, 'max landing weight', 5],
    ['maxZeroFuelLb', 6000, 'max zero-fuel weight', 3],
  ] as const)('the structural limit %s of %d lb is named', (key, limitLb, name, drums) => {
    const leg = outward({ type: { ...exampleType, [key]: pounds(limitLb) } });
    expect(leg.binding.name).toBe(name);
    expect(leg.drums).toBe(drums);
  });

  it('a soft base takes the strip take-off limit down', () => {
    expect(outward({}, { BASE: 'soft' }).binding).toMatchObject({
      name: 'strip take-off limit',
      place: 'BASE',
      drums: 5,
    });
  });

  it('Passengers and drums: a leg with a passenger carries no drum, and both weigh', () => {
    const aboard = { passengers: 2, passengersKg: kilograms(160), freightKg: kilograms(40) };
    const leg = outward({}, {}, aboard);
    expect(leg.drums).toBe(0);
    expect(leg.binding.name).toBe('passengers aboard');
    expect(leg.payloadKg).toBeCloseTo(outward({}).payloadKg - 200, 6);
    expect(leg.relax).toBe('A 1st drum takes BASE-STRIP without its 2 passengers (manual 8.2)');
  });

  it('a weak floor takes positions away', () => {
    const [first, ...others] = exampleType.configurations[0]!.drumPositions;
    const type = withCabin({ drumPositions: [{ ...first!, limitLb: pounds(300) }, ...others] });
    expect(outward({ type }).binding).toMatchObject({ name: 'floor limit', drums: 5 });
  });

  it('only as many drums count as can stand in balance', () => {
    const type = withCabin(
      { operatingArmIn: exampleType.fuelArmIn },
      {
        ...exampleType,
        envelope: exampleType.envelope.map((point) => ({ ...point, aftIn: exampleType.fuelArmIn })),
      },
    );
    // At 190 in empty and full, with no inch to spare aft: only rows 1 (180) and 3 (240) and 2 (210) against 190.
    const leg = outward({ type });
    expect(leg.binding.name).toBe('balance');
    expect(leg.drums).toBe(3);
    expect(leg.relax).toBe('A 4th drum takes positions that balance with 4 drums');
  });

  it('Freight and positions: what the nets do not hold takes drum positions', () => {
    const drums = (freightLb: number, type = exampleType) =>
      outward({ type }, {}, { freightKg: kilogramsFromPounds(pounds(freightLb)) }).limits.find(
        ({ name }) => name === 'drum positions',
      )!.drums;
    // The net holds 600 lb, a position 450 lb.
    expect([600, 601, 1050, 1051].map((freightLb) => drums(freightLb))).toEqual([6, 5, 5, 4]);
    expect(drums(10_000)).toBe(0);
    expect(drums(50, withCabin({ freightPlaces: [] }))).toBe(5);
  });

  it('says that freight without a place leaves the balance open', () => {
    const type = withCabin({ freightPlaces: [] });
    expect(outward({ type }, {}, { freightKg: kilograms(50) }).balanceUnknown).toBe(
      'balance not checked: no place in the cabin is given for the freight',
    );
    expect(outward({}, {}, { freightKg: kilograms(50) }).balanceUnknown).toBeNull();
  });
});

describe('a flight that cannot be flown even without a drum', () => {
  const why = (changes: (leg: RouteRequest['legs'][number]) => RouteRequest['legs'][number]) => {
    const request = exampleRequest(there);
    const load = routeLoad({ ...request, legs: request.legs.map(changes) });
    return [load.flyable, load.legs[0]!.drums, load.why];
  };
  const atStrip = (changes: object) => (leg: RouteRequest['legs'][number]) => ({
    ...leg,
    from: leg.from.place.code === 'STRIP' ? { ...leg.from, ...changes } : leg.from,
    to: leg.to.place.code === 'STRIP' ? { ...leg.to, ...changes } : leg.to,
  });
  const line = { ...exampleLine, place: 'STRIP' };

  it('no line for the type', () => {
    expect(why(atStrip({ limit: null }))).toEqual([false, 0, 'STRIP: type T is not approved there']);
  });

  it('closed, or closed to the type when soft', () => {
    expect(why(atStrip({ surface: 'closed' }))).toEqual([false, 0, 'STRIP is closed']);
    expect(why(atStrip({ surface: 'soft', limit: { ...line, whenSoft: 'closed' } }))).toEqual([
      false,
      0,
      'STRIP is soft and then closed to type T',
    ]);
  });

  it('Unload or stay: the last, empty leg must be able to leave', () => {
    // Empty with 430 lb of fuel: 4930 lb.
    const load = routeLoad({
      ...exampleRequest(there),
      legs: exampleRequest(there).legs.map(atStrip({ limit: { ...line, takeoffLb: pounds(4900) } })),
    });
    expect(load.flyable).toBe(false);
    expect(load.why).toBe('STRIP-BASE: 30 lb over STRIP strip take-off limit without a drum');
  });
});

describe('Unload or stay', () => {
  it('Unload or stay: the arrival weight with the full load against the take-off limit of the strip', () => {
    const load = routeLoad(exampleRequest(there, { STRIP: 'soft' }));
    // 4500 + 430 + 5 drums of 396.83 lb against 7900 - 500.
    expect(load.unloadOrStay).toHaveLength(1);
    expect(load.unloadOrStay[0]).toMatchObject({
      place: 'STRIP',
      takeoffLimitLb: 7400,
      canLeaveLoaded: true,
    });
    expect(load.unloadOrStay[0]!.overLb).toBeCloseTo(6914.16 - 7400, 2);
  });

  it('Unload or stay: says by how much it is over, at every stop', () => {
    const request = exampleRequest(['BASE', 'NEAR', 'FAR', 'BASE']);
    const legs = request.legs.map((leg) => ({
      ...leg,
      from: {
        ...leg.from,
        limit: { ...leg.from.limit!, takeoffLb: pounds(leg.from.place.code === 'FAR' ? 5500 : 7900) },
      },
      to: {
        ...leg.to,
        limit: { ...leg.to.limit!, takeoffLb: pounds(leg.to.place.code === 'FAR' ? 5500 : 7900) },
      },
    }));
    const load = routeLoad({ ...request, legs });
    expect(load.flyable).toBe(true);
    expect(load.unloadOrStay.map(({ place, canLeaveLoaded }) => [place, canLeaveLoaded])).toEqual([
      ['NEAR', true],
      ['FAR', false],
    ]);
    expect(load.legs.map(({ drums }) => drums)).toEqual([6, 6, 1]);
  });
});

it('a flight of one leg has no stop to leave from', () => {
  const load = routeLoad(exampleRequest(['BASE', 'OTHER']));
  expect(load.unloadOrStay).toEqual([]);
  expect(load.dutyHours).toBeCloseTo(hours(0.55 + 0.5), 12);
});
