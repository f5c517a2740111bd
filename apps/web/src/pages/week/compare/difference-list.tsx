import { Fragment } from 'react';
import { figure, Qty } from '../../../ui/index.js';
import { type DifferenceGroup, type DifferenceLine, differenceGroups } from './difference-lines.js';
import type { Differences } from './differences-read.js';

interface DifferenceListProps {
  readonly differences: Differences;
  readonly day: (date: string) => string;
  readonly currency: string;
  /** Of the flights of an accepted plan. */
  readonly numbers: ReadonlyMap<string, string>;
}

/** Removed, Moved, Added, Drums changed, Same: always all five, with line numbers to talk by. */
export const DifferenceList = ({ differences, day, currency, numbers }: DifferenceListProps) => {
  const groups = differenceGroups(differences, day, numbers);
  const lines = groups.flatMap((group) => group.lines);
  const sum = (of: (line: DifferenceLine) => number | null) =>
    lines.reduce((total, line) => total + (of(line) ?? 0), 0);
  return (
    <table className="lines differences">
      <caption className="unseen">Differences, line by line</caption>
      <thead>
        <tr>
          <th className="ln">Line</th>
          {['Flight', 'Was', 'Would be', 'Why'].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
          <th scope="col" className="n">
            Litres
          </th>
          <th scope="col" className="n wide">
            Block
          </th>
          <th scope="col" className="n">
            Flight cost
          </th>
        </tr>
      </thead>
      {groups.map((group) => (
        <Group key={group.name} group={group} currency={currency} />
      ))}
      <tfoot>
        <tr className="sum">
          <td />
          <td colSpan={4}>All differences</td>
          <Change by={sum(({ litres }) => litres)} unit="L" />
          <Change by={sum(({ blockHours }) => blockHours)} unit="h" digits={2} wide />
          <Change by={sum(({ flightCost }) => flightCost)} unit={currency} />
        </tr>
      </tfoot>
    </table>
  );
};

const countWords = (flights: number): string =>
  flights === 0 ? 'no flights' : `${figure(flights)} ${flights === 1 ? 'flight' : 'flights'}`;

const Group = ({ group, currency }: { readonly group: DifferenceGroup; readonly currency: string }) => (
  <tbody>
    <tr className="group">
      <th colSpan={8} scope="rowgroup">
        {group.name}, {countWords(group.flights)}
      </th>
    </tr>
    {group.lines.map((line) => (
      <Line key={line.number} line={line} currency={currency} />
    ))}
  </tbody>
);

const Line = ({ line, currency }: { readonly line: DifferenceLine; readonly currency: string }) => (
  <tr>
    <td className="ln">{line.number}</td>
    <th scope="row">{line.flight ?? <span className="slate">{line.isIdea ? 'idea' : 'new'}</span>}</th>
    <td>
      {line.was === null ? (
        <span className="slate">nothing</span>
      ) : (
        <span className={wasClass(line)}>{line.was}</span>
      )}
    </td>
    <td className="would-be">
      {line.wouldBe.map(({ text, isNew }, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: words of one sentence
        <Fragment key={at}>{isNew ? <b>{text}</b> : text}</Fragment>
      ))}
      {line.isIdea && line.flight !== null && <small> idea</small>}
    </td>
    <td>{line.why}</td>
    <Change by={line.litres} unit="L" />
    <Change by={line.blockHours} unit="h" digits={2} wide />
    <Change by={line.flightCost} unit={currency} />
  </tr>
);

interface ChangeProps {
  readonly by: number | null;
  readonly unit: string;
  readonly digits?: number;
  readonly wide?: boolean;
}

/** One flight stands on one line where there is room; a list of names may wrap. */
const wasClass = ({ wouldBe, litres }: DifferenceLine): string =>
  `${litres === null ? '' : 'nw'} ${wouldBe[0]?.text === 'Removed' ? 'was' : ''}`;

/** "+800 L", "same". */
const Change = ({ by, unit, digits = 0, wide = false }: ChangeProps) => (
  <td className={wide ? 'n wide' : 'n'}>
    {by === null || Number(by.toFixed(digits)) === 0 ? (
      <span className="slate">same</span>
    ) : (
      <Qty value={by} unit={unit} digits={digits} sign />
    )}
  </td>
);
