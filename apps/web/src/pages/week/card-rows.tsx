import type { ReactNode } from 'react';
import { type Calendar, useSettings } from '../../api/index.js';
import { inWords, type Level, LevelMark, SurfaceWord } from '../../ui/index.js';
import { CardCost } from './card-cost.js';
import { CardLimits } from './card-limits.js';
import type { Card, Heard, Planned, Today } from './card-read.js';
import { crewWords, heardWords, planningWords } from './card-words.js';
import { Instead } from './instead.js';
import type { WeekFlight } from './week-read.js';

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
      <Row label="For">{planned.reason.text}</Row>
      {today !== null && (
        <Row label="Heard">
          {today.heard.map((heard) => (
            <HeardLine key={heard.place} heard={heard} calendar={calendar} />
          ))}
        </Row>
      )}
      <Row label="Load">
        <Load card={card} planned={planned} />
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

const Load = ({ card, planned }: { readonly card: Card; readonly planned: Planned }) => {
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
            <td className="n">{weight(weighed, today)}</td>
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

const weight = (weighed: Card['weighed'], today: Today | null): string => {
  if (weighed !== null) return `${inWords(weighed.kg, 'kg')} as weighed`;
  return today === null ? '' : inWords(today.load.kg, 'kg');
};

const Stay = ({ stop }: { readonly stop: Planned['stops'][number] }) => {
  const { printedArrivalLb, takeoffLimitLb, printedOverLb } = stop.unloadOrStay;
  return (
    <p>
      <b>{inWords(printedArrivalLb, 'lb')}</b> arriving, <b>{inWords(takeoffLimitLb, 'lb')}</b> to leave{' '}
      {stop.place}:{' '}
      {printedOverLb > 0 ? (
        <b className="plum">{inWords(printedOverLb, 'lb')} over</b>
      ) : (
        `${inWords(-printedOverLb, 'lb')} spare`
      )}
      .
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

const levelOf: Readonly<Record<string, Level>> = {
  'run out': 'critical',
  'below critical': 'critical',
  'below minimum': 'below',
};

export const IfDeclined = ({
  words,
  level,
}: {
  readonly words: string;
  readonly level: string | undefined;
}) => {
  const mark = level === undefined ? undefined : levelOf[level];
  return (
    <p>
      {mark !== undefined && (
        <>
          <LevelMark level={mark} words={`${level!.charAt(0).toUpperCase()}${level!.slice(1)}.`} />{' '}
        </>
      )}
      {words}
    </p>
  );
};

const GoBack = ({
  stop: { place, tailwindLimitKt, committalPoint, ifSoft },
}: {
  stop: Planned['stops'][number];
}) => (
  <p>
    {place}: tailwind more than <b>{inWords(tailwindLimitKt, 'kt')}</b>
    {committalPoint === null ? (
      '. Committal point: none. '
    ) : (
      <>
        , decide by <b>{committalPoint}</b>.{' '}
      </>
    )}
    {ifSoft}
  </p>
);
