import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../../tiny-document.js';

describe('what looks wrong is said and does not keep the document out', () => {
  it.each<SpoiltCase>([
    [
      'a time zone ten hours west of the places',
      (d) => {
        d.timeZone = 'Etc/GMT+10';
      },
      'timeZone: by Etc/GMT+10 the sun is highest at XHOM about 03:00, not about noon: flights would be planned in the dark. Look at the time zone, and at the longitudes of the places, west of Greenwich with a minus.',
    ],
    [
      'kilometres for nautical miles',
      (d) => {
        d.distances[0].distanceNm = 111;
      },
      'distances[0].distanceNm: 111 NM from XHOM to XNOR, but their positions are 60.0 NM apart. Look at the distance, its unit and the two positions.',
    ],
    [
      'a sling longer than the way',
      (d) => {
        d.slings[0].distanceNm = 22;
      },
      'slings[0].distanceNm: 22 NM from XNOR to XPAD, but their positions are 12.0 NM apart. Look at the distance, its unit and the two positions.',
    ],
    [
      'a drum weighed in lb',
      (d) => {
        d.drums[0].grossKg = 397;
      },
      'drums[0].grossKg: drum 001 weighs 377 kg over its tare; 200 L weigh about 160 kg. Look for lb in place of kg, for water, or for wrong litres.',
    ],
    [
      'a planning drum in lb',
      (d) => {
        d.policy.drum.grossKg = 397;
      },
      'policy.drum.grossKg: 397 kg for a drum whose tare and fuel weigh 180 kg. Look for lb in place of kg.',
    ],
    [
      'a density in lb per gallon',
      (d) => {
        d.policy.bookDensityKgPerLitre = 6.7;
        d.policy.drum.grossKg = 1360;
        d.drums = [];
      },
      'policy.bookDensityKgPerLitre: 6.7 kg/L is no density of turbine fuel. Look at the decimal point, and for lb per US gallon or kg per cubic metre in place of kg per litre.',
    ],
    [
      'a batch a hundred times too heavy',
      (d) => {
        d.batches[0].densityAt15KgPerLitre = 80;
      },
      'batches[0].densityAt15KgPerLitre: 80 kg/L at 15 °C is no density of turbine fuel. Look at the decimal point, and for lb per US gallon or kg per cubic metre in place of kg per litre.',
    ],
    [
      'a strip limit in kg',
      (d) => {
        d.stripLimits[1].takeoffLb = 3130;
      },
      'stripLimits[1].takeoffLb: 3,130 lb at XNOR is less than type A weighs empty, 4,250 lb. Look for kg in place of lb (6,900 lb).',
    ],
    [
      'passengers in lb',
      (d) => {
        d.bookedFlights[0].legs[0].passengersKg = 198;
      },
      'bookedFlights[0].legs[0].passengersKg: 198 kg a passenger. Look for lb in place of kg.',
    ],
    [
      'a price in whole units',
      (d) => {
        d.bases[0].pricePerLitre = 1.5;
      },
      'bases[0].pricePerLitre: a price of 1.5 cent/L. Look for whole units in place of hundredths (150 cent/L).',
    ],
    [
      'a block hour in whole units',
      (d) => {
        d.aircraftTypes[0].costPerBlockHour = 980;
      },
      'aircraftTypes[0].costPerBlockHour: a block hour for 980 cent. Look for whole units in place of hundredths.',
    ],
    [
      'a draw in kg',
      (d) => {
        d.helicopterTasks[0].litres = 75;
      },
      'helicopterTasks[0].litres: 75 L in 1 h; H1 burns about 110 L. Look at the hours, and for kg or lb in place of litres.',
    ],
    [
      'a type that nobody flies',
      (d) => {
        d.aircraftTypes.push({ ...d.aircraftTypes[0], id: 'B' });
        d.aircraft.push({ ...d.aircraft[0], tail: 'B1', type: 'B' });
      },
      'aircraft[1].type: no pilot flies type B, so that B1 stays on the ground. Look at the types of the pilots.',
    ],
    [
      'a strip that nobody is cleared for',
      (d) => {
        d.pilots[0].stripClasses = [1];
      },
      'places[1].stripClass: no pilot is cleared for class 2, so that nobody lands at XNOR. Look at the classes of the pilots.',
    ],
    [
      'a drum where none is kept: it was landed where it had to be',
      (d) => {
        d.caches.pop();
        d.slings = [];
        d.drums[1].place = 'XPAD';
      },
      'drums[1].place: drum 002 is at XPAD, which keeps no drums. Add XPAD to caches.',
    ],
    [
      'more drums than the site holds',
      (d) => {
        d.caches[0].capacityDrums = 1;
        d.caches[0].minimumLitres = 200;
        d.caches[0].criticalLitres = 100;
        d.caches[0].medevacReserveLitres = 0;
      },
      'caches[0].capacityDrums: XNOR holds 300 L, 1.5 drums, on a site for 1: no drum is planned to it until there is room. Correct the capacity, or where the drums are.',
    ],
    [
      'a flight on a day its tail is away',
      (d) => {
        d.flights[0].date = '2031-03-06';
      },
      'flights[0].aircraft: A1 is away from 2031-03-06 to 2031-03-06 (inspection). Move the flight, name another tail, or shorten the absence.',
    ],
    [
      'a flight on a day without flying',
      (d) => {
        d.flights[0].date = '2031-03-07';
      },
      'flights[0].date: 2031-03-07 is a day without flying. Move the flight, or take the day out of noFlyingDays.',
    ],
    [
      'a flight to a strip its type is not approved for any more',
      (d) => {
        d.aircraftTypes.push({ ...d.aircraftTypes[0], id: 'B' });
        d.stripLimits[1].type = 'B';
        d.bookedFlights = [];
      },
      'flights[0].stops[0].place: type A is not approved at XNOR. Name a tail of an approved type, or add its strip limits.',
    ],
  ])('%s', (_name, spoil, doubt) => {
    expect(afterSpoiling(spoil)).toEqual({ faults: [], doubts: [doubt] });
  });

  it('an aircraft that breaks down is taken out whatever was booked on it or planned by hand', () => {
    const { faults, doubts } = afterSpoiling((d) => {
      d.handPlan = [{ ...d.flights[0], id: 'H1' }];
      d.aircraft[0].absences = [{ from: '2031-03-03', until: '2031-03-04', reason: 'starter generator' }];
    });
    expect(faults).toEqual([]);
    expect(doubts.map((doubt) => doubt.split(':')[0])).toEqual([
      'bookedFlights[0].aircraft',
      'flights[0].aircraft',
      'handPlan[0].aircraft',
    ]);
  });

  it('a distance within 20 % of the positions is taken as given: legs bend around weather and hills', () => {
    expect(
      afterSpoiling((d) => {
        d.distances[0].distanceNm = 71;
      }).doubts,
    ).toEqual([]);
  });
});
