import { Button, Tick } from '../../../ui/index.js';
import type { WeekFlight } from '../week-read.js';
import { type Freedoms, type PlanForm, standingWords } from './plan-form.js';

interface FreedomListProps {
  readonly freedoms: Freedoms;
  readonly form: PlanForm;
  readonly set: (change: Partial<PlanForm>) => void;
  readonly day: (date: string) => string;
  /** Who lets go. */
  readonly by: string;
}

/** Which flights stay, which are let go, which are left as they are though they might change. */
export const FreedomList = ({ freedoms, form, set, day, by }: FreedomListProps) => {
  const { never, whenLetGo, free } = freedoms;
  const open = free.filter(({ date }) => date >= form.from);
  return (
    <>
      {never.length > 0 && (
        <p>
          <b>Never change:</b> {listOf(never)}.
        </p>
      )}
      {whenLetGo.length > 0 && (
        <fieldset className="plan-flights">
          <legend>
            Frozen: stay unless let go, in the name of {by}
            {whenLetGo.length > 1 && (
              <Button small onPress={() => set({ letGo: new Set(whenLetGo.map(({ id }) => id)) })}>
                {`Tick all ${whenLetGo.length}`}
              </Button>
            )}
          </legend>
          {whenLetGo.map((flight) => (
            <Tick
              key={flight.id}
              label={`Let go ${standingWords(flight, day)}`}
              checked={form.letGo.has(flight.id)}
              onChange={(on) => set({ letGo: ticked(form.letGo, flight.id, on) })}
            />
          ))}
        </fieldset>
      )}
      {open.length > 0 && (
        <details className="plan-flights">
          <summary>
            {open.length === 1 ? '1 offered flight' : `${open.length} offered flights`} may change
            {form.keep.size > 0 && `, but for ${[...form.keep].join(', ')}`}
          </summary>
          {open.map((flight) => (
            <Tick
              key={flight.id}
              label={`Leave as it is: ${standingWords(flight, day)}`}
              checked={form.keep.has(flight.id)}
              onChange={(on) => set({ keep: ticked(form.keep, flight.id, on) })}
            />
          ))}
        </details>
      )}
      {never.length + whenLetGo.length + free.length === 0 && <p>No flights stand: the plan begins anew.</p>}
    </>
  );
};

const listOf = (flights: readonly WeekFlight[]): string =>
  flights.map(({ id, state, heldInPlace }) => `${id} ${heldInPlace ? 'held in place' : state}`).join(', ');

const ticked = (set: ReadonlySet<string>, id: string, on: boolean): ReadonlySet<string> =>
  on ? new Set([...set, id]) : new Set([...set].filter((each) => each !== id));
