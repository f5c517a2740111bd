import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('names must stand in their list', () => {
  it.each<SpoiltCase>([
    [
      'a drum of a batch that is not there',
      (d) => {
        d.drums[0].batch = 'J13';
      },
      'drums[0].batch: there is no batch J13. Did you mean J31?',
    ],
    [
      'a report from a place that is not there',
      (d) => {
        d.surfaceReports[0].place = 'XNRO';
      },
      'surfaceReports[0].place: there is no place XNRO. Did you mean XNOR?',
    ],
    [
      'a strip limit of an unknown type',
      (d) => {
        d.stripLimits.push({ ...d.stripLimits[1], type: 'Zulu' });
      },
      'stripLimits[2].type: there is no type Zulu. Correct it, or add Zulu to aircraftTypes.',
    ],
    [
      'a distance to nowhere',
      (d) => {
        d.distances[0].between[1] = 'XQQQ';
      },
      'distances[0].between[1]: there is no place XQQQ. Correct it, or add XQQQ to places.',
    ],
    [
      'a task of an unknown helicopter',
      (d) => {
        d.helicopterTasks[0].helicopter = 'H2';
      },
      'helicopterTasks[0].helicopter: there is no helicopter H2. Did you mean H1?',
    ],
    [
      'a task of an unknown programme',
      (d) => {
        d.helicopterTasks[0].programme = 'P7';
      },
      'helicopterTasks[0].programme: there is no programme P7. Did you mean P1?',
    ],
    [
      'a dip table that falls',
      (d) => {
        d.policy.dipTables = [
          {
            ...{ name: 'ours', kind: 'own table', stickMarksCm: 1, reference: 'measured here' },
            rows: [
              { dipCm: 20, litres: 50 },
              { dipCm: 30, litres: 45 },
            ],
          },
        ];
      },
      'policy.dipTables[0].rows[1]: 30 cm is 45 L, and the row before is not below it in both. Write the rows from the bottom of the drum up.',
    ],
    [
      'a draw where no drums are kept',
      (d) => {
        d.plannedUplifts[0].place = 'XHOM';
      },
      'plannedUplifts[0].place: there is no cache XHOM. Correct it, or add XHOM to caches.',
    ],
    [
      'a flight of an unknown pilot',
      (d) => {
        d.flights[0].pilot = 'P2';
      },
      'flights[0].pilot: there is no pilot P2. Did you mean P1?',
    ],
    [
      'a booked flight of an unknown tail',
      (d) => {
        d.bookedFlights[0].aircraft = 'A2';
      },
      'bookedFlights[0].aircraft: there is no tail A2. Did you mean A1?',
    ],
    [
      'a pilot of an unknown type',
      (d) => {
        d.pilots[0].types.push('Bravo');
      },
      'pilots[0].types[1]: there is no type Bravo. Correct it, or add Bravo to aircraftTypes.',
    ],
    [
      'a tail at home where there is no fuel',
      (d) => {
        d.aircraft[0].home = 'XPAD';
        d.flights = [];
        d.bookedFlights = [];
      },
      'aircraft[0].home: there is no base XPAD. Correct it, or add XPAD to bases.',
    ],
    [
      'a notice for a place that is not there',
      (d) => {
        d.notices[0].places.push('XPAT');
      },
      'notices[0].places[1]: there is no place XPAT. Did you mean XPAD?',
    ],
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
