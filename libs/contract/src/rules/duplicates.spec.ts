import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('everything stands once', () => {
  it.each<SpoiltCase>([
    [
      'two drums with one number',
      (d) => {
        d.drums[1].number = '001';
      },
      'drums[1]: drum 001 stands already at drums[0]. Keep one of them.',
    ],
    [
      'a place twice',
      (d) => {
        d.places.push(d.places[1]);
      },
      'places[3]: place XNOR stands already at places[1]. Keep one of them.',
    ],
    [
      'a tail twice',
      (d) => {
        d.aircraft.push(d.aircraft[0]);
      },
      'aircraft[1]: tail A1 stands already at aircraft[0]. Keep one of them.',
    ],
    [
      'a flight id twice',
      (d) => {
        d.flights.push(d.flights[0]);
      },
      'flights[1]: flight F1 stands already at flights[0]. Keep one of them.',
    ],
    [
      'a flight with the id of a booked flight',
      (d) => {
        d.flights[0].id = 'X1';
      },
      'flights[0].id: a booked flight has the id X1 too. Give each flight its own id.',
    ],
    [
      'a strip limit twice',
      (d) => {
        d.stripLimits.push(d.stripLimits[1]);
      },
      'stripLimits[2]: the strip limit of type A at XNOR stands already at stripLimits[1]. Keep one of them.',
    ],
    [
      'a distance given both ways',
      (d) => {
        d.distances.push({ between: ['XNOR', 'XHOM'], distanceNm: 61 });
      },
      'distances[1]: the distance XHOM - XNOR stands already at distances[0]. Keep one of them.',
    ],
    [
      'two drum positions with one id',
      (d) => {
        d.aircraftTypes[0].configurations[0].drumPositions[1].id = 'R1';
      },
      'aircraftTypes[0].configurations[0].drumPositions[1].id: place R1 stands twice. Give each its own id.',
    ],
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
