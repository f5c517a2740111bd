import { figure, LevelMark, levelsWith } from '../../../ui/index.js';
import type { Differences, Lowest } from './differences-read.js';
import { levelOf, lowestWords } from './lowest-words.js';

interface LowestLevelsProps {
  readonly lowest: readonly Lowest[];
  readonly lastDay: string;
  readonly laterIdeas: Differences['laterIdeas'];
}

/** Lowest level of each cache before and after, on one scale, with minimum and critical. */
export const LowestLevels = ({ lowest, lastDay, laterIdeas }: LowestLevelsProps) => {
  const most = Math.max(
    1,
    ...lowest.flatMap((each) => [each.beforeLitres, each.afterLitres, each.minimumLitres]),
  );
  return (
    <table className="lines compare-levels">
      <caption>
        Lowest level per cache at the end of a day, to {lastDay}
        <small>{withWords(laterIdeas)}</small>
      </caption>
      <thead>
        <tr>
          <th scope="col">Cache</th>
          <th scope="col">Level</th>
          <th scope="col" className="n">
            Standing &gt; proposed
          </th>
        </tr>
      </thead>
      <tbody>
        {lowest.map((each) => (
          <tr key={each.place}>
            <th scope="row">
              <LevelMark level={levelOf(each, each.afterLitres)} words={each.place} />
              {levelOf(each, each.afterLitres) !== 'above' && (
                <span className="unseen">, {wordsOf[levelOf(each, each.afterLitres)]}</span>
              )}
            </th>
            <td>
              <Rule of={each} most={most} />
            </td>
            <td className="n">
              {each.beforeLitres === each.afterLitres ? (
                lowestWords(each.afterLitres)
              ) : (
                <b>
                  {lowestWords(each.beforeLitres)} &gt; {lowestWords(each.afterLitres)}
                </b>
              )}
              {each.withIdeas.afterLitres !== each.afterLitres && (
                <small>with ideas {lowestWords(each.withIdeas.afterLitres)}</small>
              )}
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td colSpan={3}>
            <span className="slate">
              Hollow standing, solid proposed; long dash minimum, dots critical; 0 to {figure(most)} L.
            </span>
          </td>
        </tr>
      </tfoot>
    </table>
  );
};

/** Each plan has ideas of its own. */
const withWords = ({ before, after }: Differences['laterIdeas']): string => {
  if (before === after) return levelsWith(after);
  return `${levelsWith(0)}; flights not offered yet are left out: ${before} in the plan that stands, ${after} in the one proposed`;
};

const wordsOf: Readonly<Record<string, string>> = {
  below: 'proposed below minimum',
  critical: 'proposed below critical',
};

const [width, height, edge] = [200, 20, 6];

const Rule = ({ of, most }: { readonly of: Lowest; readonly most: number }) => {
  const x = (litres: number) => edge + (Math.max(0, litres) / most) * (width - 2 * edge);
  const [before, after] = [x(of.beforeLitres), x(of.afterLitres)];
  const middle = height / 2;
  const changed = of.beforeLitres !== of.afterLitres;
  return (
    <svg className="lowest-rule" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <line x1={edge} x2={width - edge} y1={middle} y2={middle} stroke="var(--rule-row)" />
      <line
        x1={x(of.minimumLitres)}
        x2={x(of.minimumLitres)}
        y1="2"
        y2={height - 2}
        stroke="var(--ochre)"
        strokeWidth="2"
        strokeDasharray="5 2"
      />
      <line
        x1={x(of.criticalLitres)}
        x2={x(of.criticalLitres)}
        y1="2"
        y2={height - 2}
        stroke="var(--plum)"
        strokeWidth="2.5"
        strokeDasharray="1.5 2.2"
      />
      {changed && (
        <>
          <line x1={before} x2={after} y1={middle} y2={middle} stroke="var(--sea)" strokeWidth="2.5" />
          <circle cx={before} cy={middle} r="4.5" fill="var(--paper)" stroke="var(--sea)" strokeWidth="1.8" />
        </>
      )}
      <circle cx={after} cy={middle} r="4.5" fill={changed ? 'var(--sea)' : 'var(--ink)'} />
    </svg>
  );
};
