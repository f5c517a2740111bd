import { Link } from 'wouter';
import { DrumNumber, Notice, Page, whenWords } from '../../phone/index.js';
import { cacheView } from '../cache-view.js';
import type { PlacesHere } from '../use-places.js';
import { begun, shortDate } from '../words.js';

interface DoNotOpenProps {
  readonly here: PlacesHere;
  readonly place: string;
  readonly number: string;
}

/** Why a drum is not to be opened. What has already been drawn from it can be kept all the same. */
export const DoNotOpen = ({ here, place, number }: DoNotOpenProps) => {
  const row = cacheView(here, place).notFit.find(({ drum }) => drum.number === number);
  return (
    <Page
      above={`At ${place}`}
      title={
        <h1 className="title">
          <DrumNumber number={number} held={row !== undefined} big />
        </h1>
      }
      acts={
        <>
          {row !== undefined && (
            <Link className="btn stop" href={`/at/${place}/draw/${number}`}>
              I have already drawn from it
            </Link>
          )}
          <Link className="btn main" href={`/at/${place}`}>
            Leave it closed
          </Link>
        </>
      }
    >
      {row?.fitness === 'held' && (
        <Notice kind="stop" word="HOLD." title={`${begun(row.hold?.reason ?? 'held')}.`}>
          Batch {row.batch.id}
          {row.hold !== null && `, held ${whenWords(row.hold.at, here.at)} by ${row.hold.by}`}. Do not open.
        </Notice>
      )}
      {row?.fitness === 'past retest' && (
        <Notice
          kind="stop"
          word="Past retest."
          title={`Batch ${row.batch.id} was good until ${shortDate(row.batch.retestDue)}.`}
        >
          Do not open. Fuel quality can pass it again.
        </Notice>
      )}
      {row === undefined && <p className="said">Nothing stands against this drum here.</p>}
    </Page>
  );
};
