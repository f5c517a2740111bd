import { Link } from 'wouter';
import { inWords } from '../../../ui/index.js';
import type { Card, Planned, Today } from './card-read.js';

/** How many drums were planned and how many may go now, with their weight and numbers. */
export const CardLoad = ({ card, planned }: { readonly card: Card; readonly planned: Planned }) => {
  const { today, drumNumbers, weighed } = card;
  const fewer = today?.fewer ?? null;
  const going = fewer?.drums ?? drumNumbers.length;
  return (
    <>
      <table className="card-table">
        <caption className="unseen">Drums</caption>
        <tbody>
          <tr>
            <th scope="row">Planned</th>
            <td className="n">
              <b>{inWords(planned.drums, 'drums')}</b>
            </td>
            <td className="n may-wrap">{weight(weighed, today)}</td>
          </tr>
          {fewer !== null && (
            <tr>
              <th scope="row">May go now</th>
              <td className="n">
                <b className={fewer.drums === 0 ? 'plum' : undefined}>
                  {fewer.drums === 0 ? 'none' : inWords(fewer.drums, 'drums')}
                </b>
              </td>
              <td className="n">{fewer.drums > 0 && inWords(fewer.kg, 'kg')}</td>
            </tr>
          )}
        </tbody>
      </table>
      {today?.closed != null && <p className="plum">{today.closed}.</p>}
      <DrumNumbers drumNumbers={drumNumbers} going={going} />
      <OnHold flight={card.id} held={heldDrumsOf(planned)} />
    </>
  );
};

/** Those that stay behind are struck; what has no number yet is counted. */
const DrumNumbers = ({ drumNumbers, going }: Pick<Card, 'drumNumbers'> & { readonly going: number }) => {
  const named = drumNumbers.flatMap(({ drum }) => drum ?? []);
  const toFill = drumNumbers.length - named.length;
  return (
    <p>
      {drumNumbers.length === 0 && 'No drum is named yet.'}
      {named.map((drum, index) => (
        <span key={drum} className={index < going ? 'nw' : 'nw was'}>
          {drum}{' '}
        </span>
      ))}
      {toFill > 0 && `${inWords(toFill, 'drums')} to fill.`}
    </p>
  );
};

/** Where fit drums go in their place. */
const OnHold = ({ flight, held }: { readonly flight: string; readonly held: number }) =>
  held === 0 ? null : (
    <p>
      <b className="plum">{inWords(held, 'drums')} on HOLD.</b>{' '}
      <Link href={`/load/${encodeURIComponent(flight)}`}>Load of {flight}</Link> takes fit ones instead, or
      says which flights have them.
    </p>
  );

const heldDrumsOf = ({ stops }: Planned): number =>
  stops.reduce((sum, { heldDrums = 0 }) => sum + heldDrums, 0);

const weight = (weighed: Card['weighed'], today: Today | null): string => {
  if (weighed !== null) return `${inWords(weighed.kg, 'kg')} as weighed`;
  return today === null ? '' : inWords(today.load.kg, 'kg');
};
