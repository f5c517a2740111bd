import type { DrumCondition } from '@drumline/stock';
import { drumsDone } from '../drums-here/drum-reports.js';
import { exampleFlight, exampleReporter } from './example-flight.js';

/** At XGAN two drums of the example flight are left, the second in that condition, and one is brought home with its seal broken. */
export const exampleDone = (second: DrumCondition = 'sound') =>
  drumsDone(exampleReporter, exampleFlight, {
    done: [
      { drum: '0434', kind: 'left at', condition: 'sound' },
      { drum: '0435', kind: 'left at', condition: second },
      { drum: '0437', kind: 'brought home', condition: 'seal broken' },
    ],
    place: 'XGAN',
    leg: 1,
  });
