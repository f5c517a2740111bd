import { useState } from 'react';
import { put, remove, useAct, useCalendar, useMay, useMe } from '../../../api/index.js';
import { ActForm, Button, Choice, Entry, inWords, Lines, ProblemLine } from '../../../ui/index.js';
import type { DifferenceCase } from './case-read.js';
import { type EntryLine, entryLines } from './entry-words.js';

const causes = ['recount', 'missing report', 'spill', 'theft', 'unknown'] as const;

/** Book and count differ beyond the tolerance: what may explain it, who is still to be heard, and closing it by two. */
export const CasePanel = ({ difference }: { readonly difference: DifferenceCase }) => {
  const { when } = useCalendar();
  const { differenceMillilitres, toleranceMillilitres, countedMillilitres, bookMillilitres } = difference;
  const { place, countedBy, counted, agreed } = difference;
  return (
    <section className="section case" aria-label={`Difference case, ${place}`}>
      <h3>
        Difference case <span className="band">open</span>
      </h3>
      <p>
        {place} count is <b>{litresOf(Math.abs(differenceMillilitres))}</b>{' '}
        {differenceMillilitres < 0 ? 'short' : 'over'}, {litresOf(toleranceMillilitres)} allowed: counted{' '}
        {litresOf(countedMillilitres)} {when(counted.happenedAt)} by {countedBy.join(' and ')}, book{' '}
        {litresOf(bookMillilitres)}.
        {differenceMillilitres < 0 && ` The projection uses ${litresOf(countedMillilitres)}.`}
      </p>
      <Since
        difference={difference}
        since={agreed === null ? 'the ledger was opened' : `the agreed count of ${when(agreed.happenedAt)}`}
      />
      <p>{heardWords(difference)}</p>
      <Closing difference={difference} />
    </section>
  );
};

const heardWords = ({ place, notHeardFrom, peopleWithDevice }: DifferenceCase): string => {
  if (notHeardFrom.length > 0)
    return `Not heard from since the count: ${notHeardFrom.map(({ person, device }) => `${person} (${device})`).join(', ')}.`;
  return peopleWithDevice === 0
    ? `Nobody in the field has a device that is signed in: ask ${place} by radio for reports not yet sent.`
    : 'Every phone of the field has been heard from since the count.';
};

const Since = ({ difference, since }: { readonly difference: DifferenceCase; readonly since: string }) => {
  const { when } = useCalendar();
  const rows = entryLines(difference.movementsSince);
  if (rows.length === 0)
    return (
      <p>
        No entry at {difference.place} since {since}.
      </p>
    );
  return (
    <div className="since">
      <Lines<EntryLine>
        caption={`Entries since ${since}`}
        rows={rows}
        keyOf={({ at, words, by }) => at + words + by}
        columns={[
          { head: 'When', heads: true, cell: ({ at }) => when(at) },
          { head: 'Entry', cell: ({ words }) => words },
          { head: 'By', cell: ({ by, means }) => `${by}, ${means}` },
        ]}
      />
    </div>
  );
};

/** Two people who did not count. The first says what was found, the second agrees. */
const Closing = ({ difference }: { readonly difference: DifferenceCase }) => {
  const { fullName, id: me } = useMe();
  const may = useMay();
  const [isOpen, setOpen] = useState(false);
  const agree = useAct((id: string) => put(`/api/proposals/${id}/agreement`));
  const withdraw = useAct((id: string) => remove(`/api/proposals/${id}`));
  if (!may('close difference case', 'enter'))
    return <p>Two others close it: operations manager or fuel quality.</p>;
  const counter = difference.countedBy.includes(fullName)
    ? 'You made this count: someone else must close its case.'
    : undefined;
  const waiting = difference.proposals;
  return (
    <>
      {waiting.map(({ id, payload, agreedBy, proposedBy }) => (
        <div key={id} className="waiting">
          <p>
            <b>Proposed: {payload.cause}.</b> "{payload.words}" {agreedBy.join(', ')} agreed; a second person
            closes it.
          </p>
          {proposedBy === me ? (
            <Button small busy={withdraw.isSending} onPress={() => void withdraw.run(id)}>
              Withdraw
            </Button>
          ) : (
            <Button
              small
              kind="grave"
              busy={agree.isSending}
              offBecause={counter}
              onPress={() => void agree.run(id)}
            >
              Agree and close
            </Button>
          )}
        </div>
      ))}
      <ProblemLine problem={agree.problem ?? withdraw.problem} />
      {isOpen ? (
        <ClosingForm difference={difference} onClose={() => setOpen(false)} />
      ) : (
        waiting.length === 0 && (
          <Button small kind="grave" offBecause={counter} onPress={() => setOpen(true)}>
            Close difference case
          </Button>
        )
      )}
    </>
  );
};

const ClosingForm = ({
  difference,
  onClose,
}: {
  readonly difference: DifferenceCase;
  readonly onClose: () => void;
}) => {
  const [cause, setCause] = useState<(typeof causes)[number]>('recount');
  const [words, setWords] = useState('');
  const send = useAct(() => put(`/api/cases/${difference.count}/closing`, { cause, words }));
  const off = words.trim() === '' ? 'Say in a few words what was found.' : undefined;
  const submit = async () => {
    if (off === undefined && !send.isSending && (await send.run()) !== undefined) onClose();
  };
  return (
    <ActForm
      title={`Close difference case, ${difference.place}`}
      onClose={onClose}
      onSubmit={() => void submit()}
      acts={
        <Button kind="last" type="submit" busy={send.isSending} offBecause={off}>
          Propose closing
        </Button>
      }
    >
      <p>
        {cause === 'recount' || difference.differenceMillilitres > 0
          ? `The book of ${litresOf(difference.bookMillilitres)} counts again`
          : `The ${litresOf(-difference.differenceMillilitres)} not found stay off usable stock, until entries or a new count say otherwise,`}{' '}
        once a second person, who did not count, agrees.
      </p>
      <Choice
        label="What was found"
        value={cause}
        options={causes.map((each) => [each, each] as const)}
        onChange={setCause}
      />
      <Entry label="In words" value={words} onChange={setWords} input={{ maxLength: 300 }} />
      <ProblemLine problem={send.problem} />
    </ActForm>
  );
};

const litresOf = (millilitres: number): string => inWords(millilitres / 1000, 'L');
