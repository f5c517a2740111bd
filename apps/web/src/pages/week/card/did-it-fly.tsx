import { Link } from 'wouter';
import type { WeekFlight } from '../week-read.js';

/** Of a flight whose day is over: why it is not approved or given any more, and what can still be said of it. */
export const DidItFly = ({
  flight,
  why,
}: {
  readonly flight: WeekFlight;
  readonly why: string | undefined;
}) =>
  flight.state === 'offered' ? (
    <p>
      <b>Its day is over.</b> {why} It was never approved. Decline it, or amend its day.
    </p>
  ) : (
    <p>
      <b>Did it fly?</b> {why} Nothing was heard of it.{' '}
      <Link href={`/morning/paper?day=${flight.date}`}>Enter what its crew says or wrote</Link>: off, home,
      where its drums are. Or call it off: its drums go back to the pick list.
    </p>
  );
