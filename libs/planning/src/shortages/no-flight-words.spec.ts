import { describe, expect, it } from 'vitest';
import type { Scenario } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { noFlightWords } from './no-flight-words.js';

const words = (changes: Partial<Scenario>) => noFlightWords(tinyTerritory(changes), 'NOR');

describe('why nobody can bring a drum to a strip that is short', () => {
  it('somebody can: nothing is said', () => {
    expect(words({})).toBeNull();
  });

  it('a time zone that does not suit the longitudes leaves little daylight in the hours of flying', () => {
    // HOM at 4 W, 60 N in March: light from 06:54 to 17:31 at Greenwich, 10 h later by UTC+10.
    expect(words({ timeZone: 'Etc/GMT-10', asOf: '2031-03-02T15:00Z' })).toMatch(
      /^too little daylight in the hours of flying, 07:00 to 17:00: by Etc\/GMT-10 at HOM it is light from 1\d:\d\d to 0\d:\d\d\. Look at the time zone/,
    );
  });

  it('no aeroplane, or none at home', () => {
    expect(words({ aircraft: [] })).toBe('no aeroplane is named: add one, with its home base.');
    const away = [{ from: '2031-03-01', until: '2031-03-31', reason: 'heavy check' }];
    expect(words({ aircraft: [{ tail: 'T1', type: 'T', home: 'HOM', absences: away }] })).toBe(
      'every aeroplane is away on every day that is left.',
    );
  });

  it('no limit of the strip for the type', () => {
    const { stripLimits } = tinyTerritory();
    expect(words({ stripLimits: stripLimits.filter(({ place }) => place !== 'NOR') })).toMatch(
      /^no aeroplane may fly there on any day\. .*NOR/,
    );
  });

  it('the strip is closed on every day', () => {
    const { places } = tinyTerritory();
    const closed = places.map((place) =>
      place.code === 'NOR' ? { ...place, surface: { ...place.surface, expected: 'closed' as const } } : place,
    );
    expect(words({ places: closed })).toMatch(/^no aeroplane may fly there on any day\. .*closed/);
  });

  it('days without flying', () => {
    const noFlyingDays = ['2031-03-03', '2031-03-04', '2031-03-05', '2031-03-06', '2031-03-07'];
    expect(words({ noFlyingDays })).toBe(
      'no aeroplane may fly there on any day. Mon 3 Mar is a day without flying. Fly it on another day.',
    );
  });
});
