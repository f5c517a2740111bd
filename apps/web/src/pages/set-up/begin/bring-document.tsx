import { parseScenario } from '@drumline/contract';
import { useState } from 'react';
import { ApiProblem, useAct } from '../../../api/index.js';
import { Button, inWords, MessageLine, ProblemLine, Tick } from '../../../ui/index.js';
import { FaultTable } from '../files/fault-table.js';
import { FileEntry } from '../files/file-entry.js';
import { bringIn, type Imported, tryDocument } from './bring-in.js';

/** Brings a whole scenario document in: every fault first, nothing written before it is whole. */
export const BringDocument = ({ offBecause }: { readonly offBecause?: string | undefined }) => {
  const [document, setDocument] = useState<Readonly<Record<string, unknown>>>();
  const [isDrill, setDrill] = useState(false);
  const [tried, setTried] = useState<Imported>();
  const check = useAct(async (text: string) => {
    setTried(undefined);
    setDocument(undefined);
    const read = readText(text);
    setDocument(read);
    setTried(await tryDocument(read));
  });
  const bring = useAct(() => bringIn(document!, isDrill ? 'document' : 'time of day'), '/api/');
  const problem = bring.problem ?? check.problem;
  return (
    <section className="section">
      <h2>Bring a scenario document</h2>
      <p className="read">
        A file in the format of docs/scenario-format.md, checked whole before anything is written.
      </p>
      <FileEntry
        label="Scenario document"
        accept=".json,application/json"
        onRead={(text) => void check.run(text)}
      />
      {tried !== undefined && (
        <>
          <MessageLine
            kind="note"
            what={`Fits: ${inWords(tried.places, 'places')}, ${inWords(tried.drums, 'drums')}`}
            why="Nothing has been written yet."
          />
          <FaultTable caption="To look at" faults={tried.doubts} />
          <Tick
            label="A demo or a drill: the clock begins at the document's own moment"
            checked={isDrill}
            onChange={setDrill}
          />
          <Button kind="main" busy={bring.isSending} offBecause={offBecause} onPress={() => void bring.run()}>
            Bring it in
          </Button>
        </>
      )}
      {problem !== undefined && problem.faults.length > 0 ? (
        <>
          <MessageLine what={problem.what} why={problem.why} next={problem.next} />
          <FaultTable caption={`Faults: ${problem.faults.length}`} faults={problem.faults} />
        </>
      ) : (
        <ProblemLine problem={problem} />
      )}
    </section>
  );
};

/** A text that is no document at all is told here, with its line, before it is sent. */
const readText = (text: string): Readonly<Record<string, unknown>> => {
  try {
    return JSON.parse(text) as Readonly<Record<string, unknown>>;
  } catch {
    const parsed = parseScenario(text);
    const faults = parsed.ok ? [] : parsed.faults;
    const words = { what: 'The file cannot be read', why: 'It is no JSON document.', next: 'See faults.' };
    throw new ApiProblem('faults', words, { status: 422, faults });
  }
};
