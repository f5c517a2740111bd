import { memo } from 'react';
import { inWords, Lock } from '../../../ui/index.js';
import type { WeekBooked, WeekFlight } from '../week-read.js';
import type { Box } from './board-rows.js';
import {
  bandWords,
  bindingLong,
  bindingMark,
  bindingShort,
  bindingWords,
  bookedTime,
  bookedWords,
  isFrozen,
  lineOf,
} from './box-words.js';
import { takenOffWords } from './taken-off.js';

interface FlightBoxProps {
  readonly box: Box;
  /** Where it stands on the board, for the keyboard. */
  readonly at: string;
  readonly selected: boolean;
}

/** One flight on the board. Drawn again only when the flight itself, its place or its selection changes. */
export const FlightBox = memo(({ box, at, selected }: FlightBoxProps) => {
  const line = box.kind === 'flight' ? lineOf(box.flight) : 'booked';
  return (
    <button
      type="button"
      className={`flight-box ${line}`}
      data-flight={box.flight.id}
      data-at={at}
      tabIndex={-1}
      aria-pressed={selected}
    >
      {box.kind === 'flight' ? (
        <Flight flight={box.flight} stops={box.stops} />
      ) : (
        <Booked flight={box.flight} stops={box.stops} takenOff={box.takenOff} />
      )}
    </button>
  );
});
FlightBox.displayName = 'FlightBox';

interface Of<Flight> {
  readonly flight: Flight;
  readonly stops: Box['stops'];
}

const Flight = ({ flight, stops }: Of<WeekFlight>) => {
  const { id, kind, state, route, drums, drumsPossible, departs, pilot } = flight;
  const band = bandWords(flight);
  return (
    <>
      {band !== null && <span className="band">{band} </span>}
      <span className="ends">
        <b>{id}</b> <span className="off-at">{departs}</span> {isFrozen(flight) && <Lock />}
      </span>{' '}
      <span className="stands">
        <b className="drums">
          {drums}
          <span className="of"> of </span>
          {drumsPossible}
        </b>{' '}
        <span>{kind === 'booked' && state === 'offered' ? 'Booked, offered' : stateWord(state)}</span>
      </span>{' '}
      <Route route={route} stops={stops} /> <Binds flight={flight} />{' '}
      <span className="pilot" aria-hidden="true">
        {pilot}
      </span>
      <span className="unseen">{isFrozen(flight) && 'frozen'}</span>
    </>
  );
};

/** The limit with its strip, where there is little room without, and in two weeks at once its mark. */
const Binds = ({ flight }: { readonly flight: WeekFlight }) => {
  return (
    <>
      <LedWords className="binds whole" words={bindingLong(flight)} />
      <LedWords className="binds short" words={bindingShort(flight)} />
      <span className="binds least" aria-hidden="true" title={bindingWords(flight)}>
        {bindingMark(flight)}
      </span>
    </>
  );
};

/** "binds: strip " leaves first where there is little room: the key says that what binds comes last. */
const LedWords = ({
  className,
  words: [lead, rest],
}: {
  readonly className: string;
  readonly words: readonly [lead: string, words: string];
}) => (
  <span className={className}>
    <span className="lead">{lead}</span>
    {rest}
  </span>
);

const Booked = ({
  flight,
  stops,
  takenOff,
}: Of<WeekBooked> & { readonly takenOff: WeekFlight | undefined }) => {
  const [aboard, spare] = bookedWords(flight);
  const band = bandWords(flight);
  return (
    <>
      {band !== null && <span className="band">{band} </span>}
      <span className="ends">
        <b>{flight.id}</b>{' '}
        <span aria-hidden="true" title={bookedTime(flight)}>
          {flight.departs ?? inWords(flight.heldHours, 'h', 1)}
        </span>{' '}
        <span>Booked</span>
      </span>{' '}
      <Route route={flight.route} stops={stops} /> <span className="aboard">{aboard}</span>{' '}
      {takenOff !== undefined && <span className="spare">{takenOffWords(takenOff)}, </span>}
      <span className="spare">{spare}</span>
      <span className="unseen">{bookedTime(flight)}</span>
    </>
  );
};

/** The whole way, and where there is little room its stops alone: the bases at both ends stand at the head of the row. */
const Route = ({ route, stops }: { readonly route: readonly string[]; readonly stops: Box['stops'] }) =>
  stops === null ? (
    <span className="route">{route.join('-')}</span>
  ) : (
    <>
      <span className="route whole">{route.join('-')}</span>
      <span className="route short">{stops.join('-')}</span>
    </>
  );

const stateWord = (state: string): string => state.charAt(0).toUpperCase() + state.slice(1);
