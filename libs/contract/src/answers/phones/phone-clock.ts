import { z } from 'zod';
import { instant, isoDate } from '../field.js';

/** What every answer to a phone begins with. */
export const phoneClock = {
  at: instant.describe("By the territory's clock."),
  serverAt: instant.describe("By the server's own clock: a demo's territory has another day."),
  timeZone: z.string(),
  today: isoDate,
};

/** By this a phone knows an answer that it kept from before a change of the program. */
export const phoneFormat = <Format extends string>(format: Format) =>
  z.literal(format).describe('A phone that was away through a change of the program reads this first.');
