import { type ReactNode, useEffect } from 'react';
import { Link } from 'wouter';
import {
  DrumNumber,
  dayWords,
  Main,
  Notice,
  Page,
  type Person,
  spanWords,
  timeWords,
  useTerritoryNow,
  whenWords,
} from '../phone/index.js';
import { open } from './day.js';
import { legWords, stripWords, surfaceAt } from './leg-words.js';
import { landed, tookOff } from './reports.js';
import { type FlightHere, useFlight } from './use-flight.js';
import { useReporting } from './use-reporting.js';

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

const Card = ({
  here,
  leg,
  person,
}: {
  readonly here: FlightHere;
  readonly leg: number;
  readonly person: Person;
}) => {
  const { flight, day, newer } = here;
  const now = useTerritoryNow();
  // From now on this is the load that the person has open.
  useEffect(() => void (newer === null && open(flight)), [flight, newer]);
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
      acts={<Acts here={here} leg={leg} person={person} />}
    >
      <Warnings here={here} leg={leg} now={now} />
      <Facts here={here} leg={leg} now={now} />
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

/** What has changed since the page was opened, and what nobody has said. */
const Warnings = ({
  here,
  leg,
  now,
}: {
  readonly here: FlightHere;
  readonly leg: number;
  readonly now: Date;
}) => {
  const { flight, newer, readAt, own } = here;
  const held = legWords(flight, leg - 1)?.drums.filter((number) => here.held.has(number)) ?? [];
  return (
    <>
      {newer === 'gone' && (
        <Notice kind="stop" word="Not yours any more." title={`Base no longer gives ${flight.id} to you.`}>
          Ask base. What you have reported stays.
        </Notice>
      )}
      {newer !== null && newer !== 'gone' && (
        <Notice
          kind="check"
          word={`Version ${newer.version} has come in.`}
          title="Nothing has changed on this page."
        >
          <Link className="btn" href={`/${flight.id}/newer`}>
            See what differs
          </Link>
        </Notice>
      )}
      {own.refusedAt !== null && (
        <Notice kind="stop" word="You will not fly this." title="Base plans again." />
      )}
      {held.length > 0 && (
        <Notice kind="stop" word="HOLD." title={`Do not carry out ${held.join(', ')}.`}>
          {held.map((number) => `${number}: ${here.held.get(number)}`).join('. ')}.
        </Notice>
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

/** So long without hearing base a load may be another one by now. Common practice, no source. */
const staleMs = 30 * 60_000;

const Facts = ({
  here,
  leg,
  now,
}: {
  readonly here: FlightHere;
  readonly leg: number;
  readonly now: Date;
}) => {
  const { flight, day, own } = here;
  const words = legWords(flight, leg - 1);
  const to = flight.route[leg]!;
  const place = day.places.find(({ code }) => code === to);
  if (words === null)
    return (
      <div className="said">
        <p>
          <b>No load sheet.</b> {flight.why}
        </p>
      </div>
    );
  const reported = new Map(own.drums.map((drum) => [drum.drum, drum]));
  return (
    <>
      <dl className="facts">
        <Fact of="Drums">
          <strong>{words.drums.length === 0 ? 'No drums' : `${words.drums.length} drums`}</strong>
          <span className="drums">
            {words.drums.map((number) => (
              <span key={number} className={reported.has(number) ? 'done' : ''}>
                <DrumNumber number={number} held={here.held.has(number)} />
              </span>
            ))}
          </span>
          {own.drums.length > 0 && <span className="small">{ownWords(here)}</span>}
        </Fact>
        <Fact of="Binds">
          <strong>{words.binds.main}</strong>
          <br />
          {words.binds.rest}
        </Fact>
        {words.leave !== null && (
          <Fact of="Unload or stay" over={words.leave.over}>
            <strong>{words.leave.main}</strong>
            {words.leave.rest.map((line) => (
              <span key={line} className="small line-below">
                {line}
              </span>
            ))}
          </Fact>
        )}
        <Fact of="Go back if">
          <strong>{words.goBack.main}</strong>
          {words.goBack.rest.map((line) => (
            <span key={line} className="line-below">
              {line}
            </span>
          ))}
        </Fact>
        <Fact of="Surface">
          <Surface here={here} code={to} leg={leg} now={now} />
        </Fact>
        <Fact of="Fuel">{words.fuel}</Fact>
      </dl>
      <p className="foot">
        On the ground only (operations manual). Planning figure. The commander’s approved data decide.
      </p>
      {place !== undefined && stripWords(place) !== '' && (
        <>
          <h2 className="sect">Strip</h2>
          <p className="said">{stripWords(place)}</p>
        </>
      )}
      <h2 className="sect">Decided the evening before</h2>
      <ul className="said lines">
        {words.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>{flight.sheet!.fuelWords}</li>
      </ul>
    </>
  );
};

const Fact = ({ of, over = false, children }: { of: string; over?: boolean; children: ReactNode }) => (
  <div>
    <dt>{of}</dt>
    <dd className={over ? 'over' : ''}>{children}</dd>
  </div>
);

const ownWords = ({ own }: FlightHere): string => {
  const left = own.drums.filter(({ kind }) => kind === 'left at').length;
  return `${left} left, ${own.drums.length - left} brought back, by this phone`;
};

const Surface = ({ here, code, leg, now }: { here: FlightHere; code: string; leg: number; now: Date }) => {
  const { state, report } = surfaceAt(here.day, here.surfaces, { code, now });
  const ifSoft = here.flight.sheet?.legs[leg - 1]?.goBack.ifSoft ?? null;
  const isSoft = state === null || state === 'soft';
  return (
    <>
      <strong>{state === null ? 'Unknown: soft counts' : state[0]!.toUpperCase() + state.slice(1)}</strong>{' '}
      {report === null
        ? 'Nobody has reported.'
        : `${state === null ? `${report.state}, ` : ''}${whenWords(report.at, now)} by ${report.by}, ${spanWords(now.getTime() - Date.parse(report.at))} ago`}
      {isSoft && ifSoft !== null && <span className="small line-below">{ifSoft.words}</span>}
    </>
  );
};

/** The next thing that happens to the flight, and the reports that may come at any time. */
const Acts = ({
  here,
  leg,
  person,
}: {
  readonly here: FlightHere;
  readonly leg: number;
  readonly person: Person;
}) => {
  const { flight, own } = here;
  const { report, notKept } = useReporting(person);
  const to = flight.route[leg]!;
  const stay = `/${flight.id}/${leg}`;
  const isLast = leg === flight.route.length - 1;
  const said = new Set(own.drums.map(({ drum }) => drum));
  const everyDrum = flight.stops.every(({ drums }) => drums.every((number) => said.has(number)));
  return (
    <>
      {notKept !== null && <Notice kind="stop" word="Not kept." title={notKept} />}
      <NextStep
        here={here}
        leg={leg}
        tookOff={() => void report((reporter) => tookOff(reporter, flight), stay)}
        landed={isLast ? () => void report((reporter) => landed(reporter, flight, everyDrum), stay) : null}
      />
      <div className="four">
        <Link className="btn" href={`/${flight.id}/left/${leg}/${to}`}>
          Left here
        </Link>
        <Link className="btn" href={`/${flight.id}/back/${leg}/${to}`}>
          Bring back
        </Link>
        <Link className="btn" href={`/${flight.id}/problem/${leg}`}>
          Problem
        </Link>
        <Link className="btn" href={`/surface/${to}`}>
          Surface
        </Link>
      </div>
    </>
  );
};

interface NextStepProps {
  readonly here: FlightHere;
  readonly leg: number;
  readonly tookOff: () => void;
  readonly landed: (() => void) | null;
}

const NextStep = ({ here: { flight, own }, leg, tookOff: off, landed: down }: NextStepProps) => {
  const isLoaded = own.loadedVersion === flight.version || ['loaded', 'away'].includes(flight.state);
  const isOff = own.offAt !== null || flight.state === 'away';
  if (!isLoaded && !isOff && leg === 1)
    return (
      <Link className="btn main" href={`/${flight.id}/loaded`}>
        Loaded
      </Link>
    );
  if (!isOff && leg === 1) return <Main onPress={off}>Took off</Main>;
  if (down !== null && own.downAt === null && isOff)
    return <Main onPress={down}>Down at {flight.route.at(-1)}</Main>;
  if (leg < flight.route.length - 1)
    return (
      <Link className="btn main" href={`/${flight.id}/${leg + 1}`}>
        Next leg
      </Link>
    );
  return (
    <Link className="btn" href="/">
      {own.downAt === null ? 'Back to the day' : `Down ${timeWords(own.downAt)}. Back to the day`}
    </Link>
  );
};
