import './words.css';
import { tailwindWords } from '@drumline/loading';
import { knots } from '@drumline/units';
import { useState } from 'react';
import type { Calendar } from '../../../api/index.js';
import { Entry, figure, SurfaceWord } from '../../../ui/index.js';
import type { LoadedFlight } from '../load-read.js';
import type { SheetLeg } from '../sheet-read.js';

/** Decided the evening before, in words; and what a tailwind that is met means. */
export const GoBack = ({ goBack }: { readonly goBack: SheetLeg['goBack'] }) => {
  const [typed, setTyped] = useState('');
  const kt = Number(typed);
  const limit = goBack.tailwindLimitKt;
  const met = typed !== '' && Number.isFinite(kt) && limit !== null;
  return (
    <section className="section load-go-back">
      <h2>Go back if, {goBack.place}</h2>
      <ol>
        {linesBesideUnload(goBack).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
      {limit !== null && (
        <div className="tailwind">
          <Entry
            label={`Tailwind at ${goBack.place}, last call`}
            value={typed}
            onChange={setTyped}
            unit="kt"
            input={{ inputMode: 'numeric', size: 4 }}
          />
          <p role="status" className={met && kt > limit ? 'plum' : ''}>
            {met && <b>{tailwindWords(knots(limit), knots(kt))}</b>}
          </p>
        </div>
      )}
    </section>
  );
};

/** Unload or stay has a place of its own. */
const linesBesideUnload = ({
  lines,
  notToUse,
  leaveAgain,
  leaveAgainSoft,
}: SheetLeg['goBack']): readonly string[] => {
  const there = [leaveAgain, leaveAgainSoft].flatMap((each) =>
    each === null ? [] : [`${each.words}.`, `Unload or stay: ${each.words}.`],
  );
  return [...lines.filter((line) => !there.includes(line)), ...(notToUse === null ? [] : [notToUse])];
};

interface UnloadOrStayProps {
  readonly flight: LoadedFlight;
  readonly goBack: SheetLeg['goBack'];
}

/** Whether it could leave again as it arrives: with these drums, and as it was planned. */
export const UnloadOrStay = ({ flight, goBack }: UnloadOrStayProps) => {
  const { leaveAgain, leaveAgainSoft, place } = goBack;
  const planned = flight.asPlanned.find((each) => each.place === place);
  if (leaveAgain === null) return null;
  return (
    <section className="section load-unload">
      <h2>Unload or stay, {place}</h2>
      <p className={leaveAgain.canLeaveLoaded ? '' : 'plum'}>
        <b>As weighed: {leaveAgain.words}.</b>
      </p>
      {leaveAgainSoft !== null && leaveAgainSoft.words !== leaveAgain.words && <p>{leaveAgainSoft.words}.</p>}
      {planned !== undefined && (
        <p className="slate">
          At {figure(flight.planningKg)} kg a drum, as planned: {figure(planned.printedArrivalLb)} lb against{' '}
          {figure(planned.takeoffLimitLb)} lb take-off limit, {figure(Math.abs(planned.printedOverLb))} lb{' '}
          {planned.printedOverLb > 0 ? 'over' : 'spare'}.
        </p>
      )}
    </section>
  );
};

interface HeardProps {
  readonly flight: LoadedFlight;
  readonly calendar: Calendar;
}

/** What was said of the strip, by radio and by the crews who were there or turned back. */
export const Reported = ({ flight: { reported, crewsSaid, stops }, calendar }: HeardProps) => {
  const places = new Set(stops.map(({ place }) => place));
  const ofStrip = reported.filter(({ place }) => places.has(place)).slice(0, 4);
  return (
    <section className="section load-reported">
      <h2>Reported of {[...places].join(', ')}</h2>
      {ofStrip.length + crewsSaid.length === 0 && <p>Nobody has reported yet.</p>}
      <ul>
        {ofStrip.map(({ place, state, at, by }) => (
          <li key={`${place} ${at}`}>
            <b>{calendar.when(at)}</b> <SurfaceWord state={state} /> {by}
            {places.size > 1 ? `, ${place}` : ''}
          </li>
        ))}
        {crewsSaid.map(({ flight, kind, at, by, words }) => (
          <li key={`${flight} ${at} ${kind}`}>
            <b>{calendar.when(at)}</b> {by}, {flight}, {kind}: {words}
          </li>
        ))}
      </ul>
    </section>
  );
};
