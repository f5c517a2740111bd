import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { type Calendar, post, put, useAct, useSettings } from '../../../api/index.js';
import { Button, Choice, Entry, inWords, MessageLine, ProblemLine } from '../../../ui/index.js';
import type { BookedRow } from '../list/flight-list.js';
import { type Asked, type BookedLoad, countOf } from './booked-read.js';
import { followsWords, landingWords } from './booked-words.js';
import { RestedEntry } from './rested-entry.js';

interface AddDrumsProps {
  readonly booked: BookedRow;
  readonly load: BookedLoad;
  readonly asked: Asked;
  /** `load` answers what was asked before: the answer to what is asked now is on its way. */
  readonly isOfBefore: boolean;
  readonly calendar: Calendar;
  readonly onAsk: (asked: Asked) => void;
}

/** What would follow is said before the press: drums, levels, cost; or the rule that refuses it, and the legs that could take them. */
export const AddDrums = ({ booked, load, asked, isOfBefore, calendar, onAsk }: AddDrumsProps) => {
  const { place, drums } = load.asked;
  const [typedApproval, setTypedApproval] = useState(asked.approval);
  const currency = useSettings().value?.data.currency ?? '';
  const typed = asked.drums ?? String(drums);
  const count = countOf(typed);
  const add = useAdd(booked, { place, drums }, asked.approval.trim());
  const ask = (change: Partial<Asked>) => {
    add.clear();
    onAsk({ ...asked, ...change });
  };
  const isStale = isOfBefore || typedApproval !== asked.approval;
  const off = whyOff({ count, isOfBefore: isStale, isRefused: load.faults.length > 0 });
  return (
    <section className="section load-add" aria-label="Add drums">
      <h2>Add drums</h2>
      <form
        className="names"
        onSubmit={(event) => {
          event.preventDefault();
          if (off === undefined) void add.run();
        }}
      >
        <Choice
          label="Come off at"
          value={asked.place ?? place}
          options={
            load.landings.length === 0
              ? [[place, place]]
              : load.landings.map((each) => [each.place, landingWords(each)] as const)
          }
          onChange={(to) => ask({ place: to })}
        />
        <Entry
          label="How many"
          value={typed}
          onChange={(text) => ask({ drums: text })}
          unit="drums"
          input={{ inputMode: 'numeric' }}
        />
        <RestedEntry
          label="Approval of the authority, if one is cited"
          typed={typedApproval}
          onType={setTypedApproval}
          asked={asked.approval}
          onAsk={(approval) => ask({ approval })}
        />
        <Button type="submit" kind="main" busy={add.isSending} offBecause={off}>
          Add {inWords(count ?? 0, 'drums')}
        </Button>
      </form>
      <ProblemLine problem={add.problem} />
      {count === drums && <WhatFollows {...{ load, currency, calendar }} />}
    </section>
  );
};

const useAdd = ({ id, version, data }: BookedRow, stop: BookedLoad['asked'], cited: string) => {
  const [, navigate] = useLocation();
  const path = `/api/booked-flights/${encodeURIComponent(id)}`;
  return useAct(async () => {
    if (cited !== '' && cited !== data.approval) await put(path, { ...data, approval: cited }, { version });
    await post(`${path}/drums`, { ...stop, ...(cited === '' ? {} : { approval: cited }) });
    navigate(`/load/${encodeURIComponent(id)}`);
    return true;
  });
};

interface Standing {
  readonly count: number | null;
  readonly isOfBefore: boolean;
  readonly isRefused: boolean;
}

const whyOff = ({ count, isOfBefore, isRefused }: Standing): string | undefined => {
  if (count === null || count === 0) return 'A whole number of drums, from 1 to 100.';
  if (isOfBefore) return 'Checking...';
  return isRefused ? 'Refused: why stands below.' : undefined;
};

interface WhatFollowsProps {
  readonly load: BookedLoad;
  readonly currency: string;
  readonly calendar: Calendar;
}

const WhatFollows = ({ load, currency, calendar }: WhatFollowsProps) => (
  <>
    {load.faults.length > 0 && <Refused load={load} />}
    <ul className="load-follows">
      {followsWords(load, currency).map((words) => (
        <li key={words}>{words}</li>
      ))}
      {load.asked.drums > 0 && load.faults.length === 0 && (
        <li>They are offered: somebody approves them on Week.</li>
      )}
    </ul>
    {(load.faults.length > 0 || load.landings.every(({ drums }) => drums === 0)) && (
      <LegsThatCan instead={load.instead} calendar={calendar} />
    )}
  </>
);

const Refused = ({ load: { faults } }: { readonly load: BookedLoad }) => (
  <MessageLine what="Refused">
    <ul>
      {faults.map(({ path, problem, remedy }) => (
        <li key={path + problem}>
          <b>{problem}</b> {remedy}
        </li>
      ))}
    </ul>
  </MessageLine>
);

const LegsThatCan = ({
  instead,
  calendar,
}: {
  readonly instead: BookedLoad['instead'];
  readonly calendar: Calendar;
}) => (
  <>
    <h3>Legs that can</h3>
    {instead.length === 0 && <p>No other booked flight has room for a drum.</p>}
    <ul className="load-instead">
      {instead.map(({ flight, date, words }) => (
        <li key={flight}>
          <Link href={`/load/${encodeURIComponent(flight)}`}>{words}</Link>, {calendar.day(date)}
        </li>
      ))}
    </ul>
  </>
);
