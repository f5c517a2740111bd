import { type FlightPlan, type PlannedFlight, standingState } from '@drumline/planning';
import { addDays, type IsoDate } from '@drumline/units';
import type { Flight } from '../flights/store/flight.table.js';

type Planned = Pick<
  PlannedFlight,
  'id' | 'kind' | 'state' | 'date' | 'aircraft' | 'from' | 'to' | 'stops' | 'drums'
>;

/** An accepted plan, and the numbers that its flights were given. */
export interface Accepted extends Pick<FlightPlan, 'firstDay' | 'offeredDays'> {
  readonly flights: readonly Planned[];
  readonly numbers: readonly { readonly planned: string; readonly flight: string }[];
}

export const lastOfferedDay = ({ firstDay, offeredDays }: Pick<FlightPlan, 'firstDay' | 'offeredDays'>) =>
  addDays(firstDay, offeredDays - 1);

/** Found by the planner for a day later than those whose flights it offers: nobody is asked about it. */
export const isIdea = ({ kind, state, drums, date }: Planned, lastOffered: IsoDate): boolean =>
  kind === 'positioning' && state === 'offered' && drums > 0 && date > lastOffered;

/** Whether the flights that stand, from the first day of the plan on, are those of the plan: none more, none fewer. */
export const standAsAccepted = (accepted: Accepted, standing: readonly Flight[]): boolean => {
  const numbers = new Map(accepted.numbers.map(({ planned, flight }) => [planned, flight]));
  const last = lastOfferedDay(accepted);
  const planned = accepted.flights
    .filter((flight) => flight.drums > 0 && !isIdea(flight, last))
    .map(({ id, from, to, ...flight }) =>
      wordsOf({ ...flight, id: numbers.get(id) ?? id, fromPlace: from, toPlace: to }),
    );
  const now = standing.filter(({ state }) => standingState(state) !== null);
  const flown = now.map((flight) => (wentElsewhere(flight) ? 'elsewhere' : wordsOf(flight)));
  return planned.toSorted().join('\n') === flown.toSorted().join('\n');
};

/** Time and pilot may change: the costs do not. */
const wordsOf = ({
  id,
  date,
  aircraft,
  fromPlace,
  toPlace,
  stops,
}: Pick<Flight, 'id' | 'date' | 'aircraft' | 'fromPlace' | 'toPlace' | 'stops'>): string => {
  const drops = stops.filter(({ drums }) => drums > 0).map(({ place, drums }) => `${place} ${drums}`);
  return [id, date, aircraft, fromPlace, ...drops, toPlace].join(' ');
};

const wentElsewhere = ({ state }: Flight): boolean => state === 'turned back' || state === 'ended elsewhere';
