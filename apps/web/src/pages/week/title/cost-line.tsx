import { figure, inWords } from '../../../ui/index.js';
import type { Money, StandingPlan } from '../week-read.js';
import { GapRuler } from './gap-ruler.js';

interface CostLineProps {
  readonly cost: Money;
  readonly flights: number;
  readonly plan: StandingPlan | null;
  readonly currency: string;
}

/** Reads as a sum: flight + fuel + handling = the flights that stand. The total is that of the figures as they stand here. The gap is of the whole plan, later ideas too: what that costs stands beside it. */
export const CostLine = ({ cost, flights, plan, currency }: CostLineProps) => {
  const parts = [cost.flight, cost.fuel, cost.handling].map((cents) => Math.round(cents / 100));
  const [flight, fuel, handling] = parts.map((amount) => `${figure(amount)} ${currency}`);
  const whole = parts.reduce((sum, amount) => sum + amount, 0);
  return (
    <div className="week-cost">
      <dl>
        <Part label="Flight">{flight}</Part>
        <Part label="Fuel" sign="+">
          {fuel}
        </Part>
        <Part label="Handling" sign="+">
          {handling}
        </Part>
        <Part label={`Standing, ${inWords(flights, flights === 1 ? 'flight' : 'flights')}`} sign="=">
          {figure(whole)} {currency}
        </Part>
        {plan?.isAsAccepted === true && plan.laterIdeas > 0 && (
          <Part
            label={
              <>
                With {inWords(plan.laterIdeas, plan.laterIdeas === 1 ? 'idea' : 'ideas')}
                <span className="roomy">, as the gap</span>
              </>
            }
          >
            {figure(Math.round(plan.cost.total / 100))} {currency}
          </Part>
        )}
        <Part label="Delivered">
          {cost.perLitre === null ? 'nothing' : `${figure(cost.perLitre / 100, 2)} ${currency}/L`}
        </Part>
      </dl>
      {plan?.isAsAccepted === true && <GapRuler plan={plan} currency={currency} />}
    </div>
  );
};

interface PartProps {
  readonly label: React.ReactNode;
  readonly sign?: string;
  readonly children: React.ReactNode;
}

const Part = ({ label, sign, children }: PartProps) => (
  <div>
    <dt>{label}</dt>
    <dd className="key">
      {sign !== undefined && <span className="sign">{sign} </span>}
      {children}
    </dd>
  </div>
);
