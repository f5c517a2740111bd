import type { Calendar } from '../api/index.js';
import { Button, Choice, Entry, inWords } from '../ui/index.js';
import { DipEntry, type DipTyped, dipTableOf } from './dip-entry.js';
import { litresCounted, readDips, useDipTables } from './dips.js';
import { instantOfTime, litresTyped } from './typed.js';
import { useCountRules } from './use-book.js';

/** A count as it is typed. */
export interface CountTyped {
  readonly method: 'dip' | 'drums seen';
  readonly seenFrom: 'ground' | 'air';
  readonly litres: string;
  readonly sealed: string;
  readonly open: string;
  readonly empty: string;
  readonly dips: DipTyped;
  readonly at: string;
  readonly means: 'screen' | 'radio' | 'paper';
  readonly by: string;
}

export const nothingTyped: Omit<CountTyped, 'at'> = {
  method: 'dip',
  seenFrom: 'ground',
  litres: '',
  sealed: '',
  open: '',
  empty: '',
  dips: { table: '', cm: '' },
  means: 'screen',
  by: '',
};

export interface Counted {
  readonly litres: number | undefined;
  readonly openDrums: number | undefined;
  readonly drums: readonly (number | undefined)[];
  readonly happenedAt: string | undefined;
  /** As it is sent, without the place. */
  readonly body: object;
}

export const countedOf = (typed: CountTyped, calendar: Calendar): Counted => {
  const litres = litresTyped(typed.litres);
  const drums = [typed.sealed, typed.open, typed.empty].map(litresTyped);
  const [sealedDrums, openDrums, emptyDrums] = drums;
  const happenedAt = instantOfTime(typed.at, calendar);
  const { method, seenFrom, by, dips } = typed;
  return {
    ...{ litres, openDrums, drums, happenedAt },
    body: {
      kind: 'counted',
      ...{ happenedAt, method, seenFrom, sealedDrums, openDrums, emptyDrums },
      // Who is named was heard.
      means: by !== '' && typed.means === 'screen' ? 'radio' : typed.means,
      ...(by === '' ? {} : { by }),
      ...(method === 'dip' && dips.cm.trim() !== '' && { note: `By stick: ${dips.cm.trim()} cm.` }),
      millilitres: (litres ?? 0) * 1000,
    },
  };
};

export const missingWords = ({ litres, drums, happenedAt }: Counted): string | undefined => {
  if (litres === undefined) return 'Write the litres found; 0 where there is nothing.';
  if (drums.includes(undefined)) return 'Write the drums seen; 0 where there are none.';
  return happenedAt === undefined ? 'Write the time as 06:10.' : undefined;
};

interface CountedDrumsProps {
  readonly typed: CountTyped;
  readonly set: (changed: Partial<CountTyped>) => void;
  readonly doubt: string | undefined;
}

/** How it was seen, what was found, drum by drum; the stick in the open ones where somebody dipped them. */
export const CountedDrums = ({ typed, set, doubt }: CountedDrumsProps) => (
  <>
    <div className="two">
      <Choice
        label="How"
        value={typed.method}
        options={[
          ['dip', 'dip'],
          ['drums seen', 'drums seen'],
        ]}
        onChange={(method) => set({ method })}
      />
      <Choice
        label="Seen"
        value={typed.seenFrom}
        options={[
          ['ground', 'on the ground'],
          ['air', 'from the air'],
        ]}
        onChange={(seenFrom) => set({ seenFrom })}
      />
    </div>
    <Entry
      label="Fuel found"
      unit="L"
      askedFirst
      value={typed.litres}
      onChange={(litres) => set({ litres })}
      input={{ inputMode: 'numeric' }}
      doubt={doubt}
    />
    <div className="three">
      {(['sealed', 'open', 'empty'] as const).map((what) => (
        <Entry
          key={what}
          label={labels[what]}
          unit="drums"
          value={typed[what]}
          onChange={(many) => set({ [what]: many })}
          input={{ inputMode: 'numeric' }}
        />
      ))}
    </div>
    {typed.method === 'dip' && <ByStick typed={typed} set={set} />}
  </>
);

const labels = { sealed: 'Sealed', open: 'Open', empty: 'Empty' } as const;

/** Litres from the stick in the open drums, with the sealed ones full: written when it is pressed. */
const ByStick = ({ typed, set }: Omit<CountedDrumsProps, 'doubt'>) => {
  const tables = useDipTables();
  const fill = useCountRules()?.fillLitres;
  const table = dipTableOf(typed.dips, tables);
  if (table === undefined || fill === undefined) return null;
  const read = readDips(typed.dips.cm, table);
  const sealed = litresTyped(typed.sealed);
  const all =
    read.litres === undefined || sealed === undefined ? undefined : litresCounted(sealed, fill, read.litres);
  return (
    <>
      <DipEntry
        label="Stick in each open drum"
        tables={tables}
        value={typed.dips}
        onChange={(dips) => set({ dips })}
      />
      {all !== undefined && (
        <p role="status">
          {inWords(sealed!, 'drums')} sealed at {inWords(fill, 'L')} and {inWords(read.litres!, 'L')} by
          stick.{' '}
          <Button small onPress={() => set({ litres: String(all), open: String(read.drums) })}>
            Write {inWords(all, 'L')}
          </Button>
        </p>
      )}
    </>
  );
};
