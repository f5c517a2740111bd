import { z } from 'zod';
import { instant } from '../field.js';
import { flightState } from '../words.js';
import { stopAnswer } from './flight.js';

export const awayFlightAnswer = z
  .strictObject({
    flight: z.string(),
    state: flightState,
    aircraft: z.string(),
    pilot: z.string().nullable(),
    fromPlace: z.string(),
    toPlace: z.string(),
    stops: z.array(stopAnswer),
    offAt: instant
      .nullable()
      .describe('As reported; null: nobody has said, and it is taken for off as planned.'),
    landedAt: instant.nullable(),
    expectedBackAt: instant,
    overdueAt: instant
      .nullable()
      .describe('Null: the operator has not said after how long a flight is overdue.'),
    word: z.enum(['in the circuit', 'down and well', 'overdue']),
  })
  .meta({ id: 'AwayFlight' });
