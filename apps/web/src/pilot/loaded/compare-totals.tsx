import { pounds, print } from '@drumline/units';
import { useState } from 'react';
import { NotKept, Page, type Person, useTerritoryNow } from '../../phone/index.js';
import { open } from '../day/day.js';
import { surfaceAt } from '../leg/leg-words.js';
import { SoftNotice, useTooMany } from '../leg/soft-notice.js';
import { loaded } from '../reports/reports.js';
import { useReporting } from '../reports/use-reporting.js';
import { CompareActs } from './compare-acts.js';
import { ComparedFigures } from './compared-figures.js';
import { DoesNotHold } from './does-not-hold.js';
import { HowTheyAdd } from './how-they-add-page.js';
import { aboveLoaded, type StepProps, Steps } from './loaded-steps.js';
import { type Signed, SignForIt } from './sign-for-it.js';
import { comparedTotals } from './two-totals.js';
import { apartWords, WhatItSays } from './what-it-says.js';

/** The figures side by side, the slips that would explain a difference, and no word about which one is right. */
export const CompareTotals = (props: StepProps & { readonly person: Person }) => {
  const { here, draft, setDraft, person } = props;
  const { flight, day } = here;
  const now = useTerritoryNow();
  const [looksAt, setLooksAt] = useState<'figures' | 'adding' | 'signing'>('figures');
  const { report, notKept } = useReporting(person);
  const typed = { byHandLb: Number(draft.byHand), byAircraftLb: Number(draft.byAircraft) };
  const compared = comparedTotals(flight, day, typed);
  const surfaces = flight.stops.map(({ place }) => surfaceAt(day, here.surfaces, { code: place, now }).state);
  const bySoftFigures = surfaces.includes(null);
  const tooMany = useTooMany(here);
  const keep = (signed: Signed | null) => {
    const { loadLb, takeoffLb } = compared;
    const totals = { ...typed, loadLb, takeoffLb, signed, bySoftFigures, attempts: draft.attempts };
    // From now on the load that is open is the one that was loaded.
    const openIt = () => (draft.aboard.length > 0 ? open(flight) : undefined);
    void report((reporter) => loaded(reporter, flight, totals), `/${flight.id}/1`, openIt);
  };
  const back = () => setLooksAt('figures');
  if (looksAt === 'adding') return <HowTheyAdd flight={flight} typed={typed} onBack={back} />;
  if (looksAt === 'signing')
    return (
      <SignForIt
        {...props}
        by={person.fullName}
        difference={`${apartWords(compared)}.`}
        notKept={notKept}
        onSign={keep}
        onBack={back}
      />
    );
  const apart = Math.max(compared.load.differenceLb, compared.takeoff.differenceLb);
  return (
    <Page
      above={aboveLoaded(flight)}
      title={titleOf(apart, flight.sheet!.holds)}
      acts={
        <>
          <NotKept words={notKept} />
          <CompareActs
            agrees={compared.agrees}
            onlyToTell={tooMany.length > 0 || !flight.sheet!.holds}
            loaded={`${flight.id}, version ${flight.version}`}
            onAdding={() => setLooksAt('adding')}
            onAgain={() => setDraft({ ...draft, step: 'totals' })}
            onPositions={() => setDraft({ ...draft, step: 'positions' })}
            onSigning={() => setLooksAt('signing')}
            onKeep={() => keep(null)}
          />
        </>
      }
    >
      <Steps now="compare" />
      <DoesNotHold sheet={flight.sheet!} />
      <ComparedFigures compared={compared} typed={typed} rows={flight.sheet!.legs[0]!.totals.items.length} />
      <SoftNotice {...props} />
      <WhatItSays
        compared={compared}
        sheet={flight.sheet!}
        bySoftFigures={bySoftFigures && tooMany.length === 0}
      />
    </Page>
  );
};

const titleOf = (apartLb: number, holds: boolean): string => {
  if (apartLb > 0) return `${print(pounds(apartLb), 'lb')} apart`;
  return holds ? 'They agree' : 'It does not hold';
};
