import './leg.css';
import { useEffect } from 'react';
import { Link } from 'wouter';
import { dayWords, Notice, Page, type Person, useTerritoryNow, whenWords } from '../../phone/index.js';
import { open } from '../day/day.js';
import { StandsSo } from '../loaded/does-not-hold.js';
import { useAsFlown } from '../loaded/use-as-loaded.js';
import { type FlightHere, useFlight } from '../use-flight.js';
import { LegActs } from './leg-acts.js';
import { LegFacts } from './leg-facts.js';
import { LegWarnings } from './leg-warnings.js';

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
  const asFlown = useAsFlown(flight, here.own.drums);
  const flownHere = { ...here, flight: asFlown ?? flight };
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
        <div className="route-line">
          <h1 className="route">
            {from}
            <span className="to">to</span>
            {to}
          </h1>
          <OtherLegs flight={flight.id} legs={flight.route.length - 1} leg={leg} />
        </div>
      }
      below={
        <>
          <span>{place === undefined ? '' : placeWords(place)}</span>
          <span>{nm === undefined ? '' : `${nm.toFixed(1)} NM`}</span>
        </>
      }
      acts={<LegActs here={here} leg={leg} person={person} />}
    >
      <p className="foot caution">
        On the ground only (operations manual). Planning figure. The commander’s approved data decide.
      </p>
      <StandsSo here={here} />
      <LegWarnings here={flownHere} leg={leg} now={now} />
      {asFlown === null && (
        <Notice
          kind="check"
          word="Not added up."
          title="What was brought back is in no weight on this page."
        />
      )}
      <LegFacts here={flownHere} planned={flight} leg={leg} now={now} />
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
  <span className="legs">
    {leg > 1 && <Link href={`/${flight}/${leg - 1}`}>Leg before</Link>}{' '}
    {leg < legs && <Link href={`/${flight}/${leg + 1}`}>Next leg</Link>}
  </span>
);
