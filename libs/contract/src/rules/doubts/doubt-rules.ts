import type { Rule } from '../rule.js';
import { crewDoubts } from './crew-doubts.js';
import { distanceDoubts } from './distance-doubts.js';
import { flightDoubts } from './flight-doubts.js';
import { siteDoubts } from './site-doubts.js';
import { unitDoubts } from './unit-doubts.js';
import { zoneDoubts } from './zone-doubts.js';

/** What looks wrong but may be right. */
export const doubtRules: readonly Rule[] = [
  ...zoneDoubts,
  ...distanceDoubts,
  ...unitDoubts,
  ...crewDoubts,
  ...siteDoubts,
  ...flightDoubts,
];
