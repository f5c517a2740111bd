import './list.css';
import { Link } from 'wouter';
import { z } from 'zod';
import { type Calendar, mayOfOwnOnly, useMe, useSettings } from '../../../api/index.js';
import { EmptyLine, Lines, NotSetUp, StateWord } from '../../../ui/index.js';

export const flightSchema = z.object({
  id: z.string(),
  state: z.string(),
  version: z.number(),
  needsDecision: z.string().nullable(),
  date: z.string(),
  departs: z.string(),
  aircraft: z.string(),
  pilot: z.string().nullable(),
  fromPlace: z.string(),
  toPlace: z.string(),
  stops: z.array(z.object({ place: z.string(), drums: z.number() })),
});

export type FlightRow = z.output<typeof flightSchema>;

export const bookedSchema = z.object({
  id: z.string(),
  version: z.number(),
  data: z.looseObject({
    id: z.string(),
    date: z.string(),
    aircraft: z.string(),
    purpose: z.string(),
    departs: z.string().optional(),
    heldHours: z.number(),
    approval: z.string().optional(),
    legs: z.array(
      z.looseObject({
        from: z.string(),
        to: z.string(),
        passengers: z.number(),
        passengersKg: z.number(),
        freightKg: z.number(),
      }),
    ),
  }),
});

export type BookedRow = z.output<typeof bookedSchema>;

const gone: readonly string[] = ['idea', 'declined', 'called off'];

/** Flights that carry something, from today on, in the order in which they take off. */
export const withLoad = (flights: readonly FlightRow[]): readonly FlightRow[] =>
  flights
    .filter(({ state }) => !gone.includes(state))
    .toSorted((one, other) => one.date.localeCompare(other.date) || one.departs.localeCompare(other.departs));

interface FlightListProps {
  readonly flights: readonly FlightRow[];
  readonly booked: readonly BookedRow[];
  readonly calendar: Calendar;
}

/** No flight is named in the address: which are there. */
export const FlightList = ({ flights, booked, calendar }: FlightListProps) => {
  const shown = withLoad(flights);
  const carrying = new Set(shown.map(({ id }) => id));
  const ahead = booked.filter(({ id, data }) => !carrying.has(id) && data.date >= calendar.today);
  return (
    <div className="work load-list">
      <OwnOnly />
      {shown.length === 0 ? (
        <NoFlight />
      ) : (
        <Lines
          caption="Flights with drums"
          rows={shown}
          keyOf={({ id }) => id}
          numbered
          columns={[
            { head: 'Flight', heads: true, cell: ({ id }) => <FlightLink id={id} /> },
            { head: 'Day', cell: ({ date }) => calendar.day(date) },
            { head: 'Off', cell: ({ departs }) => departs },
            { head: 'Aircraft', cell: ({ aircraft }) => aircraft },
            { head: 'Route', cell: routeOf },
            {
              head: 'Drums',
              figures: true,
              cell: ({ stops }) => stops.reduce((sum, { drums }) => sum + drums, 0),
            },
            { head: 'Commander', wide: true, cell: ({ pilot }) => pilot ?? 'not named' },
            {
              head: 'State',
              cell: ({ state, needsDecision }) => (
                <StateWord state={state} needsDecision={needsDecision !== null} />
              ),
            },
          ]}
        />
      )}
      {ahead.length > 0 && (
        <Lines
          caption="Flights that fly anyway, no drum on them yet"
          rows={ahead}
          keyOf={({ id }) => id}
          columns={[
            { head: 'Flight', heads: true, cell: ({ id }) => <FlightLink id={id} /> },
            { head: 'Day', cell: ({ data }) => calendar.day(data.date) },
            { head: 'Aircraft', cell: ({ data }) => data.aircraft },
            { head: 'Route', cell: ({ data }) => bookedRoute(data) },
            { head: 'For', cell: ({ data }) => data.purpose },
          ]}
        />
      )}
    </div>
  );
};

/** A crew's place for its flights is the phone. */
const OwnOnly = () =>
  mayOfOwnOnly(useMe(), 'approve flight') && (
    <p className="empty">
      These are your own flights. On the <a href="/phone/">phone page</a> they stand with their go-back lines,
      and what you report there is kept with no signal too.
    </p>
  );

const NoFlight = () => {
  const isOwn = mayOfOwnOnly(useMe(), 'approve flight');
  return useSettings().problem?.kind === 'not-found' ? (
    <NotSetUp
      what="No territory is set up yet"
      why="Flights come from a plan, and a plan needs places, caches, aircraft and a programme."
    />
  ) : (
    <EmptyLine>
      {isOwn ? (
        'No flight of yours stands from today on.'
      ) : (
        <>
          No flight stands from today on. A plan that is accepted on <Link href="/week">Week</Link> offers
          some.
        </>
      )}
    </EmptyLine>
  );
};

const FlightLink = ({ id }: { readonly id: string }) => (
  <Link href={`/load/${encodeURIComponent(id)}`}>{id}</Link>
);

const routeOf = ({ fromPlace, stops, toPlace }: FlightRow): string =>
  [fromPlace, ...stops.map(({ place }) => place), toPlace].join('-');

export const bookedRoute = ({ legs }: BookedRow['data']): string =>
  [legs[0]?.from ?? '', ...legs.map(({ to }) => to)].join('-');
