import type { TotalsComparison } from '@drumline/loading';
import { pounds, print, printNumber } from '@drumline/units';
import { useState } from 'react';
import { Main, Notice, Page, type Person, Press, useTerritoryNow } from '../phone/index.js';
import { surfaceAt } from './leg-words.js';
import { aboveLoaded, Steps } from './loaded-steps.js';
import type { StepProps } from './positions.js';
import { loaded } from './reports.js';
import { type Signed, SignForIt } from './sign-for-it.js';
import { type Compared, comparedTotals } from './two-totals.js';
import { useReporting } from './use-reporting.js';

/** The figures side by side, the slips that would explain a difference, and no word about which one is right. */
export const CompareTotals = ({ here, draft, setDraft, person }: StepProps & { readonly person: Person }) => {
  const { flight, day } = here;
  const now = useTerritoryNow();
  const [signing, setSigning] = useState(false);
  const { report, notKept } = useReporting(person);
  const typed = { byHandLb: Number(draft.byHand), byAircraftLb: Number(draft.byAircraft) };
  const compared = comparedTotals(flight, day, typed);
  const surfaces = flight.stops.map(({ place }) => surfaceAt(day, here.surfaces, { code: place, now }).state);
  const bySoftFigures = surfaces.includes(null);
  const keep = (signed: Signed | null) => {
    const totals = {
      ...typed,
      loadLb: compared.loadLb,
      takeoffLb: compared.takeoffLb,
      signed,
      bySoftFigures,
    };
    void report((reporter) => loaded(reporter, flight, totals), `/${flight.id}/1`);
  };
  const apart = Math.max(compared.load.differenceLb, compared.takeoff.differenceLb);
  return (
    <Page
      above={aboveLoaded(flight)}
      title={apart === 0 ? 'They agree' : `${print(pounds(apart), 'lb')} apart`}
      acts={
        <>
          {notKept !== null && <Notice kind="stop" word="Not kept." title={notKept} />}
          {!compared.agrees && !signing && <Press onPress={() => setSigning(true)}>Sign for it</Press>}
          {signing && <SignForIt by={person.fullName} attempts={draft.attempts} onSign={keep} />}
          {compared.agrees ? (
            <Main small={`${flight.id}, version ${flight.version}`} onPress={() => keep(null)}>
              Loaded
            </Main>
          ) : (
            <Main onPress={() => setDraft({ ...draft, step: 'totals' })}>Type again</Main>
          )}
        </>
      }
    >
      <Steps now="compare" />
      <Figures compared={compared} typed={typed} rows={flight.sheet!.legs[0]!.totals.items.length} />
      {compared.agrees ? (
        <Notice kind="agree" word="Agrees." title={compared.takeoff.advice}>
          {compared.roundingWords}
        </Notice>
      ) : (
        <Notice
          kind="stop"
          word="Loaded waits."
          title={`More than ${print(flight.sheet!.toleranceLb, 'lb')} apart.`}
        >
          {[compared.load, compared.takeoff]
            .filter(({ agrees }) => !agrees)
            .map(({ words }) => words)
            .join('. ')}
        </Notice>
      )}
      {bySoftFigures && (
        <Notice kind="check" word="Surface unknown: soft counts." title="Loaded is sent by the soft figures.">
          {flight.sheet!.legs[0]!.goBack.ifSoft?.words ?? ''} If base says no, ask for a surface report.
        </Notice>
      )}
      <Slips of={compared.load} />
      <Slips of={compared.takeoff} />
    </Page>
  );
};

interface FiguresProps {
  readonly compared: Compared;
  readonly typed: { readonly byHandLb: number; readonly byAircraftLb: number };
  readonly rows: number;
}

const Figures = ({ compared, typed, rows }: FiguresProps) => (
  <table className="cmp">
    <thead>
      <tr>
        <td />
        <th className="r" scope="col">
          Load, {rows}
        </th>
        <th className="r" scope="col">
          Take-off weight
        </th>
      </tr>
    </thead>
    <tbody>
      <Row of="By the sheet" load={compared.loadLb} takeoff={compared.takeoffLb} />
      <Row of="By hand" load={typed.byHandLb} takeoff={null} />
      <Row of="By the aircraft" load={null} takeoff={typed.byAircraftLb} />
      <Row of="Difference" load={compared.load.differenceLb} takeoff={compared.takeoff.differenceLb} />
    </tbody>
  </table>
);

const Row = ({ of, load, takeoff }: { of: string; load: number | null; takeoff: number | null }) => (
  <tr className={of === 'Difference' ? 'diff' : ''}>
    <th scope="row">{of}</th>
    <Figure lb={load} />
    <Figure lb={takeoff} />
  </tr>
);

const Figure = ({ lb }: { readonly lb: number | null }) => (
  <td className="f">
    {lb === null ? (
      <span className="vis-hide">not asked</span>
    ) : (
      <>
        {printNumber(lb)}
        <small>lb</small>
      </>
    )}
  </td>
);

/** More than two would explain anything. */
const Slips = ({ of }: { readonly of: TotalsComparison }) => {
  if (of.agrees) return null;
  if (of.slips.length === 0 || of.slips.length > 2) return <p className="said">{of.advice}</p>;
  return of.slips.map(({ kind, title, words }) => (
    <Notice key={kind + words} kind="check" word="May be." title={title}>
      {words}
    </Notice>
  ));
};
