import './totals.css';
import { questionWeight } from '@drumline/loading';
import { kilograms } from '@drumline/units';
import { Button, Entry, figure, ProblemLine } from '../../../ui/index.js';
import type { LoadedFlight, Totals } from '../load-read.js';
import type { TypedTotal, TypedTotals } from './use-typed-totals.js';

interface TotalsFormProps {
  readonly flight: LoadedFlight;
  readonly typed: TypedTotals;
}

/** Each total from two hands. The sheet's is not told before the other is typed. */
export const TotalsForm = ({ flight, typed }: TotalsFormProps) => {
  const drums = flight.load?.sheet.drums.length ?? 0;
  const doubt = (lb: number) =>
    questionWeight(lb, 'lb', { count: drums, grossKg: kilograms(flight.planningKg) }) ?? undefined;
  return (
    <section className="section load-totals">
      <h2>
        Two totals{' '}
        <small>
          {flight.toleranceLb === null
            ? 'no tolerance is given'
            : `${figure(flight.toleranceLb)} lb is accepted`}
        </small>
      </h2>
      <Pair name="Load" label="By hand" total={typed.load} doubt={doubt} />
      <Pair name="Take-off weight" label="By the aircraft" total={typed.takeOff} />
      {typed.isBegun && (
        <p className="load-kept">
          What is typed is kept on this device until the flight is loaded.{' '}
          <Button small onPress={typed.discard}>
            Discard what is typed
          </Button>
        </p>
      )}
    </section>
  );
};

interface PairProps {
  readonly name: string;
  readonly label: string;
  readonly total: TypedTotal;
  readonly doubt?: (lb: number) => string | undefined;
}

const Pair = ({ name, label, total, doubt }: PairProps) => {
  const { typed, lb, answer } = total;
  return (
    <form
      className="pair"
      aria-label={name}
      onSubmit={(event) => {
        event.preventDefault();
        total.compare();
      }}
    >
      <h3>{name}</h3>
      <Entry
        label={label}
        value={typed}
        unit="lb"
        onChange={total.type}
        doubt={lb === undefined ? undefined : doubt?.(lb)}
        fault={typed !== '' && lb === undefined ? 'a total is whole pounds' : undefined}
        input={{ inputMode: 'numeric', size: 6, autoComplete: 'off' }}
      />
      <Button type="submit" small busy={total.isAsking}>
        Compare
      </Button>
      <Beside answer={answer} />
      <ProblemLine problem={total.problem} />
      <div role="status" className="found">
        {answer !== undefined && <Found answer={answer} />}
      </div>
    </form>
  );
};

/** The sheet's own total, told only beside the other. */
const Beside = ({ answer }: { readonly answer: Totals | undefined }) => (
  <dl>
    <div>
      <dt>By the sheet</dt>
      <dd>
        {answer === undefined ? (
          <span className="slate">not told yet</span>
        ) : (
          `${figure(answer.bySheetLb)} lb`
        )}
      </dd>
    </div>
    <div>
      <dt>Difference</dt>
      <dd className={answer === undefined ? 'slate' : answer.agrees ? 'pine' : 'plum'}>
        {answer === undefined
          ? 'not yet'
          : `${figure(answer.differenceLb)} lb, ${answer.agrees ? 'agrees' : 'differs'}`}
      </dd>
    </div>
  </dl>
);

/** The arithmetic and what people usually do wrong; never which of the two is right. */
const Found = ({ answer }: { readonly answer: Totals }) => (
  <>
    <p>
      <b>{answer.words}.</b> {answer.agrees && answer.differenceLb === 0 ? '' : answer.advice}
    </p>
    {answer.slips.length > 0 && (
      <ul>
        {answer.slips.map(({ kind, title, words }) => (
          <li key={`${kind} ${words}`}>
            <b>{title}.</b> {words}
          </li>
        ))}
      </ul>
    )}
    {answer.roundingWords !== null && <p className="slate">{answer.roundingWords}.</p>}
  </>
);
