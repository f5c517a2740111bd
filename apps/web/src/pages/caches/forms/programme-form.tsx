import { useState } from 'react';
import { put, useAct, useCalendar, useList } from '../../../api/index.js';
import { litresTyped } from '../../../counting/typed.js';
import { canMove } from '../../../slings/move-sling.js';
import { ActForm, Choice, Entry, inWords, ProblemLine } from '../../../ui/index.js';
import type { Cache } from '../caches-read.js';
import { ProgrammeActs } from './programme-acts.js';
import {
  helicopterSchema,
  keptSlingSchema,
  type Line,
  linesOf,
  litresAfter,
  taskSchema,
} from './programme-read.js';
import { TouchedCaches } from './touched-caches.js';
import { useConsequence } from './use-consequence.js';

interface ProgrammeFormProps {
  readonly cache: Cache;
  readonly dates: readonly string[];
  readonly onClose: (done?: string) => void;
}

interface Typed {
  readonly date: string;
  readonly hours: string;
  readonly litres: string;
  readonly drums: string;
}

/** A helicopter task or a sling of this cache: another day, other hours. What it does to the caches is shown first. */
export const ProgrammeForm = ({ cache, dates, onClose }: ProgrammeFormProps) => {
  const { day } = useCalendar();
  // As it was when it was chosen: somebody else's change meanwhile is told, not overwritten.
  const [line, setLine] = useState<Line>();
  const [typed, setTyped] = useState<Typed>();
  const tasks = useList('/api/helicopter-tasks', taskSchema).value ?? [];
  const slings = useList('/api/slings', keptSlingSchema).value ?? [];
  const helicopters = useList('/api/helicopters', helicopterSchema).value;
  // Not before it is known what the helicopters burn: hours typed sooner would leave the litres as they are.
  const lines = helicopters === undefined ? [] : linesOf(cache.place, dates, tasks, slings);
  const perHour = helicopters?.find(({ data }) => data.id === line?.kept.data.helicopter)?.data
    .fuelLitresPerHour;
  const choose = (id: string) => {
    const found = lines.find(({ kept }) => kept.id === id);
    setLine(found);
    setTyped(found === undefined ? undefined : typedOf(found));
  };
  const data = line && typed && dataOf(line, typed);
  const isSame = data !== undefined && JSON.stringify(data) === JSON.stringify(line!.kept.data);
  const missing = offWords(line, data ?? undefined, isSame);
  const asked = useConsequence(missing === undefined ? { kind: line!.kind, id: line!.kept.id, data } : null);
  const off = missing ?? (asked.state === 'checking' ? 'What it does is being checked.' : undefined);
  const remedies =
    line?.kind === 'helicopter-tasks' && asked.state === 'answered'
      ? asked.consequence.slingRemedies.filter(canMove)
      : [];
  const send = useAct(() =>
    put(`/api/${line!.kind}/${line!.kept.id}`, data, { version: line!.kept.version }),
  );
  const changed = () => `Changed: ${lineWords({ ...line!, kept: { ...line!.kept, data } } as Line, day)}.`;
  const submit = async () => {
    if (off !== undefined || send.isSending) return;
    if ((await send.run()) !== undefined) onClose(changed());
  };
  return (
    <ActForm
      title={`Change task or sling, ${cache.place}`}
      onClose={() => onClose()}
      onSubmit={() => remedies.length === 0 && void submit()}
      acts={
        <ProgrammeActs
          kind={line?.kind}
          remedies={remedies}
          busy={send.isSending}
          off={off}
          change={send.run}
          onChange={() => void submit()}
          onMoved={() => onClose(`${changed()} The sling is moved.`)}
        />
      }
    >
      <Choice
        label="Which"
        value={line?.kept.id ?? ''}
        options={[['', 'Choose...'], ...lines.map((each) => [each.kept.id, lineWords(each, day)] as const)]}
        onChange={choose}
      />
      {line !== undefined && typed !== undefined && (
        <LineFields line={line} typed={typed} dates={dates} perHour={perHour} onChange={setTyped} />
      )}
      <TouchedCaches asked={asked} />
      <ProblemLine problem={send.problem} />
    </ActForm>
  );
};

interface LineFieldsProps {
  readonly line: Line;
  readonly typed: Typed;
  readonly dates: readonly string[];
  /** What the helicopter of the line burns, L an hour. */
  readonly perHour: number | undefined;
  readonly onChange: (typed: Typed) => void;
}

const LineFields = ({ line, typed, dates, perHour, onChange }: LineFieldsProps) => {
  const { day } = useCalendar();
  const setHours = (hours: string) => {
    const isNumber =
      hoursTyped(hours) !== undefined && line.kind === 'helicopter-tasks' && perHour !== undefined;
    const litres = isNumber ? String(litresAfter(line.kept.data, hoursTyped(hours)!, perHour)) : typed.litres;
    onChange({ ...typed, hours, litres });
  };
  return (
    <div className="two">
      <Choice
        label="Day"
        value={typed.date}
        options={dates.map((date) => [date, day(date)] as const)}
        onChange={(date) => onChange({ ...typed, date })}
      />
      {line.kind === 'slings' ? (
        <Entry
          label="Slung"
          unit="drums"
          value={typed.drums}
          onChange={(drums) => onChange({ ...typed, drums })}
          input={{ inputMode: 'numeric' }}
        />
      ) : (
        <>
          <Entry
            label="Flight hours"
            unit="h"
            value={typed.hours}
            onChange={setHours}
            input={{ inputMode: 'decimal' }}
          />
          <Entry
            label="Fuel drawn"
            unit="L"
            value={typed.litres}
            onChange={(litres) => onChange({ ...typed, litres })}
            input={{ inputMode: 'numeric' }}
            note={
              perHour === undefined
                ? undefined
                : `${line.kept.data.helicopter} burns ${inWords(perHour, 'L')} an hour.`
            }
          />
        </>
      )}
    </div>
  );
};

const hoursTyped = (typed: string): number | undefined =>
  /^\d{1,2}(\.\d{1,2})?$/.test(typed.trim()) ? Number(typed) : undefined;

const typedOf = ({ kind, kept: { data } }: Line): Typed =>
  kind === 'slings'
    ? { date: data.date, hours: '', litres: '', drums: String((data as { drums: number }).drums) }
    : {
        date: data.date,
        hours: String((data as { hours: number }).hours),
        litres: String((data as { litres: number }).litres),
        drums: '',
      };

/** What would be sent; null: something is not a number yet. */
const dataOf = (line: Line, { date, hours, litres, drums }: Typed): Line['kept']['data'] | null => {
  if (line.kind === 'slings') {
    const count = litresTyped(drums);
    return count === undefined ? null : { ...line.kept.data, date, drums: count };
  }
  const [newHours, newLitres] = [hoursTyped(hours), litresTyped(litres)];
  if (newHours === undefined || newLitres === undefined) return null;
  return { ...line.kept.data, date, hours: newHours, litres: newLitres };
};

const offWords = (line: Line | undefined, data: object | undefined, isSame: boolean): string | undefined => {
  if (line === undefined) return 'Choose a task or a sling.';
  if (data === undefined) return 'Write the figures in full.';
  return isSame ? 'Nothing is changed yet.' : undefined;
};

const lineWords = (line: Line, day: (date: string) => string): string => {
  if (line.kind === 'slings') {
    const { date, helicopter, from, to, drums } = line.kept.data;
    return `sling ${day(date)}, ${inWords(drums, 'drums')} ${from} to ${to}, ${helicopter}`;
  }
  const { date, helicopter, programme, hours, litres } = line.kept.data;
  return `${day(date)}, ${programme} ${helicopter}, ${inWords(hours, 'h', 1)}, ${inWords(litres, 'L')}`;
};
