import { useState } from 'react';
import { Link } from 'wouter';
import type { Calendar } from '../../api/index.js';
import { EmptyLine, MessageLine, ProblemLine } from '../../ui/index.js';
import { PositionsAndBalance } from './cabin/positions-and-balance.js';
import { firstLaden, LoadLegs } from './legs/load-legs.js';
import type { Load, LoadedFlight } from './load-read.js';
import { PlannedLoad } from './planned-load.js';
import { LoadedForm } from './totals/loaded-form.js';
import { Loadings } from './totals/loadings.js';
import { TotalsForm } from './totals/totals-form.js';
import { useTypedTotals } from './totals/use-typed-totals.js';
import type { LoadActs as Acts } from './use-load-acts.js';
import { GoBack, Reported } from './words/go-back.js';

export interface LoadFlightProps {
  readonly flight: LoadedFlight;
  readonly acts: Acts;
  readonly calendar: Calendar;
}

/** A flight with its load: assumptions, legs, positions, balance, words, totals. */
export const LoadFlight = ({ flight, acts, calendar }: LoadFlightProps) => {
  const { load, planned, why, needsDecision } = flight;
  return (
    <div className="work load-page">
      <Refused flight={flight} acts={acts} calendar={calendar} />
      {needsDecision !== null && (
        <MessageLine what="Needs a decision" why={needsDecision}>
          <Link href={`/week/${encodeURIComponent(flight.id)}`}>Decide on the week</Link>
        </MessageLine>
      )}
      {load === null ? (
        <>
          {planned === null ? <EmptyLine>{why}</EmptyLine> : <PlannedLoad {...{ flight, planned, acts }} />}
          <Loadings loadings={flight.loadings} calendar={calendar} />
          <Reported flight={flight} calendar={calendar} />
        </>
      ) : (
        <OpenLoad key={`${flight.id} ${flight.version}`} {...{ flight, load, acts, calendar }} />
      )}
    </div>
  );
};

const OpenLoad = ({ flight, load, acts, calendar }: LoadFlightProps & { readonly load: Load }) => {
  const { legs, assumptions, fuelWords, cautions, replacesWords, notInBookWords, heldWords } = load.sheet;
  const [leg, setLeg] = useState(firstLaden(load.bars));
  const typed = useTypedTotals(flight);
  const { goBack } = legs[leg]!;
  return (
    <>
      <p className="load-printed">
        <b>This is a print of the page.</b> To load, add up and sign by, print the load sheet: Print load
        sheet, above the page.
      </p>
      <p className="load-assumed">
        <b>Assumed:</b> {assumptions} {fuelWords} <b>{cautions[0]}</b>
      </p>
      {replacesWords !== null && (
        <p className="load-assumed">
          <b>Printed sheets:</b> {replacesWords}
        </p>
      )}
      {notInBookWords !== null && <MessageLine kind="note" what="Not in the book" why={notInBookWords} />}
      {heldWords !== null && flight.needsDecision === null && (
        <MessageLine what="HOLD: not to be loaded, not to be used" why={heldWords} />
      )}
      {!load.holds && (
        <MessageLine
          what="The load does not hold"
          why={load.faults.map((fault) => `${fault.replace(/\.$/, '')}.`).join(' ')}
        />
      )}
      <LoadLegs {...{ legs, leg }} bars={load.bars} drumsAre="as weighed" onLeg={setLeg} />
      <div className="load-low">
        <PositionsAndBalance {...{ flight, load, acts, calendar, leg }} />
        <div className="load-words">
          <GoBack key={goBack.place} goBack={goBack} />
          <Loadings loadings={flight.loadings} calendar={calendar} />
          {isToLoad(flight) && (
            <>
              <TotalsForm flight={flight} typed={typed} />
              <LoadedForm flight={flight} typed={typed} calendar={calendar} />
            </>
          )}
        </div>
      </div>
    </>
  );
};

/** Nothing is typed any more where it is loaded: what it was loaded by stands there. */
const isToLoad = ({ state, version, loadings }: LoadedFlight): boolean =>
  ['idea', 'offered', 'approved', 'given'].includes(state) ||
  !loadings.some((loading) => loading.version === version);

/** Somebody was quicker: who, what and when. Otherwise the server's own words. */
const Refused = ({ flight, acts: { problem }, calendar }: LoadFlightProps) =>
  problem?.kind === 'stale-version' ? (
    <MessageLine
      what={`${flight.changedByName} was first: ${flight.lastAct}, ${calendar.when(flight.changedAt)}`}
      why="What you pressed was not sent."
      next="The page shows the flight as it is now."
    />
  ) : (
    <ProblemLine problem={problem} />
  );
