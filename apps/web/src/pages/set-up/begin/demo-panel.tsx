import { useState } from 'react';
import { Link } from 'wouter';
import { z } from 'zod';
import { post, useAct, useCalendar, useMay } from '../../../api/index.js';
import { Button, Entry, inWords, MessageLine, ProblemLine } from '../../../ui/index.js';

export const demoSchema = z.object({
  canLoad: z.boolean(),
  loaded: z
    .object({
      at: z.string(),
      entered: z.object({
        movements: z.number(),
        flights: z.number(),
        plans: z.number(),
        changes: z.number(),
      }),
    })
    .optional(),
});
export type Demo = z.output<typeof demoSchema>;

const importedSchema = z.object({ places: z.number(), drums: z.number() });

/** Loads the invented territory. */
export const LoadDemo = () => {
  const load = useAct(() => post('/api/demo/load', {}, { schema: importedSchema }), '/api/');
  const mayLoad = useMay()('import and export', 'enter');
  return (
    <section className="section">
      <h2>Look around first</h2>
      <p className="read">
        The invented territory Hollowtarn Uplands: 16 places, 186 drums, a fortnight in June 2027 with its own
        clock. It is removed again by one act.
      </p>
      <Button
        busy={load.isSending}
        offBecause={mayLoad ? undefined : 'The operations manager or set-up does this.'}
        onPress={() => void load.run()}
      >
        Load the demo
      </Button>
      <ProblemLine problem={load.problem} />
    </section>
  );
};

/** Takes the demo out again, with all that was entered since. */
export const RemoveDemo = ({ loaded }: { readonly loaded: NonNullable<Demo['loaded']> }) => {
  const { entered } = loaded;
  const { date } = useCalendar();
  const [word, setWord] = useState('');
  const mayRemove = useMay()('import and export', 'decide');
  const removeAll = useAct(() => post('/api/demo/remove', { word }), '/api/');
  const off = !mayRemove
    ? 'Only the operations manager removes it.'
    : word === 'remove'
      ? undefined
      : 'Type the word remove.';
  const since = [
    inWords(entered.movements, 'entries of stock'),
    inWords(entered.flights, 'flights'),
    inWords(entered.plans, 'plans'),
    inWords(entered.changes, 'changes of the territory'),
  ];
  return (
    <section className="section">
      <h2>
        Remove the demo <small>loaded {date(loaded.at)}</small>
      </h2>
      <p className="read">
        Everything goes with it: the invented territory, its stock, and what was entered since,{' '}
        {since.join(', ')}. People and the audit stay. It cannot be brought back.
      </p>
      <MessageLine
        kind="note"
        what="An own territory is begun on an empty installation"
        why="A ledger is only ever emptied where it began with the demo."
        next=""
      />
      <form
        className="set-up-inline"
        onSubmit={(event) => {
          event.preventDefault();
          if (off === undefined) void removeAll.run();
        }}
      >
        <Entry label="Word" value={word} onChange={setWord} input={{ autoComplete: 'off' }} />
        <Button kind="last" type="submit" busy={removeAll.isSending} offBecause={off}>
          Remove the demo and all entries
        </Button>
      </form>
      <ProblemLine problem={removeAll.problem} />
    </section>
  );
};

export const PlanLink = () => (
  <p className="read">
    <Link href="/week">Open the week and ask for a plan</Link>
  </p>
);
