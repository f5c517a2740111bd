import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Choices, Main, Notice, NotKept, Page, type Person } from '../../phone/index.js';
import { legWords } from '../leg/leg-words.js';
import { useFlight } from '../use-flight.js';
import { type ProblemWhat, problem, refused } from './reports.js';
import { useReporting } from './use-reporting.js';

type Choice = ProblemWhat | 'drum' | 'refuse';

const choices: readonly { readonly value: Choice; readonly word: string }[] = [
  { value: 'drum', word: 'Drum leaking, dented or open' },
  { value: 'wrong drum', word: 'Wrong drum' },
  { value: 'cannot unload', word: 'Cannot unload' },
  { value: 'did not land', word: 'Did not land' },
  { value: 'aircraft', word: 'Aircraft' },
  { value: 'strip not as said', word: 'Strip not as said' },
  { value: 'other', word: 'Something else' },
  { value: 'refuse', word: 'I will not fly this' },
];

interface ProblemProps {
  readonly id: string;
  readonly leg: number;
  readonly person: Person;
}

/** Two taps, no form. */
export const ProblemPage = ({ id, leg, person }: ProblemProps) => {
  const here = useFlight(id);
  const [chosen, setChosen] = useState<Choice | null>(null);
  const [words, setWords] = useState('');
  const [, go] = useLocation();
  const { report, notKept } = useReporting(person);
  if (here === undefined || here === null) return <Page title={id} />;
  const { flight } = here;
  const to = flight.route[leg]!;
  const keep = () => {
    if (chosen === null) return;
    if (chosen === 'drum') go(`/${id}/back/${leg}/${to}`);
    else if (chosen === 'refuse') void report((reporter) => refused(reporter, flight), `/${id}/${leg}`);
    else void report((reporter) => problem(reporter, flight, { what: chosen, words }), `/${id}/${leg}`);
  };
  const leave = chosen === 'cannot unload' ? legWords(flight, leg - 1)?.leave : null;
  return (
    <Page
      above={
        <Link href={`/${id}/${leg}`}>
          {id} · {to}
        </Link>
      }
      title="What is the problem?"
      acts={
        <>
          <NotKept words={notKept} />
          <Main waits={chosen === null ? 'Choose one' : null} onPress={keep}>
            {chosen === 'drum' ? 'Which drum' : 'Keep'}
          </Main>
        </>
      }
    >
      <Choices legend="One of these" of={choices} chosen={chosen} onChoose={setChosen} />
      {leave !== null && leave !== undefined && (
        <Notice kind={leave.over ? 'stop' : 'note'} word="Unload or stay." title={leave.main}>
          {leave.rest.join('. ')}
        </Notice>
      )}
      {chosen === 'refuse' ? (
        <p className="said">Nothing more is asked. Base plans again.</p>
      ) : (
        chosen !== null &&
        chosen !== 'drum' && (
          <div className="grid">
            <label className="field">
              A few words if you like
              <input value={words} maxLength={300} onChange={({ target }) => setWords(target.value)} />
            </label>
          </div>
        )
      )}
    </Page>
  );
};
