import { Link } from 'wouter';
import { Main, Notice, NotKept, Page, type Person, type ShownEntry, useDraft } from '../../phone/index.js';
import { WhatWasSaid } from '../loaded/what-was-said.js';
import { toldWrong } from './reports.js';
import { useReporting } from './use-reporting.js';

interface TellWrongProps {
  readonly entry: ShownEntry;
  readonly flight: string;
  readonly person: Person;
}

/** What only base can put right: when a flight took off, landed, was loaded or refused. */
export const TellWrong = ({ entry, flight, person }: TellWrongProps) => {
  const [words, setWords] = useDraft(`wrong ${entry.seq}`, '');
  const { report, notKept } = useReporting(person);
  const said = `${entry.words}, ${entry.clock.at.slice(0, 16)}Z`;
  const keep = () =>
    report(
      (reporter) => toldWrong(reporter, flight, { said, words }),
      '/sent',
      () => setWords(null),
    );
  return (
    <Page
      above={<WhatWasSaid entry={entry} />}
      title="What is wrong with it?"
      acts={
        <>
          <NotKept words={notKept} />
          <Link className="btn" href="/sent">
            Leave it so
          </Link>
          <Main waits={words.trim() === '' ? 'In a few words' : null} onPress={() => void keep()}>
            Tell base
          </Main>
        </>
      }
    >
      <Notice kind="note" word="Base puts it right." title="The report stays written.">
        The dispatcher gets what you say here to look at.
      </Notice>
      <div className="grid">
        <label className="field">
          What is so
          <input value={words} maxLength={300} onChange={({ target }) => setWords(target.value)} />
        </label>
      </div>
    </Page>
  );
};
