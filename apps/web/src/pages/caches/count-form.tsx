import { toleranceOfCount } from '@drumline/stock';
import { litres as asLitres } from '@drumline/units';
import { useState } from 'react';
import { z } from 'zod';
import { newId, put, useAct, useCalendar, useRead } from '../../api/index.js';
import { ActForm, Button, Choice, Entry, inWords, ProblemLine } from '../../ui/index.js';
import { countAgainstBook } from './cache-words.js';
import type { Cache } from './caches-read.js';
import { instantOfTime, litresTyped } from './seen-at.js';

interface FormProps {
  readonly cache: Cache;
  readonly onClose: (done?: string) => void;
}

const policySchema = z.object({
  data: z.object({
    countTolerance: z.object({
      percentOfBook: z.number(),
      litresPerOpenDrum: z.number(),
      reference: z.string(),
    }),
  }),
});

/** What somebody saw at the place; what follows from it is read before it is sent. */
export const CountForm = ({ cache, onClose }: FormProps) => {
  const calendar = useCalendar();
  const [id] = useState(newId);
  const [method, setMethod] = useState<'dip' | 'drums seen'>('dip');
  const [seenFrom, setSeenFrom] = useState<'ground' | 'air'>('ground');
  const [typed, setTyped] = useState('');
  const [sealed, setSealed] = useState(String(cache.stock.sealedDrums));
  const [openDrums, setOpenDrums] = useState(String(cache.stock.partUsedDrums));
  const [empty, setEmpty] = useState(String(cache.stock.emptyDrums));
  const [at, setAt] = useState(() => calendar.time(calendar.now));
  const [by, setBy] = useState('');
  const litres = litresTyped(typed);
  const happenedAt = instantOfTime(at, calendar);
  const drums = [sealed, openDrums, empty].map(litresTyped);
  const tolerance = useTolerance(cache, drums[1] ?? 0);
  const missing = missingWords(litres, happenedAt, drums);
  const send = useAct((body: object) => put(`/api/movements/${id}`, body));
  const submit = async () => {
    if (missing !== undefined || send.isSending) return;
    const written = {
      happenedAt,
      writtenAt: calendar.now.toISOString(),
      means: by === '' ? 'screen' : 'radio',
    };
    const [sealedDrums, openCount, emptyDrums] = drums;
    const done = await send.run({
      kind: 'counted',
      ...written,
      ...(by === '' ? {} : { by }),
      place: cache.place,
      method,
      seenFrom,
      millilitres: litres! * 1000,
      sealedDrums,
      openDrums: openCount,
      emptyDrums,
    });
    if (done !== undefined) onClose(`${cache.place}: count of ${inWords(litres!, 'L')} is in the ledger.`);
  };
  return (
    <ActForm
      title={`Enter count, ${cache.place}`}
      onClose={() => onClose()}
      onSubmit={() => void submit()}
      acts={
        <Button kind="main" type="submit" busy={send.isSending} offBecause={missing}>
          Enter count
        </Button>
      }
    >
      <div className="two">
        <Choice
          label="How"
          value={method}
          options={[
            ['dip', 'dip'],
            ['drums seen', 'drums seen'],
          ]}
          onChange={setMethod}
        />
        <Choice
          label="Seen"
          value={seenFrom}
          options={[
            ['ground', 'on the ground'],
            ['air', 'from the air'],
          ]}
          onChange={setSeenFrom}
        />
      </div>
      <Entry
        label="Fuel found"
        unit="L"
        askedFirst
        value={typed}
        onChange={setTyped}
        input={{ inputMode: 'numeric' }}
        doubt={
          litres === undefined || tolerance === undefined
            ? undefined
            : countAgainstBook(litres, cache.stock.bookLitres, tolerance)
        }
      />
      <div className="three">
        <Entry
          label="Sealed"
          unit="drums"
          value={sealed}
          onChange={setSealed}
          input={{ inputMode: 'numeric' }}
        />
        <Entry
          label="Open"
          unit="drums"
          value={openDrums}
          onChange={setOpenDrums}
          input={{ inputMode: 'numeric' }}
        />
        <Entry
          label="Empty"
          unit="drums"
          value={empty}
          onChange={setEmpty}
          input={{ inputMode: 'numeric' }}
        />
      </div>
      <div className="two">
        <Entry label="Time seen" value={at} onChange={setAt} input={{ size: 5 }} />
        <Entry label="Counted by, if not you" value={by} onChange={setBy} input={{ maxLength: 60 }} />
      </div>
      <ProblemLine problem={send.problem} />
    </ActForm>
  );
};

/** As the server will judge it: the operator's share of the book, or so many litres an open drum. */
const useTolerance = ({ stock }: Cache, openDrums: number): number | undefined => {
  const tolerance = useRead('/api/policy/current', policySchema).value?.data.countTolerance;
  if (tolerance === undefined) return undefined;
  const { reference, percentOfBook, litresPerOpenDrum } = tolerance;
  const rule = {
    reference,
    percentOfBook,
    litresPerOpenDrum: asLitres(litresPerOpenDrum),
  };
  return toleranceOfCount(asLitres(stock.bookLitres), openDrums, rule);
};

const missingWords = (
  litres: number | undefined,
  at: string | undefined,
  drums: readonly (number | undefined)[],
): string | undefined => {
  if (litres === undefined) return 'Write the litres found; 0 where there is nothing.';
  if (drums.includes(undefined)) return 'Write the drums seen; 0 where there are none.';
  return at === undefined ? 'Write the time as 06:10.' : undefined;
};
