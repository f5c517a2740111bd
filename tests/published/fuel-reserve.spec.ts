import { type FuelPolicy, routeLoad } from '@drumline/loading';
import { minutes, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { oneLeg } from '../builders/one-leg.js';

// The published items are in kg; fuel arithmetic is the same in any unit of weight, so their figures stand as they are.

/** Ramp fuel of one leg of so many units of trip fuel, rounded to the unit or not at all. */
function rampFuel(
  { trip, flow, taxi = 0 }: { trip: number; flow: number; taxi?: number },
  policy: Partial<FuelPolicy>,
): number {
  const fuelPolicy: FuelPolicy = {
    reference: 'see the check',
    contingencyPercent: 0,
    finalReserveMinutes: minutes(0),
    roundUpToLb: pounds(0.001),
    fixedMinutesPerLeg: minutes(0),
    ...policy,
  };
  return routeLoad(oneLeg({ trip, flow, taxi }, fuelPolicy)).rampFuelLb;
}

describe('final reserve', () => {
  // 14 CFR 135.209: aeroplane 30 min by day, 45 by night, helicopter 20, at normal cruise consumption.
  // law.lawstack.com/laws/14-cfr_s_135-209
  it.each([
    ['aeroplane by day', 30, 150],
    ['aeroplane by night', 45, 225],
    ['helicopter', 20, 100],
  ])('%s: %d minutes at 300 an hour are %d', (_, reserve, fuel) => {
    expect(rampFuel({ trip: 100, flow: 300 }, { finalReserveMinutes: minutes(reserve) })).toBeCloseTo(
      100 + fuel,
      2,
    );
  });

  it('30 minutes of holding at 150 an hour are 75', () => {
    // ICAO Annex 6 Part I 4.3.6 (turbine aeroplanes), as stated in AMC text and flightcrewguide.com fuel-policy-2.
    expect(rampFuel({ trip: 200, flow: 150 }, { finalReserveMinutes: minutes(30) })).toBeCloseTo(275, 2);
  });

  it('a short flight may carry its own time instead: the reserve is a setting, not a constant', () => {
    // NZ rule 91.305, helicopters: 20 min, or the flight time where that is shorter; ask-elton.nz
    const flightMinutes = (40 / 240) * 60;
    const policy = { finalReserveMinutes: minutes(Math.min(20, flightMinutes)) };
    expect(rampFuel({ trip: 40, flow: 240 }, policy)).toBeCloseTo(80, 2);
    const longer = { finalReserveMinutes: minutes(Math.min(20, (300 / 240) * 60)) };
    expect(rampFuel({ trip: 300, flow: 240 }, longer)).toBeCloseTo(380, 2);
  });
});

describe('contingency', () => {
  it('5 % of the trip beside taxi and 20 minutes: 8 + 300 + 80 + 15 = 403', () => {
    // Singapore ANA1966-S445-2018, helicopter rule 47(4), sso.agc.gov.sg; the figures of the case are ours.
    const policy = { contingencyPercent: 5, finalReserveMinutes: minutes(20) };
    expect(rampFuel({ trip: 300, flow: 240, taxi: 8 }, policy)).toBeCloseTo(403, 2);
  });

  it('10 % beside 20 minutes', () => {
    // ICAO Annex 6 Part III 2.3.6.2, older edition: 20 min and 10 % of the planned flight time, which at one flow is 10 %
    // of the trip; aero.cn/2010/0717/10651_16.html
    const policy = { contingencyPercent: 10, finalReserveMinutes: minutes(20) };
    expect(rampFuel({ trip: 300, flow: 240 }, policy)).toBeCloseTo(300 + 30 + 80, 2);
  });

  it('the greater of 5 % and 5 minutes: 12.5 on a trip of 200 at 150 an hour', () => {
    // ICAO Annex 6 Part I 4.3.6 and the European rule; the figures of the case are ours.
    const policy = { contingencyPercent: 5, contingencyFloorMinutes: minutes(5) };
    expect(rampFuel({ trip: 200, flow: 150 }, policy)).toBeCloseTo(212.5, 2);
    // On a longer trip the 5 % are the greater.
    expect(rampFuel({ trip: 400, flow: 150 }, policy)).toBeCloseTo(420, 2);
  });

  it('5 % alone: 10 on the same trip', () => {
    // UK CAA AMC2 CAT.OP.MPA.181, performance classes B and C; regulatorylibrary.caa.co.uk
    expect(rampFuel({ trip: 200, flow: 150 }, { contingencyPercent: 5 })).toBeCloseTo(210, 2);
  });
});
