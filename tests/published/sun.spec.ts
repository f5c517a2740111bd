import { sunAltitudeDeg, sunOfDay } from '@drumline/network';
import { epochMinutes } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const at = (latitudeDeg: number, longitudeDeg: number) => ({ latitudeDeg, longitudeDeg });

describe('the sun', () => {
  // I. Reda and A. Andreas, Solar position algorithm, NREL/TP-560-34302 (revised January 2008), table A5.1:
  // 17 October 2003 12:30:30 UTC-7, zenith angle 50.11162 with refraction; tolerance 0.05 degrees.
  it('SUN-1: stands 50.11 degrees from the zenith', () => {
    const zenith = 90 - sunAltitudeDeg(at(39.742476, -105.1786), '2003-10-17T19:30:30Z');
    expect(Math.abs(zenith - 50.11162)).toBeLessThanOrEqual(0.05);
  });

  // The same report, table A2.1: longitude 0, UT; tolerance 60 s.
  it.each([
    ['1994-01-02', 35, '07:08:12.8', '16:59:55.9'],
    ['1996-07-05', -35, '07:08:15.4', '17:01:04.5'],
    ['2004-12-04', -35, '04:38:57.1', '19:02:02.5'],
  ])('SUN-2: rises and sets on %s at latitude %d', (date, latitude, sunrise, sunset) => {
    const sun = sunOfDay(at(latitude, 0), date, 'Etc/GMT');
    if (sun.kind !== 'rises and sets') throw new Error(sun.kind);
    const secondsOff = (instant: string, time: string) =>
      Math.abs(epochMinutes(instant) - epochMinutes(`${date}T${time}Z`)) * 60;
    expect(secondsOff(sun.sunrise, sunrise)).toBeLessThanOrEqual(60);
    expect(secondsOff(sun.sunset, sunset)).toBeLessThanOrEqual(60);
  });

  // 80 degrees north: the sun does not set at midsummer nor rise at midwinter (astronomical fact, and computed).
  it('SUN-3: does not set at 80 N on 21 June, does not rise on 21 December', () => {
    expect(sunOfDay(at(80, 0), '2027-06-21', 'Etc/GMT')).toEqual({ kind: 'no sunset' });
    expect(sunOfDay(at(80, 0), '2027-12-21', 'Etc/GMT')).toEqual({ kind: 'no sunrise' });
  });
});
