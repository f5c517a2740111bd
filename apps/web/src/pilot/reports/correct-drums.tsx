import { useState } from 'react';
import { Link } from 'wouter';
import { Main, NotKept, Page, type Person, Press, type ShownEntry, useDraft } from '../../phone/index.js';
import { corrected, saidWords } from '../drums-here/drum-reports.js';
import { DrumRow } from '../drums-here/drum-row.js';
import { HowIsIt } from '../drums-here/how-is-it.js';
import { PlaceRows } from '../leg/place-rows.js';
import { WhatWasSaid } from '../loaded/what-was-said.js';
import type { FlightHere } from '../use-flight.js';
import type { ReportedDrum } from './own-reports.js';
import { changedOnly, type Right, rightOf, toPlace } from './put-right.js';
import { useReporting } from './use-reporting.js';

interface CorrectDrumsProps {
  readonly entry: ShownEntry;
  /** What it says and nobody has taken back. */
  readonly said: readonly ReportedDrum[];
  readonly here: FlightHere;
  readonly person: Person;
}

/** Drum by drum what was reported and what is so; Keep takes the wrong ones back and gives the right ones. */
export const CorrectDrums = ({ entry, said, here, person }: CorrectDrumsProps) => {
  const { flight } = here;
  const [right, setRight] = useDraft<Right>(`correct ${entry.seq}`, {});
  const [looking, setLooking] = useState<ReportedDrum | 'place' | null>(null);
  const { report, notKept } = useReporting(person);
  const corrections = changedOnly(said, right);
  const put = (next: Right) => {
    setRight(next);
    setLooking(null);
  };
  const keep = () =>
    report(
      (reporter) => corrected(reporter, flight, corrections),
      '/sent',
      () => setRight(null),
    );
  if (looking !== null) return <LookAt what={looking} said={said} right={right} here={here} onSaid={put} />;
  return (
    <Page
      above={<WhatWasSaid entry={entry} />}
      title="What is so?"
      acts={
        <>
          <NotKept words={notKept} />
          <div className="two">
            <Link className="btn" href="/sent">
              Leave it so
            </Link>
            <Press onPress={() => setLooking('place')}>Another place</Press>
          </div>
          <Main
            waits={corrections.length === 0 ? 'Tap what is wrong' : null}
            small="The first report stays written"
            onPress={() => void keep()}
          >
            Correct
          </Main>
        </>
      }
    >
      <ul className="rows">
        {said.map((drum) => (
          <ReportedRow key={drum.id} drum={drum} right={right} onPress={() => setLooking(drum)} />
        ))}
      </ul>
    </Page>
  );
};

interface LookAtProps extends Pick<CorrectDrumsProps, 'said' | 'here'> {
  /** A drum, or the place where all of them were left. */
  readonly what: ReportedDrum | 'place';
  readonly right: Right;
  readonly onSaid: (right: Right) => void;
}

const LookAt = ({ what, said, here, right, onSaid }: LookAtProps) => {
  const { flight } = here;
  const leftAt = said.find(({ kind }) => kind === 'left at')?.place ?? flight.route[1]!;
  if (what === 'place')
    return (
      <Page above={`${flight.id} · reported at ${leftAt}`} title="Where were they left?">
        <PlaceRows
          here={here}
          leg={said[0]!.leg}
          but={leftAt}
          onChoose={(code) => onSaid(toPlace(said, right, code))}
        />
      </Page>
    );
  const now = rightOf(what, right);
  const place = now?.kind === 'left at' ? now.place : leftAt;
  return (
    <HowIsIt
      flight={flight}
      drum={now ?? what}
      onSaid={({ kind, condition }) => onSaid({ ...right, [what.id]: { kind, condition, place } })}
      onNot={() => onSaid({ ...right, [what.id]: null })}
    />
  );
};

interface ReportedRowProps {
  readonly drum: ReportedDrum;
  readonly right: Right;
  readonly onPress: () => void;
}

const ReportedRow = ({ drum, right, onPress }: ReportedRowProps) => {
  const now = rightOf(drum, right);
  const isCorrected = changedOnly([drum], right).length > 0;
  return (
    <DrumRow
      number={drum.drum}
      look={isCorrected ? 'picked' : 'plain'}
      side={isCorrected ? 'Corrected' : 'As reported'}
      below={
        <>
          Reported: {saidWords(drum)}.
          {isCorrected && (
            <>
              <br />
              <b>{now === null ? `Nothing of ${drum.drum}` : saidWords(now)}.</b>
            </>
          )}
        </>
      }
      onPress={onPress}
    />
  );
};
