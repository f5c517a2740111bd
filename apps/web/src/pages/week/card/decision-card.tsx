import { Link } from 'wouter';
import { type Calendar, useRead } from '../../../api/index.js';
import { inWords, Picture, StateWord } from '../../../ui/index.js';
import { bookedTime, bookedWords, isFrozen } from '../board/box-words.js';
import { takenOffWords } from '../board/taken-off.js';
import type { Week, WeekBooked, WeekFlight } from '../week-read.js';
import { CardActs } from './card-acts.js';
import { cardSchema } from './card-read.js';
import { CardRows } from './card-rows.js';

interface DecisionCardProps {
  readonly flight: WeekFlight;
  readonly week: Week;
  readonly calendar: Calendar;
}

/** One flight, and all that it is decided by. Keyed by the flight: another one begins afresh. */
export const DecisionCard = ({ flight, week, calendar }: DecisionCardProps) => {
  const card = useRead(`/api/flights/${encodeURIComponent(flight.id)}/card`, cardSchema);
  const { id, route, aircraft, date, departs, state, needsDecision, reason } = {
    reason: card.value?.reason ?? null,
    ...flight,
  };
  return (
    <>
      <header className="card-head">
        <h2 id="week-card" tabIndex={-1}>
          {id} <span className="key">{route.join('-')}</span>
        </h2>
        <p className="state-line">
          <StateWord state={state} frozen={isFrozen(flight)} needsDecision={needsDecision !== null} />
          {flight.heldInPlace && <span>Held in place</span>}
          <span className="slate">
            {aircraft}, {calendar.day(date)}, off {departs}
          </span>
        </p>
        {needsDecision !== null && <p>{needsDecision}</p>}
        {needsDecision === null && reason !== null && <p className="slate">Why: {reason}</p>}
      </header>
      <Picture read={card}>
        {(value) => (
          <CardRows flight={flight} card={value} standing={week.plan?.id ?? null} calendar={calendar} />
        )}
      </Picture>
      <CardActs flight={flight} card={card.value} week={week} calendar={calendar} />
    </>
  );
};

/** A flight that flies anyway: nothing to decide, but what it could take. */
export const BookedCard = ({
  booked,
  takenOff,
  calendar,
}: {
  readonly booked: WeekBooked;
  readonly takenOff: WeekFlight | undefined;
  readonly calendar: Calendar;
}) => {
  const [, spare] = bookedWords(booked);
  return (
    <>
      <header className="card-head">
        <h2 id="week-card" tabIndex={-1}>
          {booked.id} <span className="key">{booked.route.join('-')}</span>
        </h2>
        <p className="state-line">
          {booked.needsDecision !== null && <span className="band">Needs a decision</span>} Booked, not fuel
          <span className="slate">
            {booked.aircraft}, {calendar.day(booked.date)}
          </span>
        </p>
        {booked.needsDecision !== null && (
          <p>
            {booked.needsDecision} Tell whoever booked it. The mark goes with its cause: by another report, or
            when the booking is changed at{' '}
            <Link href={`/set-up/booked-flights/${encodeURIComponent(booked.id)}`}>
              Set-up, Booked flights
            </Link>
            .
          </p>
        )}
      </header>
      <dl className="form-rows card-rows">
        <div>
          <dt>For</dt>
          <dd>{booked.purpose}</dd>
        </div>
        <div>
          <dt>Time</dt>
          <dd>
            {bookedTime(booked)}
            {booked.departs === null &&
              ': it stands in the morning until Set-up, Booked flights, has its hour'}
            .
          </dd>
        </div>
        <div>
          <dt>Load</dt>
          <dd>
            {booked.passengers > 0 && `${inWords(booked.passengers, 'passengers')}. `}
            {spare === ''
              ? 'What it could take beside that is not worked out for this day.'
              : booked.needsDecision === null
                ? `It flies anyway: ${spare}.`
                : `As booked it cannot fly: ${spare}.`}
            {takenOff !== undefined && (
              <p>
                {takenOffWords(takenOff)} by {takenOff.changedByName}, {calendar.when(takenOff.changedAt)}:
                the flight itself stands.
              </p>
            )}
            {booked.passengers > 0 && (
              <p>
                Passengers and drums do not share a leg, unless an approval of the authority that is on file
                is cited. <Link href={`/load/${encodeURIComponent(booked.id)}`}>Load of {booked.id}</Link>{' '}
                checks it leg by leg.
              </p>
            )}
          </dd>
        </div>
      </dl>
    </>
  );
};
