import { useState } from 'react';
import { newId, put, useAct, useCalendar, useMay, useRead } from '../../../api/index.js';
import { Button, EmptyLine, Entry, Picture, ProblemLine, Tick } from '../../../ui/index.js';
import type { Address, Go } from '../address.js';
import { pageOf, type RaisedThing, raisedSchema } from '../drums-read.js';
import { DrumLink } from './drum-link.js';

/** What reports have left to be looked at; nothing of it was refused. */
export const RaisedView = ({ address: { word, go } }: { readonly address: Address }) => {
  const showsAll = word('seen') === 'too';
  const read = useRead(`/api/raised?limit=100${showsAll ? '&state=all' : ''}`, pageOf(raisedSchema));
  return (
    <section className="section" aria-label="Raised">
      <h2>
        Raised, to be looked at <small>what can hurt people first, then the newest</small>
      </h2>
      <Tick
        label="Those that were seen, too"
        checked={showsAll}
        onChange={(on) => go({ seen: on ? 'too' : null })}
      />
      <Picture read={read}>
        {({ items, next }) => (
          <>
            {items.length === 0 && <EmptyLine>Nothing to look at.</EmptyLine>}
            {items.map((thing) => (
              <Thing key={thing.id} thing={thing} go={go} />
            ))}
            {next !== null && (
              <p className="drums-note">More than 100. Older ones follow as these are seen.</p>
            )}
          </>
        )}
      </Picture>
    </section>
  );
};

const Thing = ({ thing, go }: { readonly thing: RaisedThing; readonly go: Go }) => {
  const { when } = useCalendar();
  const { what, whatNext, drum, raisedAt, lastAct } = thing;
  return (
    <article className="drums-thing">
      <p>
        <b>{what}</b> {whatNext}
      </p>
      <p>
        <small>{raisedAt === null ? 'so now' : `raised ${when(raisedAt)}`}</small>{' '}
        {drum !== null && <DrumLink number={drum} go={go} />}
      </p>
      {lastAct !== null && (
        <p>
          <small>
            {lastAct.act === 'seen' ? 'Seen' : 'Opened again'} by {lastAct.person}, {when(lastAct.at)}:{' '}
            {lastAct.words}
          </small>
        </p>
      )}
      <LookAt thing={thing} />
    </article>
  );
};

const LookAt = ({ thing }: { readonly thing: RaisedThing }) => {
  const may = useMay();
  const [isOpen, setOpen] = useState(false);
  const [words, setWords] = useState('');
  const act = thing.isSeen ? 'open again' : 'seen';
  const send = useAct(
    (id: string) => put(`/api/raised-acts/${id}`, { raised: thing.id, act, words: words.trim() }),
    '/api/raised',
  );
  const [id] = useState(newId);
  if (!may('look at raised', 'enter')) return null;
  const press = thing.isSeen ? 'To be looked at again' : 'Mark as seen';
  if (!isOpen)
    return (
      <Button small onPress={() => setOpen(true)}>
        {press}
        <span className="unseen">: {thing.what}</span>
      </Button>
    );
  return (
    <form
      className="drums-form"
      aria-label={press}
      onSubmit={(event) => {
        event.preventDefault();
        if (words.trim() !== '') void send.run(id);
      }}
      onKeyDown={(event) => event.key === 'Escape' && setOpen(false)}
    >
      <Entry
        label={thing.isSeen ? 'Why it is to be looked at again' : 'What it was'}
        value={words}
        onChange={setWords}
        input={{ maxLength: 300, autoFocus: true }}
      />
      <ProblemLine problem={send.problem} />
      <div className="drums-acts">
        <Button
          kind="main"
          type="submit"
          busy={send.isSending}
          offBecause={words.trim() === '' ? 'Write what it was.' : undefined}
        >
          {press}
        </Button>
        <Button onPress={() => setOpen(false)}>Leave it</Button>
      </div>
    </form>
  );
};
