import { Link } from 'wouter';
import { Notice, timeWords } from '../../phone/index.js';
import { newsOf } from '../day/newer-version.js';
import type { LegProps } from './leg-card.js';
import { drumsOnLeg } from './leg-words.js';

/** So long without hearing base a load may be another one by now. Common practice, no source. */
const staleMs = 30 * 60_000;

/** What has changed since the page was opened, and what nobody has said. */
export const LegWarnings = ({ here, leg, now }: LegProps & { readonly now: Date }) => {
  const { flight, newer, readAt, own } = here;
  const { onSheet, besides } = drumsOnLeg(flight, leg - 1, own.drums);
  const left = new Set(own.drums.flatMap(({ drum, kind }) => (kind === 'left at' ? [drum] : [])));
  const aboard = [...onSheet, ...besides].filter((number) => !left.has(number));
  const held = aboard.filter((number) => here.held.has(number));
  const isOut = leg > 1 || own.offAt !== null || own.drums.length > 0;
  return (
    <>
      {newer === 'gone' && (
        <Notice kind="stop" word="Not yours any more." title={`Base no longer gives ${flight.id} to you.`}>
          Ask base. What you have reported stays.
        </Notice>
      )}
      {newer !== null && newer !== 'gone' && (
        <Notice kind="check" word={newsOf(flight, newer)} title="Nothing has changed on this page.">
          <Link className="btn" href={`/${flight.id}/newer`}>
            See what differs
          </Link>
        </Notice>
      )}
      {own.refusedAt !== null && (
        <Notice kind="stop" word="You will not fly this." title="Base plans again." />
      )}
      {held.length > 0 && (
        <Notice
          kind="stop"
          word="HOLD."
          title={isOut ? `${held.join(', ')} aboard.` : `Do not carry out ${held.join(', ')}.`}
        >
          {held.map((number) => `${number}: ${here.held.get(number)}`).join('. ')}.
        </Notice>
      )}
      {flight.sheet?.notInBookWords && (
        <Notice kind="note" word="Not in the book." title={flight.sheet.notInBookWords} />
      )}
      {flight.needsDecision !== null && (
        <Notice kind="check" word="Base has to decide." title={flight.needsDecision} />
      )}
      {now.getTime() - Date.parse(readAt) > staleMs && (
        <Notice
          kind="note"
          word={`Not heard since ${timeWords(readAt)}.`}
          title={`This load is version ${flight.version}. If base has changed it you have not heard.`}
        />
      )}
    </>
  );
};
