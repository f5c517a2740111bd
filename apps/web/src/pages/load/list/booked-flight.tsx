import './list.css';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { z } from 'zod';
import { type Calendar, post, put, useAct, useMay } from '../../../api/index.js';
import {
  Button,
  Choice,
  Entry,
  Field,
  inWords,
  Lines,
  MessageLine,
  ProblemLine,
  TitleBlock,
} from '../../../ui/index.js';
import { type BookedRow, bookedRoute } from './flight-list.js';

const checkSchema = z.object({
  faults: z.array(z.object({ path: z.string(), problem: z.string(), remedy: z.string() })),
  instead: z.array(z.object({ flight: z.string(), date: z.string(), drums: z.number(), words: z.string() })),
});

type Check = z.output<typeof checkSchema>;

interface BookedFlightProps {
  readonly booked: BookedRow;
  readonly calendar: Calendar;
}

/** A flight that flies anyway: its legs, and drums that may be added to it. */
export const BookedFlight = ({ booked, calendar }: BookedFlightProps) => {
  const { id, data } = booked;
  const mayAdd = useMay()('approve flight', 'decide');
  return (
    <>
      <TitleBlock
        title={`${id}, load`}
        sub={bookedRoute(data)}
        acts={
          <Link href="/load" className="load-all">
            All flights
          </Link>
        }
      >
        <Field label="Aircraft">{data.aircraft}</Field>
        <Field label="Off" note={`takes ${inWords(data.heldHours, 'h', 1)}`}>
          {calendar.day(data.date)}, {data.departs ?? 'hour not set'}
        </Field>
        <Field label="For">{data.purpose}</Field>
        <Field label="Approval cited">{data.approval ?? 'none'}</Field>
      </TitleBlock>
      <div className="work load-list">
        <Lines
          caption="Legs"
          rows={data.legs}
          keyOf={({ from, to }) => `${from}-${to}`}
          numbered
          columns={[
            { head: 'Leg', heads: true, cell: ({ from, to }) => `${from}-${to}` },
            { head: 'Passengers', figures: true, cell: ({ passengers }) => passengers },
            { head: 'Freight', figures: true, cell: ({ freightKg }) => inWords(freightKg, 'kg') },
          ]}
        />
        {mayAdd && <AddDrums booked={booked} calendar={calendar} />}
      </div>
    </>
  );
};

/** What would follow is said before the press: the rule that refuses it, and the legs that could take them. */
const AddDrums = ({ booked, calendar }: BookedFlightProps) => {
  const { id, data } = booked;
  const landings = data.legs.slice(0, -1).map(({ to }) => to);
  const [place, setPlace] = useState(landings[0] ?? data.legs[0]!.to);
  const [drums, setDrums] = useState('2');
  const [approval, setApproval] = useState(data.approval ?? '');
  const [checked, setChecked] = useState<Check>();
  const [, navigate] = useLocation();
  const path = `/api/booked-flights/${encodeURIComponent(id)}`;
  const count = Number(drums);
  const cited = approval.trim();
  const wanted = { place, drums: count, ...(cited === '' ? {} : { approval: cited }) };
  const check = useAct(async () => {
    const { body } = await post(`${path}/drums/check`, wanted, { schema: checkSchema });
    setChecked(body);
  });
  const add = useAct(async () => {
    if (cited !== '' && cited !== data.approval)
      await put(path, { ...data, approval: cited }, { version: booked.version });
    await post(`${path}/drums`, wanted);
    navigate(`/load/${encodeURIComponent(id)}`);
    return true;
  });
  const isWhole = Number.isInteger(count) && count >= 1;
  const words = `${isWhole ? count : 0} ${count === 1 ? 'drum' : 'drums'}`;
  const change = (set: (value: string) => void) => (value: string) => {
    set(value);
    setChecked(undefined);
    check.clear();
    add.clear();
  };
  return (
    <section className="section load-add" aria-label="Add drums">
      <h2>Add drums</h2>
      <form
        className="names"
        onSubmit={(event) => {
          event.preventDefault();
          void check.run();
        }}
      >
        <Choice
          label="Come off at"
          value={place}
          options={(landings.length > 0 ? landings : [place]).map((each) => [each, each] as const)}
          onChange={change(setPlace)}
        />
        <Entry
          label="How many"
          value={drums}
          onChange={change(setDrums)}
          unit="drums"
          input={{ inputMode: 'numeric' }}
        />
        <Entry
          label="Approval of the authority, if one is cited"
          value={approval}
          onChange={change(setApproval)}
        />
        <Button
          type="submit"
          busy={check.isSending}
          offBecause={isWhole ? undefined : 'A whole number of drums, at least 1.'}
        >
          Add {words}
        </Button>
      </form>
      <ProblemLine problem={check.problem ?? add.problem} />
      {checked !== undefined && checked.faults.length > 0 && (
        <RefusedDrums checked={checked} calendar={calendar} />
      )}
      {checked !== undefined && checked.faults.length === 0 && (
        <MessageLine kind="note" what={`${words} may come off at ${place}`} why="Nothing is added yet.">
          <Button kind="main" busy={add.isSending} onPress={() => void add.run()}>
            Offer them
          </Button>
        </MessageLine>
      )}
    </section>
  );
};

const RefusedDrums = ({ checked, calendar }: { readonly checked: Check; readonly calendar: Calendar }) => (
  <>
    <MessageLine what="Refused">
      <ul>
        {checked.faults.map(({ path, problem, remedy }) => (
          <li key={path + problem}>
            <b>{problem}</b> {remedy}
          </li>
        ))}
      </ul>
    </MessageLine>
    <h3>Legs that can</h3>
    {checked.instead.length === 0 && <p>No other booked flight has room for a drum.</p>}
    <ul className="load-instead">
      {checked.instead.map(({ flight, date, words }) => (
        <li key={flight}>
          <Link href={`/load/${encodeURIComponent(flight)}`}>{words}</Link>, {calendar.day(date)}
        </li>
      ))}
    </ul>
  </>
);
