import { hours, kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { BookedFlight, BookedLeg } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { bookedRoom, bookedSpares } from './booked-room.js';

const leg = (from: string, to: string, aboard: Partial<BookedLeg> = {}): BookedLeg => ({
  ...{ from, to, passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) },
  ...aboard,
});
const mail = (legs: readonly BookedLeg[]): BookedFlight => ({
  id: 'X1',
  date: '2031-03-04',
  aircraft: 'T1',
  configuration: 'drums',
  purpose: 'mail',
  legs,
  heldHours: hours(2),
});
const outAndBack = mail([leg('HOM', 'NOR'), leg('NOR', 'HOM')]);
const withPassengers = mail([
  leg('HOM', 'NOR', { passengers: 2, passengersKg: kilograms(180) }),
  leg('NOR', 'HOM'),
]);
const sparesOf = (flight: BookedFlight) => bookedSpares(tinyTerritory({ bookedFlights: [flight] }));
const roomOn = (flight: BookedFlight) => bookedRoom(tinyTerritory({ bookedFlights: [flight] }), flight);

describe('a flight that flies anyway', () => {
  it('has room for drums, and where they would go', () => {
    expect(sparesOf(outAndBack)).toEqual([{ id: 'X1', drums: 4, to: 'NOR' }]);
  });

  it('has none beside passengers', () => {
    expect(sparesOf(withPassengers)).toEqual([{ id: 'X1', drums: 0, to: null }]);
    expect(roomOn(withPassengers)!.legs[0]).toMatchObject({ drums: 0, limit: { name: 'passengers aboard' } });
  });

  it('says by which limit each leg takes no more', () => {
    const [out] = roomOn(outAndBack)!.legs;
    expect(out).toMatchObject({ from: 'HOM', to: 'NOR', drums: 4, limit: { name: 'drum positions' } });
  });

  it('takes no more to its second landing than the leg before lets through', () => {
    const freight = { freightKg: kilograms(400) };
    const { legs, landings } = roomOn(
      mail([leg('HOM', 'NOR', freight), leg('NOR', 'SOU'), leg('SOU', 'HOM')]),
    )!;
    expect(legs[0]!.drums).toBeLessThan(legs[1]!.drums);
    expect(landings).toEqual([
      { place: 'NOR', drums: legs[0]!.drums, leg: 0 },
      { place: 'SOU', drums: legs[0]!.drums, leg: 0 },
    ]);
  });

  it('outside the days that are planned has no figure', () => {
    expect(roomOn({ ...outAndBack, date: '2031-05-04' })).toBeNull();
  });
});
