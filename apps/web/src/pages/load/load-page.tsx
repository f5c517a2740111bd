import './load.css';
import { Link } from 'wouter';
import {
  type Calendar,
  type Read,
  useCalendar,
  useIsClockAwaited,
  useList,
  useMay,
  useRead,
} from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import { Button, bothOf, Field, Picture, PrintLink, StateWord, TitleBlock } from '../../ui/index.js';
import { BookedFlight } from './booked/booked-flight.js';
import { giveOff } from './cabin/commander.js';
import {
  type BookedRow,
  bookedSchema,
  FlightList,
  type FlightRow,
  flightSchema,
  withLoad,
} from './list/flight-list.js';
import { LoadFlight } from './load-flight.js';
import { answerSchema, type LoadedFlight } from './load-read.js';
import { type LoadActs, useLoadActs } from './use-load-acts.js';

export const LoadPage = ({ at: [id] }: PageProps) => {
  const calendar = useCalendar();
  const read = useFlights(calendar);
  if (id === undefined)
    return (
      <>
        <TitleBlock title="Load" sub={calendar.operatingDate} />
        <Picture read={read}>
          {([standing, anyway]) => <FlightList flights={standing} booked={anyway} calendar={calendar} />}
        </Picture>
      </>
    );
  return (
    <Picture read={read}>
      {([standing, anyway]) => {
        const one = anyway.find((each) => each.id === id);
        const carries = withLoad(standing).some((each) => each.id === id);
        return one === undefined || carries ? (
          <FlightById id={id} calendar={calendar} />
        ) : (
          <BookedFlight key={id} booked={one} calendar={calendar} />
        );
      }}
    </Picture>
  );
};

type Listed = readonly [readonly FlightRow[], readonly BookedRow[]];

/** A storekeeper loads flights that carry drums; those that fly anyway belong to the programme. */
const useFlights = ({ today }: Calendar): Read<Listed> => {
  const seesBooked = useMay()('programme', 'view');
  const path = useIsClockAwaited() ? null : `/api/flights?from=${today}`;
  const flights = useList(path, flightSchema);
  const booked = useList(seesBooked ? '/api/booked-flights' : null, bookedSchema);
  if (seesBooked) return bothOf(flights, booked);
  return { ...flights, value: flights.value && [flights.value, []] };
};

const FlightById = ({ id, calendar }: { readonly id: string; readonly calendar: Calendar }) => {
  const read = useRead(`/api/flights/${encodeURIComponent(id)}/sheet`, answerSchema);
  const flight = read.value;
  return (
    <>
      {flight === undefined && <TitleBlock title={`${id}, load`} acts={<AllFlights />} />}
      <Picture read={read}>{(value) => <WithActs flight={value} calendar={calendar} />}</Picture>
    </>
  );
};

const WithActs = ({ flight, calendar }: { readonly flight: LoadedFlight; readonly calendar: Calendar }) => {
  const acts = useLoadActs(flight);
  return (
    <>
      <LoadTitle flight={flight} acts={acts} calendar={calendar} />
      <LoadFlight flight={flight} acts={acts} calendar={calendar} />
    </>
  );
};

const AllFlights = () => (
  <Link href="/load" className="load-all">
    All flights
  </Link>
);

interface LoadTitleProps {
  readonly flight: LoadedFlight;
  readonly acts: LoadActs;
  readonly calendar: Calendar;
}

const LoadTitle = ({ flight, acts, calendar }: LoadTitleProps) => {
  const mayGive = useMay()('approve flight', 'decide');
  const { id, route, aircraft, type, date, departs, state, needsDecision, version, pilot, load } = flight;
  return (
    <TitleBlock
      title={`${id}, load`}
      sub={route.join('-')}
      acts={
        <>
          <AllFlights />
          {load !== null && (
            <PrintLink href={`/api/flights/${encodeURIComponent(id)}/sheet.pdf`}>Print load sheet</PrintLink>
          )}
          {mayGive && state !== 'given' && (
            <Button
              kind="main"
              press="g"
              busy={acts.give.isSending}
              offBecause={giveOff(flight)}
              onPress={() => void acts.give.run()}
            >
              {pilot === null ? 'Send to phone' : `Send to ${pilot}'s phone`}
            </Button>
          )}
        </>
      }
    >
      <Field label="Aircraft" note={`type ${type.id}`}>
        {aircraft}
      </Field>
      <Field label="Off">
        {calendar.day(date)}, {departs}
      </Field>
      <Field label="State">
        <StateWord state={state} frozen={isFrozen(state)} needsDecision={needsDecision !== null} />
      </Field>
      <Field label="Version" note={calendar.when(flight.changedAt)}>
        {load === null ? version : `${version}, code ${load.sheet.checkCode}`}
      </Field>
      <Field label="Commander">{pilot ?? 'not named'}</Field>
    </TitleBlock>
  );
};

const isFrozen = (state: string): boolean => state !== 'offered' && state !== 'idea';
