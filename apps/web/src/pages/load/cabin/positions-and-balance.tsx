import { useState } from 'react';
import { useMay } from '../../../api/index.js';
import { BalanceChart, MarkNames } from '../balance/balance-chart.js';
import { balanceWords, fallbackMarks, marksOf } from '../balance/balance-scale.js';
import type { LoadFlightProps } from '../load-flight.js';
import type { Load } from '../load-read.js';
import { Reported, UnloadOrStay } from '../words/go-back.js';
import { Commander } from './commander.js';
import { LoadActs } from './load-acts.js';
import { Moving } from './moving.js';
import { Particulars } from './particulars.js';
import { PositionsPlan } from './positions-plan.js';
import { leftWhenSoft, placedOf } from './standing.js';
import { TieDown } from './tie-down.js';
import { useTrial } from './use-trial.js';

interface PositionsAndBalanceProps extends LoadFlightProps {
  readonly load: Load;
  readonly leg: number;
}

/** Positions and balance move together: what is tried shows in both before it is kept. */
export const PositionsAndBalance = ({ flight, load, acts, calendar, leg }: PositionsAndBalanceProps) => {
  const kept = placedOf(load.sheet.drums);
  const { trial, begin, leave, choose, put } = useTrial(kept, acts);
  const [tied, setTied] = useState<ReadonlySet<string>>(new Set());
  const may = useMay();
  const name = `${load.sheet.legs[leg]!.from}-${load.sheet.legs[leg]!.to}`;
  const fallback = load.fallbacks.find((each) => each.leg === leg);
  const moments = (trial?.standing ?? load).moments;
  const words = balanceWords(moments, name);
  const marks = marksOf(moments, name, load.bars[leg]!);
  const soft = trial === null && fallback !== undefined ? fallbackMarks(fallback, name, load.bars[leg]!) : [];
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
            leave={leftWhenSoft(load, flight)}
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
          <BalanceChart type={flight.type} marks={marks} fallback={soft} words={words} />
        </div>
        <MarkNames marks={marks} fallback={soft} />
        <p>{words}</p>
        <UnloadOrStay flight={flight} goBack={load.sheet.legs[leg]!.goBack} />
        <Reported flight={flight} calendar={calendar} />
      </div>
    </>
  );
};
