import './leg.css';
import type { PhoneFlight } from '@drumline/contract';
import { Link } from 'wouter';
import {
  DayPage,
  dateWords,
  dayWords,
  Page,
  type Person,
  timeWords,
  useTerritoryNow,
  whenWords,
} from '../phone/index.js';
import { useAllOpened, useDay } from './day.js';
import { legWords } from './leg-words.js';
import { newsOf } from './newer-version.js';
import { isNewer, type OpenedFlight } from './opened-flight.js';

/** The flights of this crew, with the load as each was opened. */
export const DayList = ({ person }: { readonly person: Person }) => {
  const now = useTerritoryNow();
  const read = useDay();
  const opened = useAllOpened();
  if (read === undefined || opened === undefined) return <Page title={dateWords(now)} />;
  const flights = read?.day.flights ?? [];
  return (
    <DayPage
      title={dateWords(now)}
      below={`${person.fullName}${person.crew === null ? '' : ` · ${person.crew}`}`}
    >
      {flights.length === 0 && (
        <div className="said">
          <p>
            <b>No flight given to you.</b>
          </p>
          <p>
            {read === null
              ? 'Base has never been asked: it needs a signal once.'
              : `Last checked ${whenWords(read.at, now)}.`}
          </p>
        </div>
      )}
      <ul className="rows">
        {flights.map((newest) => (
          <FlightRow key={newest.id} newest={newest} opened={opened.find(({ id }) => id === newest.id)} />
        ))}
      </ul>
      {flights.length > 0 && read !== null && (
        <p className="foot">
          Read {timeWords(read.at)}. For use on the ground only. Planning figures: the commander’s approved
          data decide.
        </p>
      )}
    </DayPage>
  );
};

const FlightRow = ({
  newest,
  opened,
}: {
  readonly newest: PhoneFlight;
  readonly opened: OpenedFlight | undefined;
}) => {
  const shown = opened ?? newest;
  const words = legWords(shown, 0);
  const drums = shown.stops.flatMap((stop) => stop.drums).length;
  return (
    <li>
      <Link className="row" href={`/${shown.id}/1`}>
        <span className="route small-route">{shown.route.slice(0, -1).join(' to ')}</span>
        <span className="side">{drums} drums</span>
        <span className="sub">
          <b>{shown.id}</b> · {dayWords(shown.date)}, off {shown.departs} · {shown.aircraft} · {newest.state},
          version {shown.version}
          {shown.version === newest.version ? '' : ' open'}
          {shown.sheet !== null && !shown.sheet.holds && (
            <>
              <br />
              <b>This load does not hold:</b> {shown.sheet.faults[0]}
            </>
          )}
          {words !== null && (
            <>
              <br />
              <b>Binds:</b> {words.binds.main}, {words.binds.rest}
            </>
          )}
          {words?.leave?.over === true && (
            <>
              <br />
              <b>{words.leave.main}</b>
            </>
          )}
          {newest.needsDecision !== null && (
            <>
              <br />
              <b>Base has to decide:</b> {newest.needsDecision}
            </>
          )}
          {opened !== undefined && isNewer(opened, newest) && (
            <>
              <br />
              <b>{newsOf(opened, newest)}</b>
            </>
          )}
        </span>
      </Link>
    </li>
  );
};
