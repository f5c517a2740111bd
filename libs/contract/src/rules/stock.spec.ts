import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('drums and caches hold what they can', () => {
  it.each<SpoiltCase>([
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
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
