import { type Batch, type Drum, orderOfUse } from '@drumline/stock';
import { useState } from 'react';
import { z } from 'zod';
import { newId, put, useAct, useCalendar, useList, useRead } from '../../../api/index.js';
import { DipEntry, dipTableOf } from '../../../counting/dip-entry.js';
import { readDips, useDipTables } from '../../../counting/dips.js';
import { instantOfTime, litresTyped, timeSaid } from '../../../counting/typed.js';
import { ActForm, Button, Choice, Entry, inWords, ProblemLine, useAskedFirst } from '../../../ui/index.js';
import type { Cache } from '../caches-read.js';
import { drawSaid, drumWords } from './draw-words.js';

const stockSchema = z.object({
  drums: z.array(z.custom<Drum>((value) => typeof value === 'object')),
  batches: z.array(z.custom<Batch>((value) => typeof value === 'object')),
});
const programmeSchema = z.object({ data: z.object({ code: z.string(), name: z.string() }) });
const helicopterSchema = z.object({ data: z.object({ id: z.string() }) });

interface DrawFormProps {
  readonly cache: Cache;
  readonly onClose: (done?: string) => void;
}

const means = [
  ['radio', 'by radio'],
  ['screen', 'my own'],
  ['paper', 'from paper'],
] as const;

/** Fuel that went into an aircraft, as somebody reports it: one drum, one programme. */
export const DrawForm = ({ cache, onClose }: DrawFormProps) => {
  const calendar = useCalendar();
  const [id] = useState(newId);
  const stock = useRead(`/api/stock/${cache.place}`, stockSchema).value;
  const drums = stock === undefined ? [] : orderOfUse(cache.place, stock, calendar.today);
  const programmes = useList('/api/programmes', programmeSchema).value ?? [];
  const helicopters = useList('/api/helicopters', helicopterSchema).value ?? [];
  const [drum, setDrum] = useState('');
  const [programme, setProgramme] = useState('');
  const [into, setInto] = useState('');
  const [typed, setTyped] = useState('');
  const [heard, setHeard] = useState<'radio' | 'screen' | 'paper'>('radio');
  const [at, setAt] = useState(() => calendar.time(calendar.now));
  const [medevac, setMedevac] = useState('');
  const tables = useDipTables();
  const [left, setLeft] = useState({ table: '', cm: '' });
  const leftTable = dipTableOf(left, tables);
  const leftRead = leftTable === undefined ? undefined : readDips(left.cm, leftTable);
  const litres = litresTyped(typed);
  const happenedAt = instantOfTime(at, calendar);
  const isLeftWrong =
    leftRead !== undefined && leftRead.drums > 0 && (leftRead.litres === undefined || leftRead.drums > 1);
  const missing = isLeftWrong
    ? 'Write one stick of what is left in the drum, or none.'
    : missingWords({ drum, programme, into, litres, happenedAt });
  const draw = drawSaid({ cache, drums, number: drum, litres, isMedevac: medevac !== '' });
  const told = timeSaid(happenedAt, calendar);
  const asked = useAskedFirst([...draw.doubts, ...told.doubts]);
  const send = useAct((body: object) => put(`/api/movements/${id}`, body));
  const submit = async () => {
    if (missing !== undefined || send.isSending || !asked.keeps()) return;
    const done = await send.run({
      kind: 'drawn',
      happenedAt,
      writtenAt: calendar.now.toISOString(),
      means: heard,
      drum,
      place: cache.place,
      millilitres: litres! * 1000,
      into,
      programme,
      leftMillilitres: leftRead?.litres === undefined ? null : leftRead.litres * 1000,
      ...(medevac === '' ? {} : { medevac }),
    });
    if (done !== undefined)
      onClose(`${cache.place}: draw of ${inWords(litres!, 'L')} for ${programme} is in the ledger.`);
  };
  return (
    <ActForm
      title={`Add draw, ${cache.place}`}
      onClose={() => onClose()}
      onSubmit={() => void submit()}
      acts={
        <Button kind="main" type="submit" busy={send.isSending} offBecause={missing}>
          {asked.isAsked ? 'It is so, add draw' : 'Add draw'}
        </Button>
      }
    >
      <div className="two">
        <Choice
          label="Drum"
          value={drum}
          options={[['', 'Choose...'], ...drums.map((each) => [each.drum.number, drumWords(each)] as const)]}
          onChange={setDrum}
        />
        <Entry
          label="Drawn"
          unit="L"
          value={typed}
          onChange={setTyped}
          input={{ inputMode: 'numeric' }}
          doubt={draw.words}
        />
        <Choice
          label="Into"
          value={into}
          options={[['', 'Choose...'], ...helicopters.map(({ data }) => [data.id, data.id] as const)]}
          onChange={setInto}
        />
        <Choice
          label="For"
          value={programme}
          options={[
            ['', 'Choose...'],
            ...programmes.map(({ data: { code, name } }) => [code, `${code} ${name}`] as const),
          ]}
          onChange={setProgramme}
        />
        <Entry label="Time drawn" value={at} onChange={setAt} input={{ size: 5 }} doubt={told.words} />
        <Choice label="Heard" value={heard} options={means} onChange={setHeard} />
      </div>
      <DipEntry label="Left in it by stick, if dipped" tables={tables} value={left} onChange={setLeft} />
      <Entry
        label="Medevac only: why the reserve was drawn"
        value={medevac}
        onChange={setMedevac}
        input={{ maxLength: 200 }}
      />
      {asked.said}
      <ProblemLine problem={send.problem} />
    </ActForm>
  );
};

interface Filled {
  readonly drum: string;
  readonly programme: string;
  readonly into: string;
  readonly litres: number | undefined;
  readonly happenedAt: string | undefined;
}

const missingWords = ({ drum, programme, into, litres, happenedAt }: Filled): string | undefined => {
  if (drum === '') return 'Choose the drum.';
  if (litres === undefined || litres === 0) return 'Write the litres drawn.';
  if (into === '') return 'Choose the aircraft.';
  if (programme === '') return 'Choose the programme.';
  return happenedAt === undefined ? 'Write the time as 06:10.' : undefined;
};
