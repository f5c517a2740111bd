import '../leg/leg.css';
import type { PhoneFlight } from '@drumline/contract';
import { Fragment } from 'react';
import { Link } from 'wouter';
import {
  DayPage,
  dateWords,
  dayWords,
  Page,
  type Person,
  type ShownEntry,
  timeWords,
  useEntries,
  useTerritoryNow,
  whenWords,
} from '../../phone/index.js';
import { isSoftNow } from '../leg/leg-words.js';
import { ownReports, surfacesKnown } from '../reports/own-reports.js';
import { type KeptDay, useAllOpened, useDay } from './day.js';
import { dayRow } from './day-row.js';
import { newsOf } from './newer-version.js';
import { isNewer, type OpenedFlight } from './opened-flight.js';

/** The flights of this crew, with the load as each was opened. */
export const DayList = ({ person }: { readonly person: Person }) => {
  const now = useTerritoryNow();
  const read = useDay();
  const opened = useAllOpened();
  const entries = useEntries();
  if (read === undefined || opened === undefined || entries === undefined)
    return <Page title={dateWords(now)} />;
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
        {read !== null &&
          flights.map((newest) => (
            <FlightRow
              key={newest.id}
              newest={newest}
              opened={opened.find(({ id }) => id === newest.id)}
              heard={{ day: read.day, entries }}
            />
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

interface FlightRowProps {
  readonly newest: PhoneFlight;
  readonly opened: OpenedFlight | undefined;
  readonly heard: { readonly day: KeptDay['day']; readonly entries: readonly ShownEntry[] };
}

const FlightRow = ({ newest, opened, heard: { day, entries } }: FlightRowProps) => {
  const now = useTerritoryNow();
  const shown = opened ?? newest;
  const surfaces = surfacesKnown(day.surfaceReports, entries);
  const softCounts = isSoftNow(day, surfaces, { code: shown.route[1]!, now });
  const { drums, lines } = dayRow(shown, ownReports(entries, shown.id), softCounts);
  return (
    <li>
      <Link className="row" href={`/${shown.id}/1`}>
        <span className="route small-route">{shown.route.slice(0, -1).join(' to ')}</span>
        <span className="side">{drums}</span>
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
          {lines.map(({ of, words }) => (
            <Fragment key={words}>
              <br />
              {of === null ? (
                <b>{words}</b>
              ) : (
                <>
                  <b>{of}:</b> {words}
                </>
              )}
            </Fragment>
          ))}
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
