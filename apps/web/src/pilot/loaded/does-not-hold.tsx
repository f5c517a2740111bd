import type { LoadSheet } from '@drumline/loading';
import { type ReactNode, useMemo } from 'react';
import { Notice, Press, usePart } from '../../phone/index.js';
import type { FlightHere } from '../use-flight.js';
import type { PositionsNow } from './use-positions.js';

interface DoesNotHoldProps {
  readonly sheet: LoadSheet;
  /** "This load does not hold." */
  readonly word?: string;
  readonly children?: ReactNode;
}

/** What the load does not keep: limits of weight, strip, floor and envelope, and rules. Nothing is said of a load that holds. */
export const DoesNotHold = ({
  sheet: { holds, faults },
  word = 'This load does not hold.',
  children,
}: DoesNotHoldProps) =>
  holds ? null : (
    <Notice kind="stop" word={word} title={`${faults[0] ?? ''}.`}>
      {faults.length > 1 && <p>{faults.slice(1).join('. ')}.</p>}
      {children}
    </Notice>
  );

const part = () => import('./ways-to-hold.js');

interface RemediesProps {
  readonly here: FlightHere;
  readonly positions: Pick<PositionsNow, 'aboard' | 'ask' | 'leave' | 'stand'>;
}

/** Ways that hold by the sheet: other places, another drum, or fewer. */
export const Remedies = ({ here: { flight }, positions }: RemediesProps) => {
  const { aboard, ask, leave, stand } = positions;
  const isWanted = !flight.sheet!.holds && flight.request !== null;
  const program = usePart(part, isWanted);
  const code = flight.sheet!.checkCode;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a flight is another one when its sheet is
  const ways = useMemo(
    () => (program && isWanted ? program.waysToHold(flight.request, aboard) : null),
    [program, code, isWanted],
  );
  if (flight.request === null) return <p>Ask base for another version of this load.</p>;
  if (ways === null) return <p>Put the drums elsewhere, or take others.</p>;
  const { move } = ways;
  return (
    <>
      <div className="two">
        {ways.leave.map((off) => (
          <Press key={numbersOf(off)} onPress={() => leave(off.map(({ number }) => number))}>
            Take {numbersOf(off)} out
          </Press>
        ))}
        {ways.leave.length > 0 && ways.leave[0]!.length === 1 && (
          <Press onPress={() => ask(ways.leave[0]![0]!.position)}>
            Another in {ways.leave[0]![0]!.position}
          </Press>
        )}
        {move !== null && <Press onPress={() => stand(move.aboard)}>{upper(move.words)}</Press>}
      </div>
      {ways.leave.length === 0 && move === null && <p>Put the drums elsewhere, or take others.</p>}
    </>
  );
};

const numbersOf = (drums: readonly { readonly number: string }[]): string =>
  drums.map(({ number }) => number).join(', ');

const upper = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** On the card for as long as the load stands so. */
export const StandsSo = ({ here: { flight, own } }: { here: FlightHere }) => {
  if (flight.sheet === null) return null;
  const isTold = own.loadedVersion === flight.version;
  return (
    <DoesNotHold sheet={flight.sheet} {...(isTold ? { word: 'Loaded so, and it does not hold.' } : {})} />
  );
};
