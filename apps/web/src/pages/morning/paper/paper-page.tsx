import './paper.css';
import { addDays } from '@drumline/units';
import { useRef, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { z } from 'zod';
import { useCalendar, useRead } from '../../../api/index.js';
import { isWaiting, useLines } from '../../../paper/kept-lines.js';
import { Button, Choice, Entry, Field, Picture, SlipLinks, TitleBlock } from '../../../ui/index.js';
import { EnteredList } from './entered-list.js';
import { EntryLine, type LineField } from './entry-line.js';
import { fillsAreOthers } from './fill-doubts.js';
import { paperEntriesSchema } from './paper-read.js';
import type { Sheet } from './sheet.js';
import { SheetLines } from './sheet-lines.js';
import { examples, startsOf } from './starts.js';
import { type Head, useSheet } from './use-sheet.js';

const morningSchema = z.looseObject({ since: z.string(), handedOverAt: z.string().nullable() });

/** What crews wrote or said while nobody could enter it: line by line, kept here until base has it. */
export const PaperPage = () => {
  const calendar = useCalendar();
  const [asked] = useSearchParams();
  const [said, setSaid] = useState<Partial<Head>>(() => askedDay(asked.get('day')));
  const head: Head = { day: calendar.today, means: 'paper', by: '', ...said };
  const sheet = useSheet(head);
  const lines = useLines();
  const field = useRef<LineField>(null);
  const begin = (text: string) => field.current?.begin(text);
  const waiting = lines.filter(isWaiting).length;
  return (
    <>
      <TitleBlock title="Radio and paper" sub={<Link href="/morning">Morning</Link>} acts={<SlipLinks />}>
        <Field label="Lines waiting" state={waiting > 0 ? 'stale' : 'plain'}>
          {waiting === 0 ? 'none' : waiting}
        </Field>
        <Field label="Just gone to base">{lines.length - waiting}</Field>
      </TitleBlock>
      <div className="work-and-side paper">
        <div className="work">
          <SheetHead head={head} onHead={setSaid} />
          <EntryLine sheet={sheet} field={field} />
          <Starts sheet={sheet} onStart={begin} />
          <h2>This sheet</h2>
          <SheetLines onChange={begin} />
          <Entered />
        </div>
        <aside className="side">
          <HowToWrite sheet={sheet} onExample={begin} />
        </aside>
      </div>
    </>
  );
};

/** A flight of another day may be what somebody comes here for. */
const askedDay = (day: string | null): Partial<Head> =>
  day !== null && /^\d{4}-\d\d-\d\d$/.test(day) ? { day } : {};

interface SheetHeadProps {
  readonly head: Head;
  readonly onHead: (head: Head) => void;
}

/** What every line of one sheet has in common; a line may say otherwise. */
const SheetHead = ({ head, onHead }: SheetHeadProps) => {
  const calendar = useCalendar();
  const days = Array.from({ length: 14 }, (_, back) => addDays(calendar.today, -back));
  return (
    <div className="paper-head">
      <Choice
        label="Day of the sheet"
        value={head.day}
        options={days.map((day) => [day, calendar.date(day)])}
        onChange={(day) => onHead({ ...head, day })}
      />
      <Choice
        label="How it came"
        value={head.means}
        options={[
          ['paper', 'from paper'],
          ['radio', 'by radio'],
        ]}
        onChange={(means) => onHead({ ...head, means })}
      />
      <Entry
        label="Said or written by"
        value={head.by}
        onChange={(by) => onHead({ ...head, by })}
        note="Empty: the flight's own pilot. A line may say by RW1, written 0810, on Tue."
        input={{ maxLength: 100, autoComplete: 'off' }}
      />
    </div>
  );
};

const Starts = ({ sheet, onStart }: { readonly sheet: Sheet; readonly onStart: (text: string) => void }) => {
  const starts = startsOf(sheet, useLines());
  if (starts.length === 0) return null;
  return (
    <fieldset className="paper-starts">
      <legend>Likely next</legend>
      {starts.map((start, at) => (
        <Button
          key={start}
          small
          {...(at < 9 ? { press: String(at + 1) } : {})}
          onPress={() => onStart(start)}
        >
          {start.trim()}
        </Button>
      ))}
    </fieldset>
  );
};

/** Since the evening before, or since the shift took over where that was earlier. */
const Entered = () => {
  const { when } = useCalendar();
  const morning = useRead('/api/morning', morningSchema).value;
  const since = morning === undefined ? undefined : (morning.handedOverAt ?? morning.since);
  const read = useRead(since === undefined ? null : `/api/paper-entries?since=${since}`, paperEntriesSchema);
  return (
    <>
      <h2>Entered by radio and from paper{since !== undefined && <small> since {when(since)}</small>}</h2>
      <Picture read={read}>{(entries) => <EnteredList entries={entries} />}</Picture>
    </>
  );
};

interface HowToWriteProps {
  readonly sheet: Sheet;
  readonly onExample: (text: string) => void;
}

const HowToWrite = ({ sheet: { mayFill }, onExample }: HowToWriteProps) => (
  <section className="section paper-how">
    <h2>How a line is written</h2>
    <ul>
      {examples.map(([line, what]) => (
        <li key={line}>
          <button type="button" className="plain-link" onClick={() => onExample(line)}>
            {line}
          </button>
          <small>{line.startsWith('filled') && !mayFill ? fillsAreOthers : what}</small>
        </li>
      ))}
    </ul>
    <p>
      The time with a colon, or at 0805. Nothing is refused because the book says otherwise: a doubt is asked,
      and the line is kept as it is written. An error is corrected by a later entry; nothing is deleted.
    </p>
  </section>
);
