import { useState } from 'react';
import { z } from 'zod';
import { post, useAct, useMay } from '../../../api/index.js';
import { Button, EmptyLine, Field, Fields, MessageLine, ProblemLine, Tick } from '../../../ui/index.js';
import { type CsvName, columnWords } from './csv-columns.js';
import { FaultTable } from './fault-table.js';
import { FileEntry } from './file-entry.js';
import { fitLines, linesRead, unreadable } from './where.js';

const triedSchema = z.object({
  added: z.number(),
  changed: z.number().optional(),
  unchanged: z.number().optional(),
  removed: z.number().optional(),
  notInFile: z.array(z.string()).default([]),
  doubts: z.array(z.object({ path: z.string(), problem: z.string(), remedy: z.string() })),
  proposal: z.object({ subject: z.string() }).optional(),
});
/** `isRemoving`: as the tick stood then. */
type Tried = z.output<typeof triedSchema> & { readonly isRemoving: boolean };

interface CsvFile {
  readonly name: string;
  readonly text: string;
}

/** A file of a spreadsheet: tried first, every fault by line and cell, then brought in whole or not at all. */
export const CsvPanel = ({ of, title }: { readonly of: CsvName; readonly title: string }) => {
  const may = useMay();
  const [file, setFile] = useState<CsvFile>();
  const [isRemoving, setRemoving] = useState(false);
  const [last, setTried] = useState<Tried>();
  // A dry run that answers late, of before the tick was changed, shows nothing.
  const tried = last?.isRemoving === isRemoving ? last : undefined;
  const send = async (text: string, how: { readonly dryRun: boolean; readonly isRemoving: boolean }) => {
    const remove = of === 'drums' ? '' : `&remove=${how.isRemoving ? 'yes' : 'no'}`;
    return (await post(`/api/csv/${of}?dryRun=${how.dryRun}${remove}`, text, { schema: triedSchema })).body;
  };
  const dryRun = useAct(async (text: string, isRemoving: boolean) => {
    setTried(undefined);
    setTried({ ...(await send(text, { dryRun: true, isRemoving })), isRemoving });
  });
  const bring = useAct(() => send(file!.text, { dryRun: false, isRemoving }), '/api/');
  const tryIt = (text: string, removing = isRemoving) => {
    bring.clear();
    void dryRun.run(text, removing);
  };
  const tick = (removing: boolean) => {
    setRemoving(removing);
    if (file !== undefined) tryIt(file.text, removing);
  };
  const [done, setDone] = useState<string>();
  const [unread, setUnread] = useState<Record<'name' | 'why', string>>();
  const take = (text: string, name: string) => {
    setDone(undefined);
    setTried(undefined);
    const why = unreadable(text);
    setUnread(why === undefined ? undefined : { name, why });
    setFile(why === undefined ? { text, name } : undefined);
    if (why === undefined) tryIt(text);
  };
  const submit = async () => {
    const answer = await bring.run();
    if (answer === undefined) return;
    setTried(undefined);
    setFile(undefined);
    const { added, changed = 0, removed = 0, proposal } = answer;
    setDone(
      proposal === undefined
        ? `Brought in: ${file!.name}. New: ${added}. Changed: ${changed}. Taken out: ${removed}.`
        : 'Proposed: a second person signs.',
    );
  };
  const problem = file === undefined ? undefined : (dryRun.problem ?? bring.problem);
  const faults = problem?.faults ?? [];
  const wordsOf = (column: string) => columnWords(of, column);
  return (
    <section className="section" aria-label={`${title}, CSV`}>
      <h2>{file === undefined ? `${title}, CSV` : `${title}, CSV: dry run of ${file.name}`}</h2>
      {may('import and export', 'enter') ? (
        <>
          <FileEntry label="Bring in a CSV file" accept=".csv,text/csv" onRead={take} />
          {of !== 'drums' && (
            <Tick label="What is not in the file is taken out" checked={isRemoving} onChange={tick} />
          )}
          <a href={`/api/csv/${of}`} download={`${of}.csv`}>
            Download as a CSV file
          </a>
          <p>
            <small>
              The first line of the download has the headings that a file needs, in any order.
              {of === 'drums' && ' A batch is entered under Batches before its drums.'}
            </small>
          </p>
        </>
      ) : (
        <EmptyLine>The operations manager and set-up bring files in.</EmptyLine>
      )}
      {unread !== undefined && (
        <MessageLine what={`${unread.name} cannot be read`} why={unread.why} next="Then choose it again." />
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
      {tried !== undefined && <WouldDo tried={tried} />}
      {tried !== undefined && (
        <FaultTable caption="Worth a look: these keep nothing out" faults={tried.doubts} wordsOf={wordsOf} />
      )}
      {done !== undefined && <MessageLine kind="note" what={done} />}
      {file !== undefined && (
        <div className="set-up-acts">
          <Button busy={dryRun.isSending} onPress={() => tryIt(file.text)}>
            Try it again
          </Button>
          <Button
            kind="main"
            busy={bring.isSending}
            offBecause={dryRun.isSending ? 'It is being tried.' : offBecause(tried)}
            onPress={() => void submit()}
          >
            {of === 'strip-limits' ? 'Propose the limits' : 'Bring it in'}
          </Button>
        </div>
      )}
    </section>
  );
};

const offBecause = (tried: Tried | undefined): string | undefined => {
  if (tried === undefined) return 'A file with faults stays out.';
  const changes = tried.added + (tried.changed ?? 0) + (tried.isRemoving ? tried.notInFile.length : 0);
  return changes === 0 ? 'Nothing in it is new.' : undefined;
};

interface CountsProps {
  readonly text: string;
  readonly faults: readonly string[];
  readonly tried: Tried | undefined;
}

const Counts = ({ text, faults, tried }: CountsProps) => {
  const read = linesRead(text);
  return (
    <Fields>
      <Field label="Lines read">{read}</Field>
      <Field label="Fit">{fitLines(read, faults)}</Field>
      <Field label="Faults" state={faults.length > 0 ? 'grave' : 'plain'}>
        {faults.length}
      </Field>
      <Field label="Changed">{tried === undefined ? 'none' : tried.added + (tried.changed ?? 0)}</Field>
    </Fields>
  );
};

const WouldDo = ({ tried }: { readonly tried: Tried }) => {
  const { added, changed = 0, unchanged = 0, notInFile, isRemoving } = tried;
  return (
    <p className="read" role="status">
      <b>Nothing has been saved yet.</b> New: {added}. Changed: {changed}. As they are: {unchanged}.
      {notInFile.length > 0 &&
        ` Not in the file, and ${isRemoving ? 'taken out' : 'left as they are'}: ${notInFile.join('; ')}.`}
    </p>
  );
};
