import { useEffect, useRef, useState } from 'react';
import { z } from 'zod';
import { newId, put, useAct, useCalendar, useList, useMay, useSettings } from '../api/index.js';
import { Button, Dialog, EmptyLine, Entry, ProblemLine, useKeys } from '../ui/index.js';
import './radio.css';
import { closeRadioLine, openRadioLine, useRadioLineOpen } from './radio-open.js';
import { readLine, type Said } from './read-line.js';
import { reportWords, WhatItTouches } from './touched.js';

const placeSchema = z.object({ data: z.object({ code: z.string(), name: z.string() }) });

/** Radio reports, from any page: `r`, one line, Enter. */
export const RadioLine = () => {
  const isOpen = useRadioLineOpen();
  const mayReport = useMay()('report surface', 'enter');
  useKeys(mayReport ? { r: { does: 'Enter radio report', act: openRadioLine } } : {});
  useEffect(() => closeRadioLine, []);
  return isOpen && mayReport ? <RadioDialog /> : null;
};

const RadioDialog = () => {
  const [line, setLine] = useState('');
  const [kept, setKept] = useState<readonly string[]>([]);
  const form = useRef<HTMLFormElement>(null);
  // After the dialog has opened, which puts the focus on its first button.
  useEffect(() => form.current?.querySelector('input')?.focus(), []);
  const calendar = useCalendar();
  const said = useSaid(line);
  const keep = useKeepReports();
  const offBecause = whyNotYet(said);
  const send = async (): Promise<void> => {
    if (offBecause !== undefined || keep.isSending) return;
    const reports = said.flatMap((each) => (each.kind === 'surface' ? [each.report] : []));
    if ((await keep.run(line, reports)) === undefined) return;
    setKept([...reports.map((report) => reportWords(report, calendar)), ...kept]);
    setLine('');
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
          note="LOR soft 0652 helper until Wed, HAS dry 0640. Enter keeps it."
          input={{ autoComplete: 'off', spellCheck: false, maxLength: 300 }}
        />
      </form>
      <SaidReports said={said} />
      <ProblemLine problem={keep.problem} />
      <Kept lines={kept} />
    </Dialog>
  );
};

const SaidReports = ({ said }: { readonly said: readonly Said[] }) => (
  <ol className="said-reports" aria-label="What was understood">
    {said.map((each, at) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: parts of one line have no name but their place
      <li key={at}>
        <Understood said={each} />
      </li>
    ))}
  </ol>
);

const Understood = ({ said }: { readonly said: Said }) => {
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
      <WhatItTouches report={said.report} />
    </>
  );
};

const Kept = ({ lines }: { readonly lines: readonly string[] }) => (
  <div role="status" className="kept">
    {lines.length > 0 && (
      <EmptyLine>
        {lines.map((each) => (
          <span key={each}>Kept: {each}. </span>
        ))}
        Write the next one, or leave with Esc.
      </EmptyLine>
    )}
  </div>
);

const useSaid = (line: string): readonly Said[] => {
  const places = useList('/api/places', placeSchema).value;
  const timeZone = useSettings().value?.data.timeZone;
  const { now } = useCalendar();
  if (places === undefined || timeZone === undefined) return [];
  return readLine(line, {
    places: places.map(({ data }) => data),
    now: `${now.toISOString().slice(0, 16)}Z`,
    timeZone,
  });
};

/** The same line sent twice is the same reports. */
const useKeepReports = () => {
  const ids = useRef<{ line: string; ids: readonly string[] }>({ line: '', ids: [] });
  return useAct(async (line: string, reports: readonly object[]) => {
    if (ids.current.line !== line) ids.current = { line, ids: reports.map(newId) };
    for (const [at, report] of reports.entries())
      await put(`/api/surface-reports/${ids.current.ids[at]}`, report);
    ids.current = { line: '', ids: [] };
    return reports;
  });
};

const whyNotYet = (said: readonly Said[]): string | undefined => {
  if (said.length === 0) return 'Nothing is written yet.';
  const fault = said.find((each) => each.kind === 'fault');
  return fault === undefined ? undefined : fault.words;
};
