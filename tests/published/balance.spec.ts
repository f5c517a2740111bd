import {
  type AircraftType,
  centreOfGravity,
  checkBalance,
  type EnvelopePoint,
  envelopeAt,
  type FlightCabin,
  type Mass,
  type PlacedDrum,
  routeLoad,
} from '@drumline/loading';
import { cents, inches, kilogramsFromPounds, knots, minutes, pounds, poundsPerHour } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { oneLeg } from '../builders/one-leg.js';

/** Weight at an arm. The published items use kg and mm as well: a centre of gravity does not mind the unit. */
const mass = (weight: number, arm: number): Mass => ({ weightLb: pounds(weight), armIn: inches(arm) });

describe('centre of gravity', () => {
  it('shifts with the weight that is moved: 8,000 lb at 77.0, 100 lb from 30 to 150, is 78.5', () => {
    // FAA Pilot's Handbook of Aeronautical Knowledge, weight shifting, as worked at
    // flightlearnings.com/2011/03/21/determining-loaded-weight-and-cg-part-five-weight-shifting/
    const total = centreOfGravity([mass(8000, 77), mass(-100, 30), mass(100, 150)]);
    expect(total.weightLb).toBe(8000);
    expect(total.armIn).toBe(78.5);
  });

  it('comes to the limit when 65 lb move forward: 7,800 lb at 81.5, limit 80.5, from 150 to 30', () => {
    // FAA Pilot's Handbook, quoted at jetcareers.com/forums/threads/weight-shifting.151008/
    expect(centreOfGravity([mass(7800, 81.5), mass(-65, 150), mass(65, 30)]).armIn).toBeCloseTo(80.5, 12);
  });

  it('of a weighing on three wheels: 42,054 kg at 680.3', () => {
    // European central question bank, atplquestions.com/easa-ecqb-2020-atpl-question/mass-balance/7
    const total = centreOfGravity([mass(6488, 161), mass(17783, 775), mass(17783, 775)]);
    expect(total.weightLb).toBe(42054);
    expect(total.weightLb * total.armIn).toBeCloseTo(28_608_218, 6);
    expect(Math.abs(total.armIn - 680.3)).toBeLessThanOrEqual(0.05);
  });

  it('of a light helicopter: 1,599 lb at 98.9', () => {
    // Worked table, shergoodaviation.com wiki, weight and balance page; its moments are rounded.
    const total = centreOfGravity([mass(1109, 104.7), mass(180, 72.4), mass(160, 72.4), mass(25 * 6, 115.8)]);
    expect(total.weightLb).toBe(1599);
    expect(Math.abs(total.armIn - 98.9)).toBeLessThanOrEqual(0.05);
  });

  it('of an examination item: 2,055 lb at 94.01', () => {
    // FAA knowledge test; inputs at freezingblue.com/flashcards/286333, answer from memory.
    const total = centreOfGravity([mass(1495, 151_593 / 1495), mass(380, 64), mass(30 * 6, 96)]);
    expect(total.weightLb).toBe(2055);
    expect(total.weightLb * total.armIn).toBeCloseTo(193_193, 6);
    expect(total.armIn).toBeCloseTo(94.01, 2);
  });

  it.each([
    // FAA handbooks (Weight and Balance H-8083-1, Pilot's Handbook), from memory; the arithmetic is exact.
    ['plank', [mass(100, 50), mass(100, 90), mass(200, 150)], 400, 44_000, 110],
    [
      'light aeroplane',
      [mass(2100, 78.3), mass(340, 85), mass(350, 121), mass(450, 75), mass(80, 150)],
      3320,
      281_430,
      84.8,
    ],
    ['weighing', [mass(2322, 78), mass(3540, 245.5), mass(3540, 245.5)], 9402, 1_919_256, 204.1],
  ] as const)('handbook %s', (_, masses, weight, moment, arm) => {
    const total = centreOfGravity(masses);
    expect(total.weightLb).toBe(weight);
    expect(total.weightLb * total.armIn).toBeCloseTo(moment, 6);
    expect(total.armIn).toBeCloseTo(arm, 1);
  });

  it.each([
    // FAA Pilot's Handbook, weight addition and removal, from memory.
    ['140 lb added at 150 to 6,680 lb at 80', [mass(6680, 80), mass(140, 150)], 1.4],
    ['100 lb removed at 150 from 6,100 lb at 80', [mass(6100, 80), mass(-100, 150)], -1.2],
  ] as const)('%s moves it', (_, masses, change) => {
    expect(centreOfGravity(masses).armIn - 80).toBeCloseTo(change, 1);
  });

  it('added mass to reach a limit: the form for the mass before is not the form for the mass after', () => {
    // Textbook item quoted at airliners.net t=770515: 980 kg, CG 2,930, limit 3,004, station 3,600 mm; published 108 kg,
    // which holds only when 980 kg is the mass after. Both forms are tested by recomputing the limit.
    const after = (980 * (3004 - 2930)) / (3600 - 2930);
    const before = (980 * (3004 - 2930)) / (3600 - 3004);
    expect(after).toBeCloseTo(108.24, 2);
    expect(before).toBeCloseTo(121.68, 2);
    expect(centreOfGravity([mass(980 - after, 2930), mass(after, 3600)]).armIn).toBeCloseTo(3004, 9);
    expect(centreOfGravity([mass(980, 2930), mass(before, 3600)]).armIn).toBeCloseTo(3004, 9);
    expect(centreOfGravity([mass(980, 2930), mass(after, 3600)]).armIn).not.toBeCloseTo(3004, 0);
  });
});

describe('envelope', () => {
  // TM 55-1510-215-10, para 6-28: forward limit 144.7 below 7,400 lb, tapering to 153.2 at 9,650 lb; aft 160.4.
  // aviationmiscmanuals.tpub.com/TM-55-1510-215-10/TM-55-1510-215-100180.htm; the values between are its straight line.
  const point = (weight: number, forward: number): EnvelopePoint => ({
    weightLb: pounds(weight),
    forwardIn: inches(forward),
    aftIn: inches(160.4),
  });
  const envelope = [point(5000, 144.7), point(7400, 144.7), point(9650, 153.2)];

  it.each([
    [7000, 144.7],
    [7400, 144.7],
    [8000, 146.967],
    [8525, 148.95],
    [9000, 150.744],
    [9650, 153.2],
  ])('at %d lb the forward limit is %f in', (weight, forward) => {
    const limits = envelopeAt(envelope, weight)!;
    expect(limits.forwardIn).toBeCloseTo(forward, 3);
    expect(limits.aftIn).toBeCloseTo(160.4, 9);
  });

  it('has no limits outside its weights', () => {
    expect(envelopeAt(envelope, 9650.1)).toBeNull();
    expect(envelopeAt(envelope, 4999)).toBeNull();
  });
});

describe('zero-fuel weight', () => {
  it('4,240 lb without fuel leave 160 lb under a limit of 4,400 lb', () => {
    // FAA Pilot's Handbook, figure 9-11, flyinhighokc.com/pilotshandbook/pages/9-10.html: 4,240 lb is within the limit.
    const policy = {
      reference: 'none',
      contingencyPercent: 0,
      finalReserveMinutes: minutes(0),
      roundUpToLb: pounds(10),
      fixedMinutesPerLeg: minutes(0),
    };
    const request = oneLeg({ trip: 100, flow: 100, taxi: 0 }, policy, { maxZeroFuelLb: pounds(4400) });
    const freightKg = kilogramsFromPounds(pounds(2240));
    const load = routeLoad({ ...request, legs: request.legs.map((leg) => ({ ...leg, freightKg })) });
    const limit = load.legs[0]!.limits.find(({ name }) => name === 'max zero-fuel weight')!;
    expect(limit.roomLb).toBeCloseTo(160, 9);
  });
});

describe('balance through a flight', () => {
  // Common practice, no single source: ramp, take-off, landing and zero fuel of each leg, drums coming out on the way.
  const type: AircraftType = {
    id: 'plank',
    name: 'plank',
    maxTakeoffLb: pounds(3000),
    maxLandingLb: pounds(3000),
    maxZeroFuelLb: pounds(3000),
    cruiseKt: knots(100),
    fuelFlowLbPerHour: poundsPerHour(100),
    climbAllowanceLb: pounds(0),
    taxiFuelLb: pounds(10),
    fuelCapacityLb: pounds(500),
    fuelArmIn: inches(100),
    envelope: [
      { weightLb: pounds(900), forwardIn: inches(90), aftIn: inches(112) },
      { weightLb: pounds(3000), forwardIn: inches(90), aftIn: inches(112) },
    ],
    configurations: [
      {
        id: 'drums',
        name: 'drums',
        operatingWeightLb: pounds(1000),
        operatingArmIn: inches(100),
        drumPositions: [
          { id: 'FRONT', armIn: inches(60), limitLb: pounds(450), unloadOrder: 1 },
          { id: 'AFT', armIn: inches(140), limitLb: pounds(450), unloadOrder: 1 },
        ],
        seats: [],
        freightPlaces: [],
      },
    ],
    drumConfiguration: 'drums',
    tipArmIn: inches(111),
    costPerBlockHour: cents(0),
    landingFee: cents(0),
    turnRoundMinutes: minutes(0),
    reference: 'made up',
  };
  const leg = (from: string, to: string, takeoff: number) => ({
    from,
    to,
    fuelAtTakeoffLb: pounds(takeoff),
    fuelAtLandingLb: pounds(takeoff - 50),
  });
  const cabin: FlightCabin = {
    type,
    configuration: 'drums',
    fuel: { rampFuelLb: pounds(210), legs: [leg('A', 'B', 200), leg('B', 'C', 150), leg('C', 'A', 100)] },
    cargo: [],
  };
  const drum = (position: string, offAfterLeg: number): PlacedDrum => ({
    id: position,
    weightLb: pounds(400),
    offAfterLeg,
    position,
  });

  it('looks at ramp, zero fuel, take-off and landing of every leg', () => {
    const { moments } = checkBalance(cabin, [drum('FRONT', 0), drum('AFT', 1)]);
    expect(moments.map((one) => `${one.leg} ${one.moment}`)).toEqual([
      'A-B ramp',
      'A-B zero fuel',
      'A-B take-off',
      'A-B landing',
      'B-C zero fuel',
      'B-C take-off',
      'B-C landing',
      'C-A zero fuel',
      'C-A take-off',
      'C-A landing',
    ]);
  });

  it('the aft drum out first moves the balance forward, the front drum first moves it aft', () => {
    const zeroFuel = (drums: readonly PlacedDrum[]) =>
      checkBalance(cabin, drums)
        .moments.filter(({ moment }) => moment === 'zero fuel')
        .map(({ armIn }) => Number(armIn.toFixed(3)));
    // (1000 x 100 + 400 x 60) / 1400 and (1000 x 100 + 400 x 140) / 1400.
    expect(zeroFuel([drum('AFT', 0), drum('FRONT', 1)])).toEqual([100, 88.571, 100]);
    expect(zeroFuel([drum('FRONT', 0), drum('AFT', 1)])).toEqual([100, 111.429, 100]);
  });

  it('refuses the loading that sits on its tail when the front drum is out', () => {
    const high = { ...cabin, type: { ...type, tipArmIn: inches(110) } };
    const { tips, faults } = checkBalance(high, [drum('FRONT', 0), drum('AFT', 1)]);
    // One drum out at B with 150 lb of fuel: (1000 x 100 + 150 x 100 + 400 x 140) / 1550 = 110.3.
    expect(tips![0]).toMatchObject({ leg: 'A-B', drumsOut: 1, holds: false });
    expect(tips![0]!.armIn).toBeCloseTo(110.323, 3);
    expect(faults.map(({ kind }) => kind)).toContain('tail tip');
    expect(checkBalance(cabin, [drum('FRONT', 0), drum('AFT', 1)]).tips!.every(({ holds }) => holds)).toBe(
      true,
    );
  });
});
