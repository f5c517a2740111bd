import { questionWeight } from '@drumline/loading';
import { kilograms } from '@drumline/units';
import { useState } from 'react';
import { post, useAct } from '../../api/index.js';
import { Button, Entry, figure, ProblemLine } from '../../ui/index.js';
import { type LoadedFlight, type Totals, totalsSchema } from './load-read.js';
import { poundsTyped, type TwoTotals } from './loaded.js';

interface TotalsFormProps {
  readonly flight: LoadedFlight;
  readonly totals: TwoTotals;
  readonly onTotals: (totals: TwoTotals) => void;
}

/** Each total from two hands. The sheet's is not told before the other is typed. */
export const TotalsForm = ({ flight, totals, onTotals }: TotalsFormProps) => {
  const drums = flight.load?.sheet.drums.length ?? 0;
  const doubt = (lb: number) =>
    questionWeight(lb, 'lb', { count: drums, grossKg: kilograms(flight.planningKg) }) ?? undefined;
  return (
    <section className="section load-totals">
      <h2>
        Two totals{' '}
        <small>
          {flight.toleranceLb === null ? 'no tolerance is given' : `${flight.toleranceLb} lb is accepted`}
        </small>
      </h2>
      <Pair
        flight={flight}
        of="load"
        label="By hand"
        answer={totals.load}
        doubt={doubt}
        onAnswer={(load) => onTotals({ ...totals, load })}
      />
      <Pair
        flight={flight}
        of="take-off weight"
        label="By the aircraft"
        answer={totals.takeOff}
        onAnswer={(takeOff) => onTotals({ ...totals, takeOff })}
      />
    </section>
  );
};

interface PairProps {
  readonly flight: LoadedFlight;
  readonly of: Totals['of'];
  readonly label: string;
  readonly answer: Totals | undefined;
  readonly doubt?: (lb: number) => string | undefined;
  readonly onAnswer: (answer: Totals | undefined) => void;
}

const Pair = ({ flight, of, label, answer, doubt, onAnswer }: PairProps) => {
  const [typed, setTyped] = useState('');
  const lb = poundsTyped(typed);
  const compare = useAct((typedLb: number) =>
    post(`/api/flights/${encodeURIComponent(flight.id)}/totals`, { of, typedLb }, { schema: totalsSchema }),
  );
  const send = async () => {
    if (lb === undefined) return;
    const answered = await compare.run(lb);
    if (answered !== undefined) onAnswer(answered.body);
  };
  const name = of === 'load' ? 'Load' : 'Take-off weight';
  return (
    <form
      className="pair"
      aria-label={name}
      onSubmit={(event) => {
        event.preventDefault();
        void send();
      }}
    >
      <h3>{name}</h3>
      <Entry
        label={label}
        value={typed}
        unit="lb"
        onChange={(value) => {
          setTyped(value);
          onAnswer(undefined);
        }}
        doubt={lb === undefined ? undefined : doubt?.(lb)}
        fault={typed !== '' && lb === undefined ? 'a total is whole pounds' : undefined}
        input={{ inputMode: 'numeric', size: 6, autoComplete: 'off' }}
      />
      <Button type="submit" small busy={compare.isSending}>
        Compare
      </Button>
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
      <ProblemLine problem={compare.problem} />
      <div role="status" className="found">
        {answer !== undefined && <Found answer={answer} />}
      </div>
    </form>
  );
};

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
