import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import {
  DrumNumber,
  Main,
  Notice,
  NotKept,
  Page,
  type Person,
  type ShownEntry,
  useDraft,
  useKeeping,
  whenWords,
} from '../phone/index.js';
import { takenBack } from '../phone/taken-back.js';
import { movementsOf } from './own-movements.js';
import { takeBackReport } from './reports.js';
import { placeToReportAt, type Revocable, revocableOf, saidOf } from './take-back.js';
import { TickRow } from './tick-row.js';
import type { PlacesHere } from './use-places.js';

interface CorrectPageProps {
  readonly here: PlacesHere;
  readonly person: Person;
  /** Of the entry. */
  readonly seq: number;
}

/** One report, taken back in whole or drum by drum; what is so is reported after it as anything else. */
export const CorrectPage = ({ here, person, seq }: CorrectPageProps) => {
  const entry = here.entries.find((each) => each.seq === seq);
  const said = entry === undefined ? [] : revocableOf(movementsOf(entry), takenBack(here.entries));
  if (entry === undefined || said.length === 0) return <NothingTo entry={entry} />;
  return <TakeBack entry={entry} said={said} here={here} person={person} />;
};

interface TakeBackProps extends Omit<CorrectPageProps, 'seq'> {
  readonly entry: ShownEntry;
  readonly said: readonly Revocable[];
}

const TakeBack = ({ entry, said, here, person }: TakeBackProps) => {
  const [, go] = useLocation();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const [reason, setReason] = useDraft(`take back ${entry.seq}`, '');
  const { keepReport, notKept } = useKeeping(person);
  const wrong = said.filter(({ id }) => ticked.includes(id));
  const waits = wrong.length === 0 ? 'Tick what is wrong' : reason.trim() === '' ? 'Say why' : null;
  const turn = (id: string) =>
    setTicked(ticked.includes(id) ? ticked.filter((each) => each !== id) : [...ticked, id]);
  const keep = async (): Promise<void> => {
    const back = { movements: wrong, reason: reason.trim() };
    if (!(await keepReport((reporter) => takeBackReport(reporter, back)))) return;
    setReason(null);
    go(`/at/${placeToReportAt(wrong)}`);
  };
  return (
    <Page
      above={`${entry.words}, ${whenWords(entry.clock.at, here.at)}`}
      title="What is wrong with it?"
      acts={
        <>
          <NotKept words={notKept} />
          <Link className="btn" href="/sent">
            Leave it so
          </Link>
          <Main waits={waits} small="Then report it as it is" onPress={() => void keep()}>
            Take back
          </Main>
        </>
      }
    >
      <ul className="rows">
        {said.map((each) => (
          <TickRow key={each.id} ticked={wrong.includes(each)} onTurn={() => turn(each.id)}>
            {'drum' in each && <DrumNumber number={each.drum} />} {saidOf(each)}
          </TickRow>
        ))}
      </ul>
      <div className="grid">
        <label className="field">
          What was wrong
          <input value={reason} maxLength={200} onChange={({ target }) => setReason(target.value)} />
        </label>
      </div>
      <Notice
        kind="note"
        word="It stays written."
        title="What base knows already goes back when base has heard."
      />
    </Page>
  );
};

const NothingTo = ({ entry }: { readonly entry: ShownEntry | undefined }) => (
  <Page
    title="Nothing to take back"
    acts={
      <Link className="btn" href="/sent">
        Back
      </Link>
    }
  >
    <p className="said">
      {entry === undefined
        ? 'No such report on this phone.'
        : 'It is taken back already, or it is a hold: fuel quality takes that off. Tell base.'}
    </p>
  </Page>
);
