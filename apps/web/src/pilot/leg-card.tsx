import './leg.css';
import { useEffect } from 'react';
import { Link } from 'wouter';
import { dayWords, Page, type Person, useTerritoryNow, whenWords } from '../phone/index.js';
import { open } from './day.js';
import { LegActs } from './leg-acts.js';
import { LegFacts } from './leg-facts.js';
import { LegWarnings } from './leg-warnings.js';
import { type FlightHere, useFlight } from './use-flight.js';

interface LegCardProps {
  readonly id: string;
  /** From 1. */
  readonly leg: number;
  readonly person: Person;
}

/** One leg on one page: what decides first comes first, the reports last. */
export const LegCard = ({ id, leg, person }: LegCardProps) => {
  const here = useFlight(id);
  if (here === undefined) return <Page title={id} />;
  if (here === null || leg < 1 || leg >= here.flight.route.length)
    return (
      <Page
        title={id}
        acts={
          <Link className="btn" href="/">
            Back to the day
          </Link>
        }
      >
        <p className="said">No such leg on this phone.</p>
      </Page>
    );
  return <Card here={here} leg={leg} person={person} />;
};

/** A flight as it stands on this phone, and one of its legs. */
export interface LegProps {
  readonly here: FlightHere;
  readonly leg: number;
}

const Card = ({ here, leg, person }: LegProps & { readonly person: Person }) => {
  const { flight, day, isOpened } = here;
  const now = useTerritoryNow();
  // From now on this is the load that the person has open.
  useEffect(() => {
    if (!isOpened) void open(flight);
  }, [flight, isOpened]);
  const [from, to] = [flight.route[leg - 1]!, flight.route[leg]!];
  const place = day.places.find(({ code }) => code === to);
  const nm = flight.sheet?.legs[leg - 1]?.distanceNm;
  return (
    <Page
      above={
        <>
          <Link href="/">
            {flight.id} · {flight.aircraft} · version {flight.version}, {whenWords(flight.changedAt, now)}
          </Link>
          <span>{dayWords(flight.date)}</span>
        </>
      }
      title={
        <h1 className="route">
          {from}
          <span className="to">to</span>
          {to}
          {nm !== undefined && <span className="nm">{nm.toFixed(1)} NM</span>}
        </h1>
      }
      below={
        <>
          <span>{place === undefined ? '' : placeWords(place)}</span>
          <OtherLegs flight={flight.id} legs={flight.route.length - 1} leg={leg} />
        </>
      }
      acts={<LegActs here={here} leg={leg} person={person} />}
    >
      <LegWarnings here={here} leg={leg} now={now} />
      <LegFacts here={here} leg={leg} now={now} />
    </Page>
  );
};

const placeWords = ({ name, elevationFt, stripClass, runway }: FlightHere['day']['places'][number]): string =>
  [
    name,
    `${elevationFt.toLocaleString('en-GB')} ft`,
    ...(stripClass === null ? [] : [`class ${stripClass}`]),
    ...(runway?.oneWay === true ? ['one-way'] : []),
  ].join(' · ');

const OtherLegs = ({ flight, legs, leg }: { flight: string; legs: number; leg: number }) => (
  <span>
    {leg > 1 && <Link href={`/${flight}/${leg - 1}`}>Leg before</Link>}{' '}
    {leg < legs && <Link href={`/${flight}/${leg + 1}`}>Next leg</Link>}
  </span>
);
