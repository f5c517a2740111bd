import { hours, kilograms, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { day1, flight, found, soft, tiny, tinyType, withType } from './testing/one-flight.js';

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
