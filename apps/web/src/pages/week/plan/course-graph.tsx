import { inWords } from '../../../ui/index.js';
import { type CoursePoint, courseScale, moneyTicks, steps } from './course.js';

interface CourseGraphProps {
  readonly course: readonly CoursePoint[];
  /** Asked for. */
  readonly seconds: number;
  readonly gone: number;
  readonly currency: string;
}

const [width, height, left, right, top, foot] = [640, 190, 84, 130, 14, 22];

/** Best cost and bound as they close in on each other. */
export const CourseGraph = ({ course: heard, seconds, gone, currency }: CourseGraphProps) => {
  // What was heard last holds until now.
  const last = heard.at(-1);
  const course = last === undefined ? [] : [...heard, { ...last, seconds: Math.max(gone, last.seconds) }];
  const scale = courseScale(course, seconds);
  if (scale === null || last === undefined)
    return <p className="slate">The graph begins with the first plan that is found.</p>;
  const x = (share: number) => left + share * (width - left - right);
  const y = (share: number) => top + share * (height - top - foot);
  const line = (amountOf: (point: CoursePoint) => number | null) =>
    steps(course, scale, amountOf)
      .map(([across, down], at) => `${at === 0 ? 'M' : 'L'}${x(across).toFixed(1)} ${y(down).toFixed(1)}`)
      .join('');
  const money = (amount: number) => inWords(Math.round(amount / 100), currency);
  const [best, bound] = [last.best, last.bound !== null && last.bound > 0 ? last.bound : null];
  const finding = `After ${inWords(Math.round(Math.max(gone, last.seconds)), 's')}: best ${best === null ? 'none yet' : money(best)}, ${
    bound === null ? 'nothing proved yet' : `no plan comes to less than ${money(bound)}`
  }.`;
  const first = course.find((point) => point.best !== null);
  const end = x(1) + 6;
  const gapPx = best === null || bound === null ? 99 : y(scale.down(bound)) - y(scale.down(best));
  return (
    <svg className="course" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={finding}>
      <path
        d={`M${x(0)} ${y(1)}H${x(1)}M${x(0)} ${y(0)}V${y(1)}`}
        stroke="var(--rule)"
        fill="none"
        strokeWidth="1"
      />
      {moneyTicks(scale).map((amount) => (
        <g key={amount}>
          <path d={`M${x(0)} ${y(scale.down(amount))}H${x(1)}`} stroke="var(--rule-row)" />
          <text x={x(0) - 6} y={y(scale.down(amount)) + 4} fontSize="12" textAnchor="end">
            {money(amount)}
          </text>
        </g>
      ))}
      {[0, 0.5, 1].map((share) => (
        <text
          key={share}
          x={x(share)}
          y={height - 6}
          fontSize="12"
          textAnchor={share === 0 ? 'start' : share === 1 ? 'end' : 'middle'}
        >
          {inWords(Math.round(Math.max(seconds, gone) * share), 's')}
        </text>
      ))}
      <path
        d={line(({ bound: amount }) => amount)}
        fill="none"
        stroke="var(--sea)"
        strokeWidth="1.6"
        strokeDasharray="6 3"
      />
      <path d={line(({ best: amount }) => amount)} fill="none" stroke="var(--ink)" strokeWidth="2.4" />
      {first !== undefined && (
        <text x={x(scale.across(first.seconds)) + 4} y={y(scale.down(first.best ?? 0)) - 5} fontSize="12">
          first {money(first.best ?? 0)}
        </text>
      )}
      {best !== null && (
        <text x={end} y={y(scale.down(best)) + (gapPx < 16 ? 0 : 4)} fontSize="12" fontWeight="600">
          best {money(best)}
        </text>
      )}
      {bound !== null && (
        <text x={end} y={y(scale.down(bound)) + (gapPx < 16 ? 14 : 4)} fontSize="12">
          floor {money(bound)}
        </text>
      )}
    </svg>
  );
};
