import { useState } from 'react';
import { z } from 'zod';
import { newId, put, useAct, useCalendar, useList } from '../api/index.js';
import { ActForm, Button, Choice, Entry, inWords, ProblemLine, useAskedFirst } from '../ui/index.js';
import { countAgainstBook, countDoubts } from './count-words.js';
import { CountedDrums, type CountTyped, countedOf, missingWords, nothingTyped } from './counted.js';
import { timeSaid } from './typed.js';
import { useBook, useCountRules } from './use-book.js';

interface CountFormProps {
  /** Absent: it is asked. */
  readonly place?: string;
  /** What the drums are taken to be until somebody says otherwise; absent: every one is written. */
  readonly drums?: Pick<CountTyped, 'sealed' | 'open' | 'empty'>;
  readonly onClose: (done?: string) => void;
}

const placeSchema = z.object({ data: z.object({ code: z.string(), name: z.string() }) });
const outcomeSchema = z
  .object({ raised: z.array(z.object({ what: z.string() }).loose()).optional() })
  .loose();

/** What somebody saw at a place. The book is shown once the litres are typed: a count is not copied. */
export const CountForm = ({ place: given, drums, onClose }: CountFormProps) => {
  const calendar = useCalendar();
  const [id] = useState(newId);
  const [place, setPlace] = useState(given ?? '');
  const [typed, setTyped] = useState<CountTyped>({
    ...nothingTyped,
    ...drums,
    at: calendar.time(calendar.now),
  });
  const set = (changed: Partial<CountTyped>) => setTyped({ ...typed, ...changed });
  const counted = countedOf(typed, calendar);
  const book = useBook(place, counted.openDrums ?? 0);
  const missing = place === '' ? 'Choose the place.' : missingWords(counted);
  const told = timeSaid(counted.happenedAt, calendar);
  const asked = useAskedFirst([...countDoubts(counted, useCountRules()), ...told.doubts]);
  const send = useAct((body: object) => put(`/api/movements/${id}`, body, { schema: outcomeSchema }));
  const submit = async () => {
    if (missing !== undefined || send.isSending || !asked.keeps()) return;
    const done = await send.run({ ...counted.body, place, writtenAt: calendar.now.toISOString() });
    if (done === undefined) return;
    const raised = (done.body.raised ?? []).map(({ what }) => ` ${what}`).join('');
    onClose(`${place}: count of ${inWords(counted.litres!, 'L')} is in the ledger.${raised}`);
  };
  return (
    <ActForm
      title={given === undefined ? 'Count a place' : `Enter count, ${given}`}
      onClose={() => onClose()}
      onSubmit={() => void submit()}
      acts={
        <Button kind="main" type="submit" busy={send.isSending} offBecause={missing}>
          {asked.isAsked ? 'It is so, enter count' : 'Enter count'}
        </Button>
      }
    >
      {given === undefined && <PlaceChoice value={place} onChange={setPlace} />}
      <CountedDrums
        typed={typed}
        set={set}
        doubt={
          counted.litres === undefined || book === undefined
            ? undefined
            : countAgainstBook(counted.litres, book.litres, book.toleranceLitres)
        }
      />
      <div className="two">
        <Entry
          label="Time seen"
          value={typed.at}
          onChange={(at) => set({ at })}
          input={{ size: 5 }}
          doubt={told.words}
        />
        <Choice
          label="How it came"
          value={typed.means}
          options={[
            ['screen', 'seen by me'],
            ['radio', 'by radio'],
            ['paper', 'from paper'],
          ]}
          onChange={(means) => set({ means })}
        />
      </div>
      <Entry
        label="Counted by, if not you"
        value={typed.by}
        onChange={(by) => set({ by })}
        input={{ maxLength: 60 }}
      />
      {asked.said}
      <ProblemLine problem={send.problem} />
    </ActForm>
  );
};

interface PlaceChoiceProps {
  readonly value: string;
  readonly onChange: (place: string) => void;
}

const PlaceChoice = ({ value, onChange }: PlaceChoiceProps) => {
  const places = useList('/api/places', placeSchema).value ?? [];
  return (
    <Choice
      label="Place"
      value={value}
      options={[
        ['', 'Choose...'],
        ...places.map(({ data }) => [data.code, `${data.code} ${data.name}`] as const),
      ]}
      onChange={onChange}
      askedFirst
    />
  );
};
