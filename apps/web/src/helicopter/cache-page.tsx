import type { DrumToOpen } from '@drumline/stock';
import { type IsoDate, litres, print } from '@drumline/units';
import { Link } from 'wouter';
import { DrumNumber, dayWords, Page, timeWords, whenWords } from '../phone/index.js';
import { type CacheView, cacheView } from './cache-view.js';
import { LastReport } from './last-report.js';
import { LevelMark } from './level-mark.js';
import type { AtPlace } from './use-places.js';
import { aheadWords, begun, daysWords, shortDate } from './words.js';

/** One cache: which drum to open next, and what must not be opened. */
export const CachePage = ({ here, place }: AtPlace) => {
  const view = cacheView(here, place);
  const [next] = view.fit;
  return (
    <Page
      above={
        <>
          <span>{here.places.helicopter?.id ?? 'No helicopter'}</span>
          <span>read {whenWords(here.readAt, here.at)}</span>
        </>
      }
      title={`${view.name} ${place}`}
      acts={
        <div className="two">
          {next === undefined ? (
            <button type="button" className="btn main waits" aria-disabled="true">
              <span>
                Draw<small>No drum here is fit</small>
              </span>
            </button>
          ) : (
            <Link className="btn main" href={`/at/${place}/draw/${next.drum.number}`}>
              Draw
            </Link>
          )}
          <div className="two">
            <Link className="btn" href={`/at/${place}/count`}>
              Count
            </Link>
            <Link className="btn" href={`/at/${place}/sling`}>
              Sling
            </Link>
          </div>
        </div>
      }
    >
      <Figures view={view} />
      <LastReport here={here} place={place} />
      <h2 className="sect">Open in this order</h2>
      {next === undefined && <p className="said">No drum here is fit to be opened.</p>}
      <ol className="rows big">
        {view.fit.map((each, index) => (
          <FitRow key={each.drum.number} row={each} order={index + 1} at={{ place, today: here.today }} />
        ))}
        {view.notFit.map((each) => (
          <NotFitRow key={each.drum.number} row={each} place={place} />
        ))}
      </ol>
      <Link className="btn inset back" href="/">
        Back to the day
      </Link>
    </Page>
  );
};

const Figures = ({ view }: { readonly view: CacheView }) => {
  const { stock, level, levels, ahead } = view;
  const count = stock.lastCount;
  const reserve = Math.min(stock.usableLitres, levels?.medevacReserveLitres ?? 0);
  return (
    <div className="figures">
      <p>
        {level !== null && <LevelMark level={level} />}
        {level !== null && ' · '}
        <b>usable {print(stock.usableLitres, 'L')}</b>
        {reserve > 0 && `, ${print(litres(reserve), 'L')} of it reserve`}
      </p>
      <p className="soft">
        Book {print(stock.bookLitres, 'L')}
        {stock.heldLitres > 0 && ` · held ${print(stock.heldLitres, 'L')}`}
        {stock.pastRetestLitres > 0 && ` · past retest ${print(stock.pastRetestLitres, 'L')}`} ·{' '}
        {count === null
          ? 'never counted'
          : `counted ${dayWords(count.count.at)} ${timeWords(count.count.at)}${count.count.seenFrom === 'air' ? ', from the air' : ''}`}
      </p>
      {levels !== null && ahead !== null && <p className="soft">{aheadWords(levels, ahead, dayWords)}</p>}
    </div>
  );
};

interface FitRowProps {
  readonly row: DrumToOpen;
  readonly order: number;
  readonly at: { readonly place: string; readonly today: IsoDate };
}

const FitRow = ({ row: { drum, batch }, order, at: { place, today } }: FitRowProps) => (
  <li>
    <Link className={order === 1 ? 'row use picked' : 'row use'} href={`/at/${place}/draw/${drum.number}`}>
      <b>{order}</b>
      <span>
        <DrumNumber number={drum.number} />
      </span>
      <span className="side">{print(drum.litres, 'L')}</span>
      <span className="sub">
        {drum.content === 'part used' ? (
          <>
            <b>Part used</b>, opened{' '}
            {drum.openedOn === undefined ? 'before' : openedWords(drum.openedOn, today)}
          </>
        ) : (
          'Sealed'
        )}{' '}
        · <span className="n">{batch.id}</span>, {daysWords(batch.filledOn, today)} old ·{' '}
        <span className="n">retest {shortDate(batch.retestDue)}</span>
      </span>
    </Link>
  </li>
);

const openedWords = (openedOn: IsoDate, today: IsoDate): string =>
  openedOn === today ? 'today' : shortDate(openedOn);

const NotFitRow = ({ row, place }: { readonly row: DrumToOpen; readonly place: string }) => {
  const { drum, batch, fitness, hold } = row;
  return (
    <li>
      <Link className="row" href={`/at/${place}/drum/${drum.number}`}>
        <span>
          <DrumNumber number={drum.number} held />
        </span>
        <span className="side">{print(drum.litres, 'L')}</span>
        <span className="sub">
          {fitness === 'held'
            ? `${batch.id}. ${begun(hold?.reason ?? 'held')}. Do not open.`
            : `Past its retest of ${shortDate(batch.retestDue)}, ${batch.id}. Do not open.`}
        </span>
      </Link>
    </li>
  );
};
