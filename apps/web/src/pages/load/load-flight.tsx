import { useState } from 'react';
import { Link } from 'wouter';
import { type Calendar, useMay } from '../../api/index.js';
import { EmptyLine, MessageLine, ProblemLine } from '../../ui/index.js';
import { BalanceChart } from './balance/balance-chart.js';
import { balanceWords, fallbackMarks, marksOf } from './balance/balance-scale.js';
import { Commander } from './cabin/commander.js';
import { LoadActs } from './cabin/load-acts.js';
import { Moving } from './cabin/moving.js';
import { Particulars } from './cabin/particulars.js';
import { PositionsPlan } from './cabin/positions-plan.js';
import { leftWhenSoft, placedOf } from './cabin/standing.js';
import { TieDown } from './cabin/tie-down.js';
import { useTrial } from './cabin/use-trial.js';
import { scaleOf } from './legs/bar-scale.js';
import { LegBar, ShortLegBar } from './legs/leg-bar.js';
import { Patterns } from './legs/patterns.js';
import type { Load, LoadedFlight } from './load-read.js';
import { LoadedForm } from './totals/loaded-form.js';
import { Loadings } from './totals/loadings.js';
import { TotalsForm } from './totals/totals-form.js';
import { useTypedTotals } from './totals/use-typed-totals.js';
import type { LoadActs as Acts } from './use-load-acts.js';
import { GoBack, Reported, UnloadOrStay } from './words/go-back.js';

interface LoadFlightProps {
  readonly flight: LoadedFlight;
  readonly acts: Acts;
  readonly calendar: Calendar;
}

/** A flight with its load: assumptions, legs, positions, balance, words, totals. */
export const LoadFlight = ({ flight, acts, calendar }: LoadFlightProps) => {
  const { load, why, needsDecision } = flight;
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
          <EmptyLine>{why}</EmptyLine>
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
  const { legs, assumptions, fuelWords, cautions } = load.sheet;
  const [leg, setLeg] = useState(
    Math.max(
      0,
      load.bars.findIndex(({ drums }) => drums > 0),
    ),
  );
  const typed = useTypedTotals(flight);
  const scale = scaleOf(load.bars);
  const { goBack } = legs[leg]!;
  return (
    <>
      <Patterns />
      <p className="load-assumed">
        <b>Assumed:</b> {assumptions} {fuelWords} <b>{cautions[0]}</b>
      </p>
      {!load.holds && (
        <MessageLine
          what="The load does not hold"
          why={load.faults.map((fault) => `${fault.replace(/\.$/, '')}.`).join(' ')}
        />
      )}
      <div className="load-legs">
        {legs.map((each, at) =>
          at === leg ? (
            <LegBar
              key={`${each.from}-${each.to}`}
              number={at + 1}
              leg={each}
              bar={load.bars[at]!}
              scale={scale}
            />
          ) : (
            <ShortLegBar
              key={`${each.from}-${each.to}`}
              number={at + 1}
              leg={each}
              bar={load.bars[at]!}
              scale={scale}
              onOpen={() => setLeg(at)}
            />
          ),
        )}
      </div>
      <div className="load-low">
        <Cabin {...{ flight, load, acts, calendar, leg }} />
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

interface CabinProps extends LoadFlightProps {
  readonly load: Load;
  readonly leg: number;
}

/** Positions and balance move together: what is tried shows in both before it is kept. */
const Cabin = ({ flight, load, acts, calendar, leg }: CabinProps) => {
  const kept = placedOf(load.sheet.drums);
  const { trial, begin, leave, choose, put } = useTrial(kept, acts);
  const [tied, setTied] = useState<ReadonlySet<string>>(new Set());
  const may = useMay();
  const name = `${load.sheet.legs[leg]!.from}-${load.sheet.legs[leg]!.to}`;
  const fallback = load.fallbacks.find((each) => each.leg === leg);
  const moments = (trial?.standing ?? load).moments;
  const words = balanceWords(moments, name);
  const keep = async () => {
    if (trial !== null && (await acts.setPositions.run(trial.placed)) !== undefined) leave();
  };
  const toggle = (drum: string) => {
    const next = new Set(tied);
    if (!next.delete(drum)) next.add(drum);
    setTied(next);
  };
  return (
    <>
      <div className="load-positions">
        <h2>
          Positions <small>arm in inches aft of the datum, nose to the left</small>
        </h2>
        {flight.cabin !== null && (
          <PositionsPlan
            cabin={flight.cabin}
            sheet={load.sheet}
            placed={trial?.placed ?? kept}
            leave={leftWhenSoft(load)}
            note={flight.type.note}
            chosen={trial?.chosen ?? null}
            onChoose={trial === null ? null : choose}
            tied={tied}
            onTied={toggle}
          />
        )}
        {trial === null ? (
          <LoadActs
            {...{ flight, fallback, acts }}
            mayAmend={may('approve flight', 'decide')}
            mayMove={may('load', 'enter')}
            onMove={begin}
          />
        ) : (
          <Moving
            {...{ trial, kept }}
            balance={words}
            busy={acts.isSending}
            onTry={put}
            onKeep={() => void keep()}
            onLeave={leave}
          />
        )}
        {may('assign crew', 'decide') && <Commander flight={flight} acts={acts} />}
        <TieDown tieDown={load.sheet.tieDown} />
        <Particulars leg={load.sheet.legs[leg]!} missing={load.sheet.particularsMissing} />
      </div>
      <div className="load-envelope">
        <h2>Balance</h2>
        <div className="chart">
          <BalanceChart
            type={flight.type}
            marks={marksOf(moments, name, load.bars[leg]!)}
            fallback={
              trial === null && fallback !== undefined ? fallbackMarks(fallback, name, load.bars[leg]!) : []
            }
            words={words}
          />
        </div>
        <p>{words}</p>
        <UnloadOrStay flight={flight} goBack={load.sheet.legs[leg]!.goBack} />
        <Reported flight={flight} calendar={calendar} />
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
