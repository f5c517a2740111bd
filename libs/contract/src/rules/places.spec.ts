import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('places are what they are called', () => {
  it.each<SpoiltCase>([
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
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
