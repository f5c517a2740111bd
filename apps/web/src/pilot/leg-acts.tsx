import { Link } from 'wouter';
import { Main, Notice, type Person, timeWords } from '../phone/index.js';
import type { LegProps } from './leg-card.js';
import { landed, tookOff } from './reports.js';
import { useReporting } from './use-reporting.js';

/** The next thing that happens to the flight, and the reports that may come at any time. */
export const LegActs = ({ here, leg, person }: LegProps & { readonly person: Person }) => {
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

interface NextStepProps extends LegProps {
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
