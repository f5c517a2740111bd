import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('the figures of a type fit together', () => {
  it.each<SpoiltCase>([
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
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
