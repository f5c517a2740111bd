import { useEffect, useRef, useState } from 'react';
import { z } from 'zod';
import { useCalendar, useList, useMay, useNotSetUpYet, useSettings } from '../api/index.js';
import { Button, Dialog, EmptyLine, Entry, ProblemLine, useKeys } from '../ui/index.js';
import { type KeptSurface, useKeepReports } from './keep-reports.js';
import './radio.css';
import { closeRadioLine, openRadioLine, useRadioLineOpen } from './radio-open.js';
import { readLine, type Said } from './read-line.js';
import { KeptReport, reportWords, WhatItTouches } from './touched.js';
import { withUntil } from './with-until.js';

const placeSchema = z.object({ data: z.object({ code: z.string(), name: z.string() }) });

/** Radio reports, from any page: `r`, one line, Enter. */
export const RadioLine = () => {
  const isOpen = useRadioLineOpen();
  const mayReport = useMay()('report surface', 'enter');
  useKeys(mayReport ? { r: { does: 'Enter radio report', act: openRadioLine } } : {});
  useEffect(() => closeRadioLine, []);
  usePlaces(mayReport);
  return isOpen && mayReport ? <RadioDialog /> : null;
};

const RadioDialog = () => {
  const [line, setLine] = useState('');
  const [speaker, setSpeaker] = useState('');
  const [kept, setKept] = useState<readonly KeptSurface[]>([]);
  const form = useRef<HTMLFormElement>(null);
  const said = useSaid(line, speaker.trim());
  const keep = useKeepReports();
  const reports = (said ?? []).flatMap((each) => (each.kind === 'surface' ? [each] : []));
  const asksWho = reports.some(({ who }) => who === null);
  const notSetUp = useNotSetUpYet('places');
  const offBecause = notSetUp ?? whyNotYet(said) ?? (asksWho && speaker.trim() === '' ? whoWords : undefined);
  const send = async (): Promise<void> => {
    if (offBecause === whoWords) form.current?.querySelector<HTMLInputElement>('[name=speaker]')?.focus();
    if (offBecause !== undefined || keep.isSending) return;
    const given = reports.map(({ report }) => report);
    const done = await keep.run(`${line} ${speaker}`.trim(), given);
    if (done === undefined) return;
    setKept([...done, ...kept]);
    setLine('');
    setSpeaker('');
    form.current?.querySelector('input')?.focus();
  };
  const until = (report: number, day: string): void => {
    setLine(withUntil(line, report, day));
    form.current?.querySelector('input')?.focus();
  };
  return (
    <Dialog
      title="Radio report"
      onClose={closeRadioLine}
      acts={
        <Button kind="main" busy={keep.isSending} offBecause={offBecause} onPress={() => void send()}>
          Keep the report
        </Button>
      }
    >
      <form
        ref={form}
        className="radio-line"
        onSubmit={(event) => {
          event.preventDefault();
          void send();
        }}
      >
        <Entry
          label="In one line: strip, surface, time, who, and until when if that was said"
          value={line}
          onChange={setLine}
          note="LOR soft 0652 helper until Wed, HAS dry 0640 J. Holm. Enter keeps it."
          input={{ autoComplete: 'off', spellCheck: false, maxLength: 300 }}
        />
        {asksWho && (
          <Entry
            label="Who said it?"
            value={speaker}
            onChange={setSpeaker}
            note="A name, or helper. Write unknown where nobody said."
            input={{ name: 'speaker', autoComplete: 'off', spellCheck: false, maxLength: 80 }}
          />
        )}
        {/* A browser sends a form of two fields by Enter only where it has a button. */}
        <input type="submit" hidden />
      </form>
      {notSetUp === undefined && <SaidReports said={said ?? []} onUntil={until} />}
      <ProblemLine problem={keep.problem} />
      <Kept reports={kept} />
    </Dialog>
  );
};

const whoWords = 'Say who said it.';

interface SaidReportsProps {
  readonly said: readonly Said[];
  readonly onUntil: (report: number, day: string) => void;
}

const SaidReports = ({ said, onUntil }: SaidReportsProps) => (
  <ol className="said-reports" aria-label="What was understood">
    {said.map((each, at) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: parts of one line have no name but their place
      <li key={at}>
        <Understood said={each} onUntil={(day) => onUntil(at, day)} />
      </li>
    ))}
  </ol>
);

interface UnderstoodProps {
  readonly said: Said;
  readonly onUntil: (day: string) => void;
}

const Understood = ({ said, onUntil }: UnderstoodProps) => {
  const calendar = useCalendar();
  if (said.kind === 'fault') return <p className="plum">{said.words}</p>;
  return (
    <>
      <p>
        <b>{reportWords(said.report, calendar)}</b>
      </p>
      {said.doubts.map((doubt) => (
        <p key={doubt}>{doubt}</p>
      ))}
      <WhatItTouches report={said.report} onUntil={onUntil} />
    </>
  );
};

const Kept = ({ reports }: { readonly reports: readonly KeptSurface[] }) => (
  <div role="status" className="kept">
    {reports.length > 0 && (
      <EmptyLine>
        {reports.map(({ id, report }) => (
          <KeptReport key={id} id={id} report={report} />
        ))}
        Write the next one, or leave with Esc.
      </EmptyLine>
    )}
  </div>
);

/** Read before anybody writes a line: what it means has to be known when base falls silent. */
const usePlaces = (isOn: boolean) => useList(isOn ? '/api/places' : null, placeSchema).value;

/** Undefined: the places are not read yet. */
const useSaid = (line: string, speaker: string): readonly Said[] | undefined => {
  const places = usePlaces(true);
  const timeZone = useSettings().value?.data.timeZone;
  const { now } = useCalendar();
  if (places === undefined || (places.length > 0 && timeZone === undefined)) return undefined;
  return readLine(line, {
    places: places.map(({ data }) => data),
    now: `${now.toISOString().slice(0, 16)}Z`,
    timeZone: timeZone ?? 'UTC',
    speaker,
  });
};

const whyNotYet = (said: readonly Said[] | undefined): string | undefined => {
  if (said === undefined) return 'The places are not read yet.';
  if (said.length === 0) return 'Nothing is written yet.';
  const fault = said.find((each) => each.kind === 'fault');
  return fault === undefined ? undefined : fault.words;
};
