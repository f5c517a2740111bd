import { useState } from 'react';
import { z } from 'zod';
import { post, useAct, useMay } from '../../../api/index.js';
import { Button, EmptyLine, Field, Fields, MessageLine, ProblemLine, Tick } from '../../../ui/index.js';
import { type CsvName, columnWords } from './csv-columns.js';
import { FaultTable } from './fault-table.js';
import { FileEntry } from './file-entry.js';
import { faultyLines, linesRead } from './where.js';

const triedSchema = z.object({
  added: z.number(),
  changed: z.number().optional(),
  unchanged: z.number().optional(),
  removed: z.number().optional(),
  notInFile: z.array(z.string()).default([]),
  doubts: z.array(z.object({ path: z.string(), problem: z.string(), remedy: z.string() })),
  proposal: z.object({ subject: z.string() }).optional(),
});
type Tried = z.output<typeof triedSchema>;

interface CsvFile {
  readonly name: string;
  readonly text: string;
}

/** A file of a spreadsheet: tried first, every fault by line and cell, then brought in whole or not at all. */
export const CsvPanel = ({ of, title }: { readonly of: CsvName; readonly title: string }) => {
  const may = useMay();
  const [file, setFile] = useState<CsvFile>();
  const [isRemoving, setRemoving] = useState(false);
  const [tried, setTried] = useState<Tried>();
  const query = (dryRun: boolean) =>
    `?dryRun=${dryRun}${of === 'drums' ? '' : `&remove=${isRemoving ? 'yes' : 'no'}`}`;
  const dryRun = useAct(async (text: string) => {
    setTried(undefined);
    setTried((await post(`/api/csv/${of}${query(true)}`, text, { schema: triedSchema })).body);
  });
  const bring = useAct(
    () => post(`/api/csv/${of}${query(false)}`, file!.text, { schema: triedSchema }),
    '/api/',
  );
  const [done, setDone] = useState<string>();
  const take = (text: string, name: string) => {
    setDone(undefined);
    setFile({ text, name });
    void dryRun.run(text);
  };
  const submit = async () => {
    const answer = await bring.run();
    if (answer === undefined) return;
    setTried(undefined);
    setDone(answer.body.proposal === undefined ? 'Brought in.' : 'Proposed: a second person signs.');
  };
  const problem = dryRun.problem ?? bring.problem;
  const faults = problem?.faults ?? [];
  const wordsOf = (column: string) => columnWords(of, column);
  return (
    <section className="section" aria-label={`${title}, CSV`}>
      <h2>{file === undefined ? `${title}, CSV` : `${title}, CSV: dry run of ${file.name}`}</h2>
      {may('import and export', 'enter') ? (
        <>
          <FileEntry label="Bring in a CSV file" accept=".csv,text/csv" onRead={take} />
          {of !== 'drums' && (
            <Tick label="What is not in the file is taken out" checked={isRemoving} onChange={setRemoving} />
          )}
          <a href={`/api/csv/${of}`} download={`${of}.csv`}>
            Download as a CSV file
          </a>
        </>
      ) : (
        <EmptyLine>The operations manager and set-up bring files in.</EmptyLine>
      )}
      {file !== undefined && (tried !== undefined || faults.length > 0) && (
        <Counts text={file.text} faults={faults.map(({ path }) => path)} tried={tried} />
      )}
      {faults.length > 0 ? (
        <>
          <MessageLine
            what="Nothing has been saved"
            why="The faults keep the file out; the other lines wait."
          />
          <FaultTable caption="Faults" faults={faults} wordsOf={wordsOf} />
        </>
      ) : (
        <ProblemLine problem={problem} />
      )}
      {tried !== undefined && <WouldDo tried={tried} isRemoving={isRemoving} />}
      {tried !== undefined && (
        <FaultTable caption="Worth a look: these keep nothing out" faults={tried.doubts} wordsOf={wordsOf} />
      )}
      {done !== undefined && <MessageLine kind="note" what={done} />}
      {file !== undefined && (
        <div className="set-up-acts">
          <Button busy={dryRun.isSending} onPress={() => void dryRun.run(file.text)}>
            Try it again
          </Button>
          <Button
            kind="main"
            busy={bring.isSending}
            offBecause={tried === undefined ? 'A file with faults stays out.' : undefined}
            onPress={() => void submit()}
          >
            {of === 'strip-limits' ? 'Propose the limits' : 'Bring it in'}
          </Button>
        </div>
      )}
    </section>
  );
};

interface CountsProps {
  readonly text: string;
  readonly faults: readonly string[];
  readonly tried: Tried | undefined;
}

const Counts = ({ text, faults, tried }: CountsProps) => {
  const read = linesRead(text);
  const faulty = faultyLines(faults);
  return (
    <Fields>
      <Field label="Lines read">{read}</Field>
      <Field label="Fit">{read - faulty}</Field>
      <Field label="Faults" state={faults.length > 0 ? 'grave' : 'plain'}>
        {faults.length}
      </Field>
      <Field label="Changed">{tried === undefined ? 'none' : tried.added + (tried.changed ?? 0)}</Field>
    </Fields>
  );
};

const WouldDo = ({ tried, isRemoving }: { readonly tried: Tried; readonly isRemoving: boolean }) => {
  const { added, changed = 0, unchanged = 0, notInFile } = tried;
  return (
    <p className="read" role="status">
      <b>Nothing has been saved yet.</b> New: {added}. Changed: {changed}. As they are: {unchanged}.
      {notInFile.length > 0 &&
        ` Not in the file, and ${isRemoving ? 'taken out' : 'left as they are'}: ${notInFile.join('; ')}.`}
    </p>
  );
};
