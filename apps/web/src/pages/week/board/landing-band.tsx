import { memo } from 'react';
import type { Week } from '../week-read.js';
import { landingsByDay } from './landings-by-day.js';

/** Drums landed per strip and day, of what can be unloaded there. */
export const LandingBand = memo(({ week: { days, landings, today } }: { readonly week: Week }) => {
  const isNarrow = days.length > 7;
  const byDay = landingsByDay(landings, isNarrow ? 4 : 5);
  return (
    <tfoot>
      <tr className="week-line week-landings">
        <th scope="row" className="tail">
          <b className="label">Drums landed</b> a day, of the strip's limit
        </th>
        {days.map(({ date }) => (
          <td key={date} className={`band-cell ${date === today ? 'now' : ''}`}>
            {byDay.get(date)?.listed.map(({ place, drums, limitDrums }) => (
              <p key={place}>
                <span>{place} </span>
                <Landed drums={drums} limit={limitDrums} />
              </p>
            ))}
            {(byDay.get(date)?.more ?? 0) > 0 && (
              <p className="slate">
                {isNarrow ? `${byDay.get(date)!.more} more` : `and ${byDay.get(date)!.more} more, less full`}
              </p>
            )}
            {!byDay.has(date) && <span className="slate">none</span>}
          </td>
        ))}
      </tr>
    </tfoot>
  );
});
LandingBand.displayName = 'LandingBand';

const Landed = ({ drums, limit }: { readonly drums: number; readonly limit: number | null }) => {
  if (limit === null)
    return (
      <span>
        <b>{drums}</b> no limit
      </span>
    );
  if (drums > limit)
    return (
      <b className="plum">
        {drums - limit} over {limit}
      </b>
    );
  if (drums === limit)
    return (
      <b>
        <span className="roomy">full </span>
        {drums}
        <Of />
        {limit}
      </b>
    );
  return (
    <span>
      <b>{drums}</b>
      <Of />
      {limit}
    </span>
  );
};

const Of = () => <span className="of"> of </span>;
