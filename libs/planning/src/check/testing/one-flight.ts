import type { Scenario, StandingFlight } from '../../scenario.js';
import { tinyPlace, tinyTerritory } from '../../tiny-territory.js';
import { checkFlights } from '../check-flights.js';

export const day1 = '2031-03-03';
export const day2 = '2031-03-04';

export const flight = (changes: Partial<StandingFlight> = {}): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: day1,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
  pilot: 'P1',
  ...changes,
});

export const found = (changes: Partial<Scenario>, ...flights: readonly StandingFlight[]): readonly string[] =>
  checkFlights(tinyTerritory(changes), flights).map(({ where, what, mend }) => `${where}: ${what} ${mend}`);

export const tiny = tinyTerritory();
export const [tinyType] = tiny.aircraftTypes;
export const [pilot] = tiny.pilots;
export const withType = (changes: Partial<typeof tinyType>) => ({
  aircraftTypes: [{ ...tinyType!, ...changes }],
});
export const withPilot = (changes: Partial<typeof pilot>) => ({ pilots: [{ ...pilot!, ...changes }] });
export const withStrip = (changes: Parameters<typeof tinyPlace>[2]) => ({
  places: [tinyPlace('HOM', 60), tinyPlace('NOR', 60.83, changes), tinyPlace('SOU', 58.67)],
});
export const soft = {
  surfaceReports: [{ place: 'NOR', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' }],
};
