import { aircraftTypeRules } from './aircraft-types.js';
import { dateRules } from './dates.js';
import { duplicateRules } from './duplicates.js';
import { flightRules } from './flights.js';
import { placeRules } from './places.js';
import { referenceRules } from './references.js';
import type { Rule } from './rule.js';
import { stockRules } from './stock.js';

/** Every check across the document; each says all the faults that it finds. */
export const scenarioRules: readonly Rule[] = [
  ...duplicateRules,
  ...referenceRules,
  ...placeRules,
  ...dateRules,
  ...aircraftTypeRules,
  ...stockRules,
  ...flightRules,
];
