import { type JudgedCount } from '@drumline/stock';
import { litres, print, printNumber } from '@drumline/units';
import { Link } from 'wouter';
import { Notice, Page, timeWords } from '../../phone/index.js';
import { cacheView } from '../cache-view.js';
import type { AtPlace } from '../use-places.js';

/** The count that was just kept, against the book of this phone. */
export const CountKept = ({ here, place }: AtPlace) => {
  const { name, stock } = cacheView(here, place);
  const last = stock.lastCount;
  if (last === null) return <Page title={`${name} ${place}: never counted`} />;
  const { count, toleranceLitres } = last;
  const difference = count.litres - stock.bookLitres;
  return (
    <Page
      above={`Counted by ${count.by}, ${timeWords(count.at)}, ${count.seenFrom === 'air' ? 'from the air' : 'on the ground'}`}
      title={`${name} ${place}`}
      acts={
        <>
          <Link className="btn" href={`/at/${place}/count`}>
            Count again
          </Link>
          <Link className="btn main" href={`/at/${place}`}>
            Leave it so
          </Link>
        </>
      }
    >
      <table className="cmp">
        <tbody>
          <Row word="Your count" figure={printNumber(count.litres)} />
          <Row word="Book on this phone" figure={printNumber(stock.bookLitres)} />
          <Row word="Difference" figure={printNumber(difference)} isDifference />
          <Row word="Allowed" figure={printNumber(toleranceLitres)} />
        </tbody>
      </table>
      <Verdict judged={last} difference={difference} />
      {count.seenFrom === 'air' && (
        <Notice
          kind="note"
          word="From the air."
          title="It counts for less until somebody counts on the ground."
        />
      )}
    </Page>
  );
};

interface RowProps {
  readonly word: string;
  readonly figure: string;
  readonly isDifference?: boolean;
}

const Row = ({ word, figure, isDifference = false }: RowProps) => (
  <tr className={isDifference ? 'diff' : ''}>
    <th scope="row">{word}</th>
    <td className="f">
      {figure}
      <small>L</small>
    </td>
  </tr>
);

const Verdict = ({ judged, difference }: { readonly judged: JudgedCount; readonly difference: number }) => {
  const apart = print(litres(Math.abs(difference)), 'L');
  if (judged.verdict === 'accepted')
    return <Notice kind="agree" word="Agrees." title={`${apart} apart, within what is allowed.`} />;
  if (judged.verdict === 'lower')
    return (
      <Notice kind="check" word="Short." title={`${apart} less than the book.`}>
        From now the lower figure, {print(judged.count.litres, 'L')}, is what can be planned on. Look once
        more if you can. Somebody else has to close it.
      </Notice>
    );
  return (
    <Notice kind="check" word="More." title={`${apart} more than the book.`}>
      The book stays what can be planned on until somebody finds out why. Look once more if you can.
    </Notice>
  );
};
