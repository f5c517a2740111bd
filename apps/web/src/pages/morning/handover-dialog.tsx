import { useState } from 'react';
import { z } from 'zod';
import { newId, post, put, useAct, useCalendar, useMe, useRead } from '../../api/index.js';
import { Button, Dialog, EmptyLine, Entry, inWords, Picture, ProblemLine } from '../../ui/index.js';
import { type Handover, handoverSchema, type Signed, unreadOf } from './handover-read.js';
import { handoverLines } from './handover-words.js';
import type { Morning } from './morning-read.js';
import { type PaperEntries, paperEntriesSchema } from './paper/paper-read.js';

const listSchema = z.object({ items: z.array(handoverSchema) });

interface HandoverDialogProps {
  readonly morning: Morning;
  readonly onClose: () => void;
}

/** The list that waits to be signed for, or the one that would be handed over now; below it the earlier ones. */
export const HandoverDialog = ({ morning, onClose }: HandoverDialogProps) => {
  const read = useRead('/api/handovers?limit=6', listSchema);
  const [takenOver, setTakenOver] = useState<string>();
  return (
    <Dialog title="Handover" onClose={onClose}>
      <Picture read={read}>
        {({ items: [latest, ...earlier] }) => {
          const isOpen = latest !== undefined && latest.closed === null;
          const past = isOpen || latest === undefined ? earlier : [latest, ...earlier];
          return (
            <>
              {isOpen && <OpenHandover handover={latest} onTakenOver={() => setTakenOver(latest.id)} />}
              {!isOpen && latest !== undefined && latest.id === takenOver && (
                <TakenOver handover={latest} onClose={onClose} />
              )}
              {!isOpen && (latest === undefined || latest.id !== takenOver) && (
                <NewHandover morning={morning} />
              )}
              {past.length > 0 && <h3>Earlier</h3>}
              {past.map((handover) => (
                <PastHandover key={handover.id} handover={handover} />
              ))}
            </>
          );
        }}
      </Picture>
    </Dialog>
  );
};

const NewHandover = ({ morning }: { readonly morning: Morning }) => {
  const since = morning.handedOverAt ?? morning.since;
  const read = useRead(`/api/paper-entries?since=${since}`, paperEntriesSchema);
  return <Picture read={read}>{(entries) => <HandoverNow morning={morning} entries={entries} />}</Picture>;
};

interface HandoverNowProps {
  readonly morning: Morning;
  readonly entries: PaperEntries;
}

const HandoverNow = ({ morning, entries }: HandoverNowProps) => {
  const calendar = useCalendar();
  const [id] = useState(newId);
  const [said, setSaid] = useState('');
  const lines = handoverLines({ morning, entries, said: said.trim() === '' ? [] : [said.trim()] }, calendar);
  const start = useAct(() => put(`/api/handovers/${id}`, { items: lines }));
  return (
    <>
      <Entry
        label="What else the next person must hear"
        value={said}
        onChange={setSaid}
        input={{ maxLength: 500, autoComplete: 'off' }}
      />
      <ol className="handover-items" aria-label="What is handed over">
        {lines.map(({ kind, words }) => (
          <li key={`${kind} ${words}`}>
            <b>{kind}</b> {words}
          </li>
        ))}
      </ol>
      <Button
        kind="main"
        busy={start.isSending}
        offBecause={
          lines.length === 0
            ? 'Nothing is open: write one line, so that there is something to sign.'
            : undefined
        }
        onPress={() => void start.run()}
      >
        Hand over {inWords(lines.length, 'items')}
      </Button>
      <ProblemLine problem={start.problem} />
    </>
  );
};

interface TakenOverProps {
  readonly handover: Handover;
  readonly onClose: () => void;
}

/** The press has worked: from whom, when, and how much was signed for. */
const TakenOver = ({ handover: { from, closed, items }, onClose }: TakenOverProps) => {
  const { when } = useCalendar();
  return (
    <>
      <p role="status">
        <b className="pine">
          Taken over {closed === null ? '' : `${when(closed.at)} `}from {from},{' '}
          {inWords(items.length, 'items')} signed.
        </b>
      </p>
      <Button kind="main" onPress={onClose}>
        Back to Morning
      </Button>
    </>
  );
};

interface OpenHandoverProps {
  readonly handover: Handover;
  readonly onTakenOver: () => void;
}

const OpenHandover = ({ handover, onTakenOver }: OpenHandoverProps) => {
  const { when } = useCalendar();
  const isMine = useMe().id === handover.fromAccount;
  const path = `/api/handovers/${handover.id}`;
  const sign = useAct((item: number) => put(`${path}/items/${item}`, {}));
  const close = useAct(() => post(`${path}/close`, {}));
  const takeOver = async () => {
    if ((await close.run()) !== undefined) onTakenOver();
  };
  const unread = unreadOf(handover).length;
  return (
    <>
      <p>
        <b>{handover.from}</b> hands over, {when(handover.at)}.{' '}
        {isMine
          ? `The incoming person signs each item: ${unread} of ${inWords(handover.items.length, 'items')} to go.`
          : 'Sign each item as you have heard it.'}
      </p>
      <ol className="handover-items" aria-label="What is handed over">
        {handover.items.map(({ kind, words, signed }, index) => (
          <li key={`${kind} ${words}`}>
            <b>{kind}</b> {words} {signed !== null && <SignedBy {...signed} />}
            {signed === null && !isMine && (
              <Button small busy={sign.isSending} onPress={() => void sign.run(index + 1)}>
                Sign item {index + 1}
              </Button>
            )}
          </li>
        ))}
      </ol>
      {!isMine && (
        <Button
          kind="main"
          busy={close.isSending}
          offBecause={unread > 0 ? `${inWords(unread, 'items')} not signed for yet.` : undefined}
          onPress={() => void takeOver()}
        >
          Take over
        </Button>
      )}
      <ProblemLine problem={sign.problem ?? close.problem} />
    </>
  );
};

const SignedBy = ({ by, at, note }: Signed) => {
  const { when } = useCalendar();
  return (
    <span className="pine">
      Signed {when(at)}, {by}
      {note !== null && `: ${note}`}
    </span>
  );
};

const PastHandover = ({ handover: { from, at, closed, items } }: { readonly handover: Handover }) => {
  const { when } = useCalendar();
  return (
    <details>
      <summary>
        {when(at)}, {from} to {closed === null ? 'nobody yet' : `${closed.by}, ${when(closed.at)}`},{' '}
        {inWords(items.length, 'items')}
      </summary>
      {items.length === 0 && <EmptyLine>Nothing was on it.</EmptyLine>}
      <ol className="handover-items">
        {items.map(({ kind, words, signed }) => (
          <li key={`${kind} ${words}`}>
            <b>{kind}</b> {words} {signed !== null && <SignedBy {...signed} />}
          </li>
        ))}
      </ol>
    </details>
  );
};
