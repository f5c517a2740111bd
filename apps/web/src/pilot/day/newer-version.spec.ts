import { makeLoadSheet } from '@drumline/loading';
import { describe, expect, it } from 'vitest';
import { exampleFlight } from '../testing/example-flight.js';
import { differences } from './newer-version.js';

describe('a newer version', () => {
  it('is told by what differs, the drums first, without the totals that are typed blind', () => {
    const [stop] = exampleFlight.stops;
    const newer = { ...exampleFlight, version: 4, departs: '08:00', stops: [{ ...stop!, drums: ['0434'] }] };
    expect(differences(exampleFlight, newer).map(({ of, opened, newest }) => [of, opened, newest])).toEqual([
      ['Drums', '3', '1'],
      ['Off the load', '', '0435 0437'],
      ['Off at', '07:10', '08:00'],
    ]);
  });

  it('and where a drum stands: one that changed its position is named with both', () => {
    const { request } = exampleFlight;
    const drums = request!.load.drums.map((drum) =>
      drum.number === '0437' ? { ...drum, position: 'R2R' } : drum,
    );
    const sheet = makeLoadSheet({ ...request!, load: { ...request!.load, drums } });
    const rows = differences(exampleFlight, { ...exampleFlight, version: 4, sheet });
    expect(rows[0]).toEqual({ of: '0437 in', opened: 'R2L', newest: 'R2R' });
    expect(rows.map(({ of }) => of)).toContain('Check code');
  });

  it('the surface and the limit of each landing, the route and the pilot', () => {
    const request = exampleFlight.request!;
    const [out, home] = request.load.request.legs;
    const soft = { ...out!, to: { ...out!.to, surface: 'soft' as const } };
    const load = { ...request.load, request: { ...request.load.request, legs: [soft, home!] } };
    const sheet = makeLoadSheet({ ...request, load, flight: { ...request.flight, pilot: 'FW2' } });
    const rows = differences(exampleFlight, { ...exampleFlight, version: 4, sheet });
    const told = rows.map(({ of }) => of);
    expect(told).toEqual(expect.arrayContaining(['Pilot', 'XGAN is', 'Limit XGAN']));
    expect(rows.find(({ of }) => of === 'XGAN is')).toMatchObject({ opened: 'dry', newest: 'soft' });
  });
});
