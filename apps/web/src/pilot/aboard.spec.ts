import { kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { asPlanned, changePlaces, drumByWeight, drumInBook, standsIn } from './aboard.js';
import { flightAsLoaded } from './as-loaded.js';
import { isNewer } from './opened-flight.js';
import { exampleDay, exampleFlight } from './testing/example-flight.js';

const request = exampleFlight.request!;
const planned = asPlanned(request);
const standing = (aboard: typeof planned) => aboard.map(({ number, position }) => `${number} ${position}`);
const other = drumInBook('0436', planned, exampleDay)!;

describe('another drum at the base', () => {
  it('stands where the planned one was to stand', () => {
    expect(standing(standsIn(planned, 'R1L', other))).toEqual(['0436 R1L', '0435 R1R', '0437 R2L']);
  });

  it('that is aboard already changes places', () => {
    const aboard = drumInBook('0437', planned, exampleDay)!;
    expect(standing(standsIn(planned, 'R1L', aboard))).toEqual(['0434 R2L', '0435 R1R', '0437 R1L']);
    expect(standing(changePlaces(planned, 'R1L', 'R1R'))).toEqual(['0434 R1R', '0435 R1L', '0437 R2L']);
  });

  it('that no book has is taken by its weight: the steel as planned, the rest fuel', () => {
    expect(drumInBook('0913', planned, exampleDay)).toBeNull();
    expect(drumByWeight('0913', kilograms(180), request)).toMatchObject({
      number: '0913',
      grossKg: 180,
      tareKg: 20,
      litres: 200,
    });
  });
});

describe('the flight as it is loaded', () => {
  const flight = flightAsLoaded(exampleFlight, standsIn(planned, 'R1L', other));

  it('has the other drum on sheet and stop; totals, balance and check code follow', () => {
    expect(flight.stops[0]!.drums).toEqual(['0436', '0435', '0437']);
    const [before, after] = [exampleFlight, flight].map(({ sheet }) => sheet!.legs[0]!.totals);
    // 0434 weighs 179 kg, 395 lb; 0436 weighs 182 kg, 401 lb.
    expect([before!.loadLb, after!.loadLb]).toEqual([1189, 1195]);
    expect(after!.takeoffLb - before!.takeoffLb).toBe(6);
    expect(flight.balance[0]!.armIn).not.toBe(exampleFlight.balance[0]!.armIn);
    expect(flight.sheet!.checkCode).not.toBe(exampleFlight.sheet!.checkCode);
  });

  it('is no news to its phone, before base has heard of it and after; another version is', () => {
    expect(isNewer(flight, exampleFlight)).toBe(false);
    const { changedFrom: _, ...atBase } = flight;
    expect(isNewer(flight, atBase)).toBe(false);
    expect(isNewer(flight, { ...atBase, version: 4 })).toBe(true);
    const third = flightAsLoaded(exampleFlight, changePlaces(planned, 'R1L', 'R1R'));
    expect(isNewer(flight, third)).toBe(true);
    expect(isNewer(exampleFlight, third)).toBe(true);
  });

  it('with a drum that base has in no book is no news either', () => {
    const unknown = drumByWeight('0913', kilograms(180), request);
    const own = flightAsLoaded(exampleFlight, standsIn(planned, 'R1L', unknown));
    const atBase = { ...own, sheet: null, request: null, why: 'There is no drum 0913 in the book' };
    expect(isNewer(own, atBase)).toBe(false);
  });
});
