import { useRef, useState } from 'react';
import { type Calendar, newId, put, useAct, useMay } from '../../../api/index.js';
import { Button, Entry, ProblemLine, Tick } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';
import { apart, loadedOff, loadReport, type Signatures } from './loaded.js';
import type { TypedTotals } from './use-typed-totals.js';

interface LoadedFormProps {
  readonly flight: LoadedFlight;
  readonly typed: TypedTotals;
  readonly calendar: Calendar;
}

/** Who loaded and who checked; the commander signs where totals stay apart. Then it is loaded. */
export const LoadedForm = ({ flight, typed, calendar }: LoadedFormProps) => {
  const { signatures } = typed;
  const totals = { load: typed.load.answer, takeOff: typed.takeOff.answer };
  const [bySoftFigures, setBySoft] = useState(false);
  const mayLoad = useMay()('load', 'enter');
  const ids = useIds();
  const loaded = useAct(() =>
    put(
      `/api/flight-reports/${ids('report')}`,
      loadReport({
        ...{ flight, totals, signatures, bySoftFigures },
        at: calendar.now.toISOString(),
        idOf: ids,
      }),
    ),
  );
  const sign = (field: keyof Signatures) => (value: string) => typed.sign({ ...signatures, [field]: value });
  const record = async () => {
    if ((await loaded.run()) !== undefined) typed.discard();
  };
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
      {apart(totals).length > 0 && (
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
      <ProblemLine problem={loaded.problem} />
      {mayLoad && (
        <Button
          kind="main"
          busy={loaded.isSending}
          offBecause={loadedOff(flight, totals, signatures)}
          onPress={() => void record()}
        >
          Loaded
        </Button>
      )}
    </section>
  );
};

/** One id for each name, made once: what is sent again is the same thing. */
const useIds = (): ((name: string) => string) => {
  const ids = useRef(new Map<string, string>());
  return (name) => {
    const id = ids.current.get(name) ?? newId();
    ids.current.set(name, id);
    return id;
  };
};
