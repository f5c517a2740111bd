import {
  checkBalance,
  type FlightCabin,
  findPositions,
  type PlacedDrum,
  planningDrums,
  routeLoad,
  suggestMove,
} from '@drumline/loading';
import { kilograms, pounds, poundsFromKilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { drum, flight, payloadRows, typeOf } from './loading-tables.js';

/** A leg with that much fuel at take-off. */
const legWithFuel = (typeId: string, takeoffLb: number): FlightCabin => {
  const type = typeOf(typeId);
  const leg = {
    from: 'ALD',
    to: 'LOR',
    fuelAtTakeoffLb: pounds(takeoffLb),
    fuelAtLandingLb: pounds(takeoffLb),
  };
  return {
    type,
    configuration: 'drums',
    fuel: { rampFuelLb: pounds(takeoffLb + type.taxiFuelLb), legs: [leg] },
    cargo: [],
  };
};

const drumsAt = (positions: readonly string[], kg = 180): PlacedDrum[] =>
  positions.map((position, i) => ({
    id: `${i + 1}`,
    weightLb: poundsFromKilograms(kilograms(kg)),
    offAfterLeg: 0,
    position,
  }));

/** The moments of the first leg, by name. */
const momentsOf = (cabin: FlightCabin, drums: readonly PlacedDrum[]) => {
  const { moments } = checkBalance(cabin, drums);
  return new Map(moments.filter(({ leg }) => leg === moments[0]!.leg).map((one) => [one.moment, one]));
};

describe('balance of the territory’s types', () => {
  it('type C with 4 drums in rows 2 and 3 is aft of its limit, and two drums to row 1 mend it', () => {
    const cabin = legWithFuel('C', 1100);
    const wrong = drumsAt(['R2L', 'R2R', 'R3L', 'R3R']);
    const zeroFuel = momentsOf(cabin, wrong).get('zero fuel')!;
    expect(zeroFuel.armIn).toBeCloseTo(211.9, 1);
    expect(zeroFuel.aftIn).toBe(211);
    expect(checkBalance(cabin, wrong).holds).toBe(false);

    const move = suggestMove(cabin, wrong)!;
    expect(move.text).toBe('move two drums from row 3 to row 1');
    const right = momentsOf(cabin, move.drums);
    expect(right.get('zero fuel')!.armIn).toBeCloseTo(206.8, 1);
    expect(right.get('take-off')!.armIn).toBeCloseTo(207.4, 1);
    expect(checkBalance(cabin, move.drums).holds).toBe(true);
  });

  it('type A with drums in rows 2 and 3 is aft of its limit at zero fuel', () => {
    const zeroFuel = momentsOf(legWithFuel('A', 400), drumsAt(['R2L', 'R2R', 'R3C'])).get('zero fuel')!;
    expect(zeroFuel.armIn).toBeCloseTo(143.98, 2);
    expect(zeroFuel.aftIn).toBe(143.8);
    expect(zeroFuel.inside).toBe(false);
  });

  it('type B with 4 drums in rows 2 and 3 is inside at zero fuel and outside at take-off', () => {
    const cabin = legWithFuel('B', 1100);
    const drums = drumsAt(['R2L', 'R2R', 'R3L', 'R3R']);
    const moments = momentsOf(cabin, drums);
    expect(moments.get('zero fuel')).toMatchObject({ inside: true });
    expect(moments.get('zero fuel')!.armIn).toBeCloseTo(193.49, 2);
    expect(moments.get('take-off')).toMatchObject({ inside: false, aftIn: 193.8 });
    expect(moments.get('take-off')!.armIn).toBeCloseTo(193.85, 2);
    expect(checkBalance(cabin, drums).holds).toBe(false);
  });
});

describe('the load sheet of F05, B1 from ALD to LOR with six named drums', () => {
  const weightsLb = [395, 396, 398, 395, 396, 398];
  const load = routeLoad(flight('B', ['ALD', 'LOR', 'ALD']));
  const drums = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'].map((position, i) => ({
    id: `${447 + i}`.padStart(4, '0'),
    weightLb: pounds(weightsLb[i]!),
    offAfterLeg: 0,
    position,
  }));
  const cabin: FlightCabin = { type: typeOf('B'), configuration: 'drums', fuel: load, cargo: [] };

  it('zero fuel 7,358 lb at 191.8 in, take-off 8,528 lb at 192.4 in, landing 8,131 lb', () => {
    const moments = momentsOf(cabin, drums);
    expect(load.rampFuelLb).toBe(1200);
    expect(load.legs[0]!.tripFuelLb).toBeCloseTo(397, 0);
    expect(moments.get('zero fuel')!.weightLb).toBe(7358);
    expect(moments.get('zero fuel')!.armIn).toBeCloseTo(191.8, 1);
    expect(moments.get('zero fuel')!.forwardIn).toBeCloseTo(180.9, 1);
    expect(moments.get('take-off')!.weightLb).toBe(8528);
    expect(moments.get('take-off')!.armIn).toBeCloseTo(192.4, 1);
    expect(moments.get('take-off')!.forwardIn).toBeCloseTo(183.4, 1);
    expect(moments.get('landing')!.weightLb).toBeCloseTo(8131, 0);
    expect(checkBalance(cabin, drums).holds).toBe(true);
  });

  it('169 lb under the landing limit at LOR when dry, 531 lb over it when soft', () => {
    const landingLb = momentsOf(cabin, drums).get('landing')!.weightLb;
    expect(8300 - landingLb).toBeCloseTo(169, 0);
    expect(8300 - 700 - landingLb).toBeCloseTo(-531, 0);
  });

  it('a soft LOR takes two drums off the flight', () => {
    const soft = routeLoad(flight('B', ['ALD', 'LOR', 'ALD'], { LOR: 'soft' }));
    expect([load.legs[0]!.drums, soft.legs[0]!.drums]).toEqual([6, 4]);
    expect(soft.legs[0]!.binding).toMatchObject({ name: 'strip landing limit', place: 'LOR' });
  });
});

describe('other flights of the territory', () => {
  it('Unload or stay: F06 lands at GAN 11 lb over its take-off limit', () => {
    const [gan] = routeLoad(flight('A', ['MER', 'GAN', 'MER'])).unloadOrStay;
    expect(gan).toMatchObject({ place: 'GAN', takeoffLimitLb: 6250, canLeaveLoaded: false });
    // Worked by hand: 4250 + 590 - 25 - (49.1 / 140 x 330 + 25) + 720 / 0.45359237 = 6261.59.
    expect(gan!.arrivalLb).toBeCloseTo(6261.59, 2);
    expect(gan!.overLb).toBeCloseTo(11.59, 2);
    // Printed: take-off 6,402 lb less a trip of 141 lb.
    expect(gan).toMatchObject({ printedArrivalLb: 6261, printedOverLb: 11 });
  });

  it('Passengers and drums: X2 takes drums to CIN and none on the way home with passengers', () => {
    const load = routeLoad(
      flight('C', ['ALD', 'CIN', 'MER', 'ALD'], {}, [
        { freightKg: 820 },
        {},
        { passengers: 2, passengersKg: 180 },
      ]),
    );
    expect(load.legs.map(({ drums }) => drums > 0)).toEqual([true, true, false]);
    expect(load.legs[2]!.binding.name).toBe('passengers aboard');
  });

  it('every payload of the table has positions that balance, dry', () => {
    for (const { base, strip, type, drumsDry } of payloadRows.filter(({ approved }) => approved)) {
      const fuel = routeLoad(flight(type, [base, strip, base]));
      const cabin: FlightCabin = { type: typeOf(type), configuration: 'drums', fuel, cargo: [] };
      const positions = findPositions(cabin, planningDrums([drumsDry], drum));
      expect(positions.found, `${type} ${base}-${strip} ${drumsDry}`).toBe(true);
    }
  });

  it('a flight to GAN and LOR keeps the drums for LOR in front of those for GAN', () => {
    const fuel = routeLoad(flight('A', ['MER', 'GAN', 'LOR', 'MER']));
    const cabin: FlightCabin = { type: typeOf('A'), configuration: 'drums', fuel, cargo: [] };
    const positions = findPositions(cabin, planningDrums([2, 2], drum));
    expect(positions.found && positions.drums.map(({ position }) => position)).toEqual([
      'R2L',
      'R2R',
      'R1L',
      'R1R',
    ]);
  });
});
