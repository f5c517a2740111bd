import { addDays, epochMinutes, localDate } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daylight, sunAltitudeDeg, sunOfDay } from './sun.js';

const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });

describe('the sun of a day', () => {
  it('stands on the horizon at sunrise and sunset, above it at noon between', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -7, max: 7, noNaN: true }),
        fc.integer({ min: 0, max: 365 }),
        (latitude, longitude, days) => {
          const position = at(latitude, longitude);
          const date = addDays('2027-01-01', days);
          const sun = sunOfDay(position, date, 'Etc/GMT');
          if (sun.kind !== 'rises and sets') throw new Error(sun.kind);
          // The upper limb on the horizon puts the centre a quarter of a degree below.
          expect(sunAltitudeDeg(position, sun.sunrise)).toBeCloseTo(-0.27, 0);
          expect(sunAltitudeDeg(position, sun.sunset)).toBeCloseTo(-0.27, 0);
          expect(sunAltitudeDeg(position, `${date}T12:00Z`)).toBeGreaterThan(0);
          expect(localDate(sun.sunrise, 'Etc/GMT')).toBe(date);
          expect(epochMinutes(sun.sunset)).toBeGreaterThan(epochMinutes(sun.sunrise));
        },
      ),
      { numRuns: 30 },
    );
  });

  it('neither rises nor sets for weeks in the far north, and says so each day', () => {
    const kinds = Array.from(
      { length: 365 },
      (_, index) => sunOfDay(at(70, 0), addDays('2027-01-01', index), 'Etc/GMT').kind,
    );
    expect(kinds.filter((kind) => kind === 'no sunrise').length).toBeGreaterThan(50);
    expect(kinds.filter((kind) => kind === 'no sunset').length).toBeGreaterThan(60);
    // One season of each, without a gap: dark, days, light, days, dark.
    const seasons = kinds.filter((kind, index) => kind !== kinds[index - 1]);
    expect(seasons).toEqual(['no sunrise', 'rises and sets', 'no sunset', 'rises and sets', 'no sunrise']);
  });
});

describe('daylight', () => {
  it('is in local time, within the light', () => {
    const utc = daylight(at(65, -4), '2027-03-20', 'Etc/GMT')!;
    const anHourAhead = daylight(at(65, -4), '2027-03-20', 'Etc/GMT-1')!;
    expect(anHourAhead).toEqual({ from: utc.from + 60, until: utc.until + 60 });
    // About the equinox the day is twelve hours and a little more, for refraction and the limb.
    expect(utc.until - utc.from).toBeGreaterThan(12 * 60);
    expect(utc.until - utc.from).toBeLessThan(12.5 * 60);
  });

  it('is the whole day without a sunset, and none without a sunrise', () => {
    expect(daylight(at(80, 0), '2027-06-21', 'Etc/GMT')).toEqual({ from: 0, until: 1440 });
    expect(daylight(at(80, 0), '2027-12-21', 'Etc/GMT')).toBeNull();
  });

  it('reaches past midnight where the zone does not fit the longitude', () => {
    const window = daylight(at(0, 170), '2027-03-20', 'Etc/GMT')!;
    expect(window.from).toBeLessThan(0);
    expect(window.until).toBeGreaterThan(0);
  });
});
