import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('flights that stand are whole', () => {
  it.each<SpoiltCase>([
    [
      'from another place than home',
      (d) => {
        d.bases.push({ ...d.bases[0], place: 'XTWO' });
        d.places.push({ ...d.places[0], code: 'XTWO' });
        d.stripLimits.push({ ...d.stripLimits[0], place: 'XTWO' });
        d.flights[0].from = 'XTWO';
      },
      'flights[0].from: the flight leaves XTWO, but A1 is at home in XHOM. Write XHOM, or name another tail.',
    ],
    [
      'a booked flight that does not come home',
      (d) => {
        d.bookedFlights[0].legs.pop();
      },
      'bookedFlights[0].legs[0].to: the flight ends at XNOR, but A1 is at home in XHOM. Write XHOM, or name another tail.',
    ],
    [
      'legs that do not follow each other',
      (d) => {
        d.bookedFlights[0].legs[1].from = 'XPAD';
      },
      'bookedFlights[0].legs[1].from: the leg before it ends at XNOR. Start at XNOR, or correct that leg.',
    ],
    [
      'a stop without a drum',
      (d) => {
        d.flights[0].stops[0].drums = 0;
      },
      'flights[0].stops[0].drums: the flight leaves no drum at XNOR. Give the drums, or take the stop out.',
    ],
    [
      'more passengers than seats',
      (d) => {
        d.bookedFlights[0].legs[0].passengers = 2;
        d.bookedFlights[0].legs[0].passengersKg = 180;
      },
      'bookedFlights[0].legs[0].passengers: 2 passengers; configuration drums has seats for 1. Correct the passengers, or choose another configuration.',
    ],
    [
      'passengers without weight',
      (d) => {
        d.bookedFlights[0].legs[0].passengersKg = 0;
      },
      'bookedFlights[0].legs[0].passengersKg: 1 passengers weigh 0 kg. Give both, or neither.',
    ],
    [
      'freight where there is no place for it',
      (d) => {
        d.bookedFlights[0].legs[0].freightKg = 50;
      },
      'bookedFlights[0].legs[0].freightKg: configuration drums has no place for freight. Add freight places to it, or choose another configuration.',
    ],
    [
      'a configuration that the type has not',
      (d) => {
        d.bookedFlights[0].configuration = 'seats';
      },
      'bookedFlights[0].configuration: type A has no configuration seats. Use one of drums.',
    ],
    [
      'a sling that goes nowhere',
      (d) => {
        d.slings[0].to = 'XNOR';
      },
      'slings[0].to: the sling goes from XNOR to XNOR. Correct one of the two.',
    ],
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
