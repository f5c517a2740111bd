import { z } from 'zod';
import { scenarioSchema } from '../scenario/scenario-schema.js';
import { settingsSchema } from '../scenario/settings-schema.js';

const { aircraft, pilots, stripLimits, notices, bookedFlights } = scenarioSchema.shape;
const id = z.string().min(1).max(100).meta({ description: 'Name of the thing, as in its own address' });

/** One change of the territory, asked about before it is made: which flights could not be flown with it. */
export const flightsChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('aircraft'), id, data: aircraft.element }),
  z.strictObject({ kind: z.literal('pilots'), id, data: pilots.element }),
  z.strictObject({ kind: z.literal('strip-limits'), id, data: stripLimits.element.nullable() }),
  z.strictObject({ kind: z.literal('notices'), id, data: notices.element.nullable() }),
  z.strictObject({ kind: z.literal('booked-flights'), id, data: bookedFlights.element }),
  z.strictObject({ kind: z.literal('settings'), id, data: settingsSchema }),
]);

/** `data`: null takes the limit or the notice out. */
export type FlightsChange = z.output<typeof flightsChangeSchema>;
