import type { ReactNode } from 'react';
import { type Calendar, useSettings } from '../../../api/index.js';
import { inWords, SurfaceWord } from '../../../ui/index.js';
import type { WeekFlight } from '../week-read.js';
import { CardCost } from './card-cost.js';
import { CardLimits } from './card-limits.js';
import { CardLoad } from './card-load.js';
import type { Card, Heard, Today } from './card-read.js';
import { GoBack, Stay } from './card-stops.js';
import { crewWords, forWords, heardWords, planningWords } from './card-words.js';
import { IfDeclined } from './if-declined.js';
import { Instead } from './instead.js';

interface CardRowsProps {
  readonly flight: WeekFlight;
  readonly card: Card;
  /** Id of the plan in force. */
  readonly standing: string | null;
  readonly calendar: Calendar;
}

/** The card as a printed form; the order never changes. */
export const CardRows = ({ flight, card, standing, calendar }: CardRowsProps) => {
  const { today } = card;
  const planned = today?.planned ?? card.planned;
  const currency = useSettings().value?.data.currency ?? '';
  const load = today?.load ?? { drums: planned.drums, cost: planned.cost };
  const reckoned = today === null ? null : planningWords(today);
  return (
    <dl className="form-rows card-rows">
      <Row label="For">{forWords(card)}</Row>
      {today !== null && (
        <Row label="Heard">
          {today.heard.map((heard) => (
            <HeardLine key={heard.place} heard={heard} calendar={calendar} />
          ))}
        </Row>
      )}
      <Row label="Load">
        <CardLoad card={card} planned={planned} />
      </Row>
      {today !== null && today.legs.length > 0 && (
        <Row label="Limits" note={[inWords(today.load.drums, 'drums'), reckoned].filter(Boolean).join(', ')}>
          <CardLimits card={card} legs={today.legs} />
        </Row>
      )}
      <Row label="Unload or stay" {...(reckoned === null ? {} : { note: reckoned })}>
        {planned.stops.map((stop) => (
          <Stay key={stop.place} stop={stop} />
        ))}
      </Row>
      {today !== null && (
        <Row label="Crew">
          <Crew today={today} pilot={flight.pilot} />
        </Row>
      )}
      {card.ifDeclined !== null && (
        <Row label="If declined">
          <IfDeclined words={card.ifDeclined.ifDeclined} level={card.ifDeclined.protects?.level} />
        </Row>
      )}
      <Row label="Cost in three parts">
        <CardCost load={load} fewer={today?.fewer ?? null} currency={currency} />
      </Row>
      <Row label="Go back if">
        {planned.stops.map((stop) => (
          <GoBack key={stop.place} stop={stop} />
        ))}
      </Row>
      {today !== null && (
        <Row label="Instead">
          <Instead flight={flight.id} today={today} standing={standing} calendar={calendar} />
        </Row>
      )}
    </dl>
  );
};

interface RowProps {
  readonly label: string;
  readonly note?: string;
  readonly children: ReactNode;
}

const Row = ({ label, note, children }: RowProps) => (
  <div>
    <dt>
      {label}
      {note !== undefined && (
        <>
          <br />
          {note}
        </>
      )}
    </dt>
    <dd>{children}</dd>
  </div>
);

const HeardLine = ({ heard, calendar }: { readonly heard: Heard; readonly calendar: Calendar }) => {
  const when = (at: string) => (/T/.test(at) ? calendar.when(at) : calendar.day(at));
  const state = heard.report === null || heard.isStale ? 'unknown' : heard.report.state;
  return (
    <p>
      <b>{heard.place}</b> <SurfaceWord state={state} /> {heardWords(heard, when)}
    </p>
  );
};

const Crew = ({ today, pilot }: { readonly today: Today; readonly pilot: string | null }) => {
  const { who, unfit, rest } = crewWords(today, pilot);
  return (
    <p>
      <b>{who}</b>. {unfit !== null && <b className="plum">Not fit: {unfit}. </b>}
      {rest}
    </p>
  );
};
