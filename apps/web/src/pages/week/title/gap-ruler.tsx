import { figure, inWords } from '../../../ui/index.js';
import type { StandingPlan } from '../week-read.js';
import { gapScale } from './gap-scale.js';

const width = 420;

/** "10 flights, 2 ideas": what the cost of the ruler is of. */
export const plannedWords = ({
  flights,
  laterIdeas,
}: Pick<StandingPlan, 'flights' | 'laterIdeas'>): string => {
  const offered = flights - laterIdeas;
  const ideas = laterIdeas === 0 ? '' : `, ${laterIdeas} ${laterIdeas === 1 ? 'idea' : 'ideas'}`;
  return `${inWords(offered, offered === 1 ? 'flight' : 'flights')}${ideas}`;
};

interface GapProps {
  readonly plan: StandingPlan;
  readonly currency: string;
}

/** In whole units of the currency: the plan's cost, what could be saved at most, and that as a share. */
const gapOf = ({ cost }: StandingPlan, { savedAtMost, share }: NonNullable<StandingPlan['moneyGap']>) => ({
  total: Math.round(cost.total / 100),
  gap: Math.round(savedAtMost / 100),
  percent: figure(share * 100, share < 0.01 ? 2 : 1),
});

/** The ruler in words, where it would be too small to read; or that there is none. */
export const GapWords = ({ plan, currency }: GapProps) => {
  if (plan.moneyGap === null)
    return <span className="slate">How far plan {plan.number} is from the cheapest is not known.</span>;
  const { total, gap, percent } = gapOf(plan, plan.moneyGap);
  return (
    <span className="gap-words">
      <b>
        gap {figure(gap)} {currency}, {percent} % of its cost
      </b>
      , no plan costs less: {figure(total - gap)} {currency}
    </span>
  );
};

/** A dimension line between "no plan costs less" and the plan that was accepted. */
export const GapRuler = ({ plan, currency }: GapProps) => {
  const { moneyGap, number } = plan;
  if (moneyGap === null) return null;
  const { total, gap, percent } = gapOf(plan, moneyGap);
  const scale = gapScale(total - gap, total);
  const [floor, here] = [scale.floor * width, scale.plan * width];
  const middle = (floor + here) / 2;
  const finding =
    `Plan ${number} as accepted, ${plannedWords(plan)}, costs ${figure(total)} ${currency}. On the routes looked at, no plan with no more shortage costs less ` +
    `than ${figure(total - gap)} ${currency}: the gap is ${figure(gap)} ${currency}, ${percent} % of its cost.`;
  return (
    <svg className="gap-ruler" viewBox={`0 0 ${width} 48`} role="img" aria-label={finding}>
      <path
        d={`M0 26H${width}${scale.ticks.map(({ at, long }) => `M${at * width} 26V${long ? 19 : 22}`).join('')}`}
        stroke="var(--rule)"
        strokeWidth=".8"
      />
      <path d={`M${floor} 9V34M${here} 9V34`} stroke="var(--ink)" strokeWidth="2" />
      <path
        d={`M${floor + 1} 12H${here - 1}M${floor + 7} 9L${floor + 1} 12L${floor + 7} 15M${here - 7} 9L${here - 1} 12L${here - 7} 15`}
        stroke="var(--ink)"
        fill="none"
      />
      <rect x={middle - 62} y="3" width="124" height="17" fill="var(--paper)" />
      <text x={middle} y="16" fontSize="13" fontWeight="600" textAnchor="middle">
        gap {figure(gap)} {currency}, {percent} %
      </text>
      <text x={floor} y="44" fontSize="12" textAnchor="middle">
        no plan costs less: {figure(total - gap)} {currency}
      </text>
      {gap > 0 && (
        <text x={here} y="44" fontSize="12" textAnchor="middle">
          plan {number} as accepted: {plannedWords(plan)}
        </text>
      )}
    </svg>
  );
};
