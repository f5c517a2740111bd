import { useRef, useState } from 'react';
import { z } from 'zod';
import { type Calendar, newId, put, useAct, useMay } from '../../../api/index.js';
import { Button, Entry, MessageLine, ProblemLine, Tick } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';
import { apart, loadedOff, loadReport, type Signatures } from './loaded.js';
import type { TypedTotals } from './use-typed-totals.js';

const enteredSchema = z.object({ entered: z.boolean() });

const whyNotHeld =
  'Loaded is off: the load does not hold, see above. Put the drums elsewhere, or take others.';

interface LoadedFormProps {
  readonly flight: LoadedFlight;
  readonly typed: TypedTotals;
  readonly calendar: Calendar;
}

/** Who loaded and who checked; the commander signs where totals stay apart. Then it is loaded. */
export const LoadedForm = ({ flight, typed, calendar }: LoadedFormProps) => {
  const { signatures } = typed;
  const [bySoftFigures, setBySoft] = useState(false);
  const sign = (field: keyof Signatures) => (value: string) => typed.sign({ ...signatures, [field]: value });
  return (
    <section className="section load-loaded" aria-label="Loaded">
      <div className="names">
        <Entry label="Loaded by" value={signatures.loadedBy} onChange={sign('loadedBy')} />
        <Entry label="Checked by" value={signatures.checkedBy} onChange={sign('checkedBy')} />
        <div className="entry">
          <span className="commander">Commander</span>
          <b>{flight.pilot ?? 'not named'}</b>
        </div>
      </div>
      {apart(totalsIn(typed)).length > 0 && (
        <div className="names">
          <Entry label="Difference signed by" value={signatures.signedBy} onChange={sign('signedBy')} />
          <Entry label="Reason" value={signatures.reason} onChange={sign('reason')} />
        </div>
      )}
      <Tick
        label="Loaded by the soft figures, as where no report of the surface is fresh"
        checked={bySoftFigures}
        onChange={setBySoft}
      />
      <LoadedActs {...{ flight, typed, calendar, bySoftFigures }} />
    </section>
  );
};

/** Loaded; where that is refused, or the load does not hold, that it stands so in the aeroplane all the same. */
const LoadedActs = ({
  flight,
  typed,
  calendar,
  bySoftFigures,
}: LoadedFormProps & { readonly bySoftFigures: boolean }) => {
  const { signatures } = typed;
  const totals = totalsIn(typed);
  const mayLoad = useMay()('load', 'enter');
  const { idOf, renew } = useIds();
  const [isKept, setKept] = useState(false);
  const { run, isSending, problem } = useAct((allTheSame: boolean) => {
    const at = calendar.now.toISOString();
    const report = loadReport({ flight, totals, signatures, bySoftFigures, allTheSame, at, idOf });
    return put(`/api/flight-reports/${idOf('report')}`, report, { schema: enteredSchema });
  });
  const record = async (allTheSame: boolean) => {
    const answer = await run(allTheSame);
    if (answer === undefined) return;
    renew();
    setKept(!answer.body.entered);
    typed.discard();
  };
  const waits = loadedOff(flight, totals, signatures);
  const doesNotHold = flight.load?.holds === false;
  const isRefused = problem !== undefined && !problem.isSilence;
  return (
    <>
      <ProblemLine problem={problem} />
      {isKept && (
        <MessageLine
          kind="note"
          what="Kept and raised, not entered as loaded"
          why="With the take-off it flies so. What is against it stands on Morning, Decide now, and on Drums, Raised."
        />
      )}
      {mayLoad && (
        <Button
          kind="main"
          busy={isSending}
          offBecause={waits ?? (doesNotHold ? whyNotHeld : undefined)}
          onPress={() => void record(false)}
        >
          Loaded
        </Button>
      )}
      {mayLoad && (doesNotHold || isRefused) && waits === undefined && (
        <Button busy={isSending} onPress={() => void record(true)}>
          It stands so in the aeroplane: keep and raise it
        </Button>
      )}
    </>
  );
};

const totalsIn = ({ load, takeOff }: TypedTotals) => ({ load: load.answer, takeOff: takeOff.answer });

/** One id for each name, made once: what is sent again is the same thing; renewed for another loading. */
const useIds = () => {
  const ids = useRef(new Map<string, string>());
  const idOf = (name: string): string => {
    const id = ids.current.get(name) ?? newId();
    ids.current.set(name, id);
    return id;
  };
  return { idOf, renew: () => ids.current.clear() };
};
