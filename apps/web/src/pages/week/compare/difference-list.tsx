import { Fragment } from 'react';
import { figure, Qty } from '../../../ui/index.js';
import type { DifferenceGroup, DifferenceLine } from './difference-lines.js';

interface DifferenceListProps {
  readonly groups: readonly DifferenceGroup[];
  readonly currency: string;
  /** Ticks of lines; null: the plan is taken whole. */
  readonly ticks: Ticks | null;
}

export interface Ticks {
  /** Keys that the person has left out; the list follows once base has checked what is left. */
  readonly leftOut: readonly string[];
  readonly onTick: (key: string, taken: boolean) => void;
}

/** Removed, Moved, Added, Drums changed, Same: always all five, with line numbers to talk by. */
export const DifferenceList = ({ groups, currency, ticks }: DifferenceListProps) => {
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
        <Group key={group.name} group={group} currency={currency} ticks={ticks} />
      ))}
      <tfoot>
        <tr className="sum">
          <td />
          <td colSpan={4}>{leavesSome(lines) ? 'All lines taken' : 'All differences'}</td>
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

const leavesSome = (lines: readonly DifferenceLine[]): boolean => lines.some(({ isLeftOut }) => isLeftOut);

interface GroupProps extends Pick<DifferenceListProps, 'currency' | 'ticks'> {
  readonly group: DifferenceGroup;
}

const Group = ({ group, currency, ticks }: GroupProps) => (
  <tbody>
    <tr className="group">
      <th colSpan={8} scope="rowgroup">
        {group.name}, {countWords(group.flights)}
      </th>
    </tr>
    {group.lines.map((line) => (
      <Line key={line.number} line={line} currency={currency} ticks={ticks} />
    ))}
  </tbody>
);

interface LineProps extends Pick<DifferenceListProps, 'currency' | 'ticks'> {
  readonly line: DifferenceLine;
}

const Line = ({ line, currency, ticks }: LineProps) => (
  <tr className={line.isLeftOut ? 'left-out' : undefined}>
    <td className="ln">
      {ticks !== null && line.key !== null && (
        <TakeTick number={line.number} lineKey={line.key} ticks={ticks} />
      )}
      {line.number}
    </td>
    <th scope="row">{line.flight ?? <span className="slate">{line.isIdea ? 'idea' : 'new'}</span>}</th>
    <td>
      {line.was === null ? (
        <span className="slate">nothing</span>
      ) : (
        <span className={wasClass(line)}>{line.was}</span>
      )}
    </td>
    <td className="would-be">
      {line.isLeftOut ? (
        <b>left out{line.was === null ? '' : ', stays as it was'}</b>
      ) : (
        line.wouldBe.map(({ text, isNew }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: words of one sentence
          <Fragment key={at}>{isNew ? <b>{text}</b> : text}</Fragment>
        ))
      )}
      {line.isIdea && line.flight !== null && <small> idea</small>}
    </td>
    <td>{line.why}</td>
    <Change by={line.litres} unit="L" />
    <Change by={line.blockHours} unit="h" digits={2} wide />
    <Change by={line.flightCost} unit={currency} />
  </tr>
);

interface TakeTickProps {
  readonly number: number;
  readonly lineKey: string;
  readonly ticks: Ticks;
}

const TakeTick = ({ number, lineKey, ticks: { leftOut, onTick } }: TakeTickProps) => (
  <input
    type="checkbox"
    aria-label={`Take line ${number}`}
    checked={!leftOut.includes(lineKey)}
    onChange={(event) => onTick(lineKey, event.target.checked)}
  />
);

interface ChangeProps {
  readonly by: number | null;
  readonly unit: string;
  readonly digits?: number;
  readonly wide?: boolean;
}

const wasClass = ({ wouldBe, isLeftOut }: DifferenceLine): string | undefined =>
  wouldBe[0]?.text === 'Removed' && !isLeftOut ? 'was' : undefined;

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
