import { describe, expect, it } from 'vitest';
import { afterSpoiling } from '../tiny-document.js';

// biome-ignore lint/suspicious/noExplicitAny: a test breaks the document on purpose
type Spoil = (document: any) => void;
type Case = readonly [name: string, spoil: Spoil, fault: string];

/** Each case spoils one thing in a sound document, and that is the one fault said. */
const eachSaysOneFault = (cases: readonly Case[]) =>
  it.each(cases)('%s', (_name, spoil, fault) => {
    expect(afterSpoiling(spoil).faults).toEqual([fault]);
  });

describe('names must stand in their list', () => {
  eachSaysOneFault([
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
  ]);
});

describe('everything stands once', () => {
  eachSaysOneFault([
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
  ]);
});

describe('places are what they are called', () => {
  eachSaysOneFault([
    [
      'a pad with a runway',
      (d) => {
        d.places[2].runway = d.places[1].runway;
      },
      'places[2].runway: XPAD is a pad and has a runway. Write null, or make it a strip.',
    ],
    [
      'a strip without a runway',
      (d) => {
        d.places[1].runway = null;
      },
      'places[1].runway: XNOR is a strip without a runway. Add the runway, or make it a pad.',
    ],
    [
      'a strip without a class',
      (d) => {
        d.places[1].stripClass = null;
      },
      'places[1].stripClass: XNOR is a strip without a strip class. Give 1, 2, 3 or 4.',
    ],
    [
      'a strip where no type has limits',
      (d) => {
        d.stripLimits.pop();
      },
      'places[1]: no type has strip limits at XNOR. Add a line to stripLimits, or make it a pad.',
    ],
    [
      'strip limits at a pad',
      (d) => {
        d.stripLimits.push({ ...d.stripLimits[1], place: 'XPAD' });
      },
      'stripLimits[2].place: XPAD is a pad; aeroplanes do not land there. Remove the line, or make it a strip.',
    ],
    [
      'bulk fuel at a strip',
      (d) => {
        d.bases.push({ ...d.bases[0], place: 'XNOR' });
      },
      'bases[1].place: XNOR is a strip, not a base. Correct the code, or its kind in places.',
    ],
    [
      'a notice that closes nothing',
      (d) => {
        d.notices[0].places = [];
      },
      'notices[0]: notice N1 names no place and no circle. Add what it closes.',
    ],
    [
      'a distance from a place to itself',
      (d) => {
        d.distances = [{ between: ['XNOR', 'XNOR'], distanceNm: 0 }];
      },
      'distances[0].between: XNOR is at no distance from itself. Correct one of the two.',
    ],
    [
      'a wind on a leg that goes nowhere',
      (d) => {
        d.winds[0].to = 'XHOM';
      },
      'winds[0].to: the leg goes from XHOM to XHOM. Correct one of the two.',
    ],
  ]);
});

describe('days and times come in an order that can be', () => {
  eachSaysOneFault([
    [
      'retest before filling',
      (d) => {
        d.batches[0].retestDue = '2030-08-01';
      },
      'batches[0].retestDue: 2030-08-01 is before 2030-09-01, the day of filling. Correct one of the two.',
    ],
    [
      'a drum opened before it was filled',
      (d) => {
        d.drums[2].openedOn = '2030-07-01';
      },
      'drums[2].openedOn: 2030-07-01 is before 2030-09-01, the day its batch was filled. Correct one of the two.',
    ],
    [
      'an absence that ends before it starts',
      (d) => {
        d.aircraft[0].absences[0].until = '2031-03-05';
      },
      'aircraft[0].absences[0].until: 2031-03-05 is before 2031-03-06, the first day of the absence. Correct one of the two.',
    ],
    [
      'a notice that ends before it starts',
      (d) => {
        d.notices[0].until = '2031-03-06T05:00Z';
      },
      'notices[0].until: 2031-03-06T05:00Z is before 2031-03-06T06:00Z, the start of the notice. Correct one of the two.',
    ],
    [
      'a report that holds until before it was made',
      (d) => {
        d.surfaceReports[0].untilDate = '2031-03-01';
      },
      'surfaceReports[0].untilDate: 2031-03-01 is before 2031-03-02, the day of the report. Correct one of the two.',
    ],
    [
      'a last landing before the first departure',
      (d) => {
        d.policy.flyingDay.lastLanding = '06:00';
      },
      'policy.flyingDay.lastLanding: 06:00 is before 07:00, the first departure. Correct one of the two.',
    ],
    [
      'a task after the last day',
      (d) => {
        d.helicopterTasks[0].date = '2031-03-08';
      },
      'helicopterTasks[0].date: 2031-03-08 is outside the days looked ahead, 2031-03-03 to 2031-03-07. Correct the day, or take the line out.',
    ],
    [
      'a booked flight before the first day',
      (d) => {
        d.bookedFlights[0].date = '2031-03-02';
      },
      'bookedFlights[0].date: 2031-03-02 is outside the days looked ahead, 2031-03-03 to 2031-03-07. Correct the day, or take the line out.',
    ],
    [
      'more days offered than looked ahead',
      (d) => {
        d.offeredDays = 6;
      },
      'offeredDays: 6 days are offered of 5 looked ahead. Give at most 5.',
    ],
    [
      'a picture later than the plan',
      (d) => {
        d.asOf = '2031-04-01T05:00Z';
      },
      'asOf: 2031-04-01T05:00Z is after the last day looked ahead, 2031-03-07. Correct asOf or firstDay.',
    ],
    [
      'a time zone that is not on the list',
      (d) => {
        d.timeZone = 'Etc/GTM';
      },
      'timeZone: Etc/GTM is not a time zone of the IANA list. Write one like Etc/GMT or Europe/Oslo.',
    ],
  ]);
});

describe('the figures of a type fit together', () => {
  eachSaysOneFault([
    [
      'a strip limit above the type',
      (d) => {
        d.stripLimits[1].landingLb = 66_500;
      },
      "stripLimits[1].landingLb: 66,500 lb is above type A's maximum landing weight, 7,000 lb. Correct one of the two.",
    ],
    [
      'a soft penalty above its limit',
      (d) => {
        d.stripLimits[1].whenSoft.takeoffLessLb = 7000;
      },
      'stripLimits[1].whenSoft.takeoffLessLb: 7,000 lb is above the take-off limit it is taken off, 6,900 lb. Correct one of the two.',
    ],
    [
      'an operating weight above zero fuel',
      (d) => {
        d.aircraftTypes[0].configurations[0].operatingWeightLb = 6700;
      },
      'aircraftTypes[0].configurations[0].operatingWeightLb: 6,700 lb is above the maximum zero-fuel weight, 6,650 lb. Correct one of the two.',
    ],
    [
      'a landing weight above take-off',
      (d) => {
        d.aircraftTypes[0].maxLandingLb = 7200;
      },
      'aircraftTypes[0].maxLandingLb: 7,200 lb is above the maximum take-off weight, 7,150 lb. Correct one of the two.',
    ],
    [
      'an envelope that does not rise',
      (d) => {
        d.aircraftTypes[0].envelope[1].weightLb = 4000;
      },
      'aircraftTypes[0].envelope[1].weightLb: 4,000 lb is not above the point before it, 4,000 lb. Put the points in order of rising weight.',
    ],
    [
      'a forward limit behind the aft one',
      (d) => {
        d.aircraftTypes[0].envelope[0].forwardIn = 144;
      },
      'aircraftTypes[0].envelope[0].forwardIn: the forward limit, 144 in, is behind the aft limit, 143.8 in. Swap or correct them.',
    ],
    [
      'a drum configuration that is not there',
      (d) => {
        d.aircraftTypes[0].drumConfiguration = 'drum';
      },
      'aircraftTypes[0].drumConfiguration: type A has no configuration drum. Use one of drums.',
    ],
    [
      'a drum configuration without a position',
      (d) => {
        d.aircraftTypes[0].configurations[0].drumPositions = [];
      },
      'aircraftTypes[0].configurations[0].drumPositions: the drum configuration has no position for a drum. Add the positions with their arms and floor limits.',
    ],
  ]);
});

describe('drums and caches hold what they can', () => {
  eachSaysOneFault([
    [
      'a drum lighter than its tare',
      (d) => {
        d.drums[0].grossKg = 18;
      },
      'drums[0].grossKg: drum 001 weighs 18 kg, less than its tare of 20 kg. Weigh it again, or swap the two figures.',
    ],
    [
      'a drum filled over the brim',
      (d) => {
        d.drums[0].litres = 220;
        d.drums[0].grossKg = 196;
      },
      'drums[0].litres: drum 001 holds 220 L, more than to the brim, 216 L. Correct the litres, or policy.drum.brimLitres.',
    ],
    [
      'a sealed drum above a fill',
      (d) => {
        d.drums[0].litres = 208;
      },
      'drums[0].litres: drum 001 is filled with 208 L, more than a fill of 200 L. Correct the litres, or policy.drum.fillLitres.',
    ],
    [
      'a part-used drum without its day of opening',
      (d) => {
        delete d.drums[2].openedOn;
      },
      'drums[2].openedOn: drum 003 is part used without the day it was opened. Add the day.',
    ],
    [
      'a sealed drum with a day of opening',
      (d) => {
        d.drums[0].openedOn = '2031-03-01';
      },
      'drums[0].openedOn: drum 001 is filled sealed and has a day of opening. Remove it, or make the drum part used.',
    ],
    [
      'an empty drum with fuel in it',
      (d) => {
        d.drums[0].content = 'clean empty';
      },
      'drums[0].litres: drum 001 is clean empty with 200 L in it. Write 0, or correct its content.',
    ],
    [
      'a filled drum with nothing in it',
      (d) => {
        d.drums[0].litres = 0;
        d.drums[0].grossKg = 20;
      },
      'drums[0].litres: drum 001 is filled sealed with 0 L in it. Give its litres, or call it empty.',
    ],
    [
      'critical above the minimum',
      (d) => {
        d.caches[0].criticalLitres = 300;
      },
      'caches[0].criticalLitres: 300 L is above the minimum, 200 L. Swap or correct them.',
    ],
    [
      'a reserve above the minimum',
      (d) => {
        d.caches[0].medevacReserveLitres = 400;
      },
      'caches[0].medevacReserveLitres: 400 L is above the minimum, 200 L, of which it is the bottom slice. Raise the minimum, or lower the reserve.',
    ],
    [
      'a minimum that does not fit',
      (d) => {
        d.caches[0].minimumLitres = 2400;
      },
      'caches[0].minimumLitres: 2,400 L does not fit on a site for 10 drums. Lower it, or correct the capacity.',
    ],
    [
      'a fill over the brim',
      (d) => {
        d.policy.drum.brimLitres = 199;
        d.drums = [];
      },
      'policy.drum.fillLitres: a fill of 200 L is more than to the brim, 199 L. Correct one of the two.',
    ],
  ]);
});

describe('flights that stand can be flown', () => {
  eachSaysOneFault([
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
      'on a day its tail is away',
      (d) => {
        d.flights[0].date = '2031-03-06';
      },
      'flights[0].aircraft: A1 is away from 2031-03-06 to 2031-03-06 (inspection). Move the flight, name another tail, or shorten the absence.',
    ],
    [
      'on a day without flying',
      (d) => {
        d.flights[0].date = '2031-03-07';
      },
      'flights[0].date: 2031-03-07 is a day without flying. Move the flight, or take the day out of noFlyingDays.',
    ],
    [
      'a stop without a drum',
      (d) => {
        d.flights[0].stops[0].drums = 0;
      },
      'flights[0].stops[0].drums: the flight leaves no drum at XNOR. Give the drums, or take the stop out.',
    ],
    [
      'to a strip its type is not approved for',
      (d) => {
        d.aircraftTypes.push({ ...d.aircraftTypes[0], id: 'B' });
        d.stripLimits[1].type = 'B';
        d.bookedFlights = [];
      },
      'flights[0].stops[0].place: type A is not approved at XNOR. Name a tail of an approved type, or add its strip limits.',
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
  ]);
});
