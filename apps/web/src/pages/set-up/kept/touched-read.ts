import { z } from 'zod';
import { post } from '../../../api/index.js';

const base = {
  flight: z.string(),
  date: z.string(),
  aircraft: z.string(),
  route: z.array(z.string()),
  breaks: z.string().nullable(),
};
/** POST /api/touched-flights. */
const answerSchema = z.object({
  flights: z.array(z.object({ ...base, state: z.string() })),
  booked: z.array(z.object({ ...base, purpose: z.string() })),
});

export interface TouchedFlight {
  readonly flight: string;
  readonly state: string;
  readonly date: string;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly breaks: string | null;
}

/** What may keep a flight on the ground by itself. */
const touchesFlights: readonly string[] = [
  'aircraft',
  'pilots',
  'strip-limits',
  'notices',
  'booked-flights',
  'settings',
];

export const mayTouchFlights = (kind: string): boolean => touchesFlights.includes(kind);

export const askTouched = async (change: {
  readonly kind: string;
  readonly id: string;
  readonly data: unknown;
}): Promise<readonly TouchedFlight[]> => {
  const { body } = await post('/api/touched-flights', change, { schema: answerSchema });
  const booked = body.booked.map((flight) => ({ ...flight, state: `booked, ${flight.purpose}` }));
  return [...body.flights, ...booked].sort((one, other) => one.date.localeCompare(other.date));
};

/** " It touches F004, X1." Empty: none. */
export const touchedWords = (flights: readonly Pick<TouchedFlight, 'flight'>[]): string =>
  flights.length === 0 ? '' : ` It touches ${flights.map(({ flight }) => flight).join(', ')}.`;
