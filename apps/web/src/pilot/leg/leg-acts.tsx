import type { PhoneFlight } from '@drumline/contract';
import type { FlightState } from '@drumline/planning';
import { useState } from 'react';
import { Link } from 'wouter';
import {
  dateWords,
  Main,
  Notice,
  NotKept,
  type Person,
  Press,
  timeWords,
  useTerritoryNow,
} from '../../phone/index.js';
import { oddTime } from '../drums-here/odd-time.js';
import { landed, notOff, tookOff } from '../reports/reports.js';
import { useReporting } from '../reports/use-reporting.js';
import type { LegProps } from './leg-card.js';

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
      <NotKept words={notKept} />
      <NextStep
        here={here}
        leg={leg}
        tookOff={() => void report((reporter) => tookOff(reporter, flight), stay)}
        landed={isLast ? () => void report((reporter) => landed(reporter, flight, everyDrum), stay) : null}
      />
      {own.offAt !== null && own.downAt === null && leg === 1 && (
        <Press onPress={() => void report((reporter) => notOff(reporter, flight), stay)}>
          It has not taken off: tell base
        </Press>
      )}
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

/** The aeroplane has been away, or is. */
const flown: ReadonlySet<FlightState> = new Set([
  'away',
  'home',
  'turned back',
  'ended elsewhere',
  'reported',
  'closed',
]);

const NextStep = ({ here: { flight, own }, leg, tookOff: off, landed: down }: NextStepProps) => {
  // Drums that were left or brought back have been away, whether Loaded and Took off were told or not.
  const isOff = own.offAt !== null || own.drums.length > 0 || (!own.notOff && flown.has(flight.state));
  const isDown = own.downAt !== null || (flown.has(flight.state) && flight.state !== 'away');
  const isLoaded = own.loadedVersion === flight.version || own.notOff || flight.state === 'loaded';
  if (!isLoaded && !isOff && leg === 1)
    return (
      <Link className="btn main" href={`/${flight.id}/loaded`}>
        Loaded
      </Link>
    );
  if (!isOff && leg === 1) return <TookOff flight={flight} onPress={off} />;
  if (down !== null && !isDown && isOff) return <Main onPress={down}>Down at {flight.route.at(-1)}</Main>;
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

/**
 * One tap on its day and half of the day; at any other time it is asked once. Of a load that does not hold it is a plain
 * act, and the main one is to mend it.
 */
const TookOff = ({ flight, onPress }: { readonly flight: PhoneFlight; readonly onPress: () => void }) => {
  const now = useTerritoryNow();
  const [asked, setAsked] = useState(false);
  const odd = oddTime(flight, {
    day: dateWords(flight.date),
    today: dateWords(now),
    clock: timeWords(now),
  });
  const press = odd === null ? onPress : () => setAsked(true);
  if ((!asked || odd === null) && flight.sheet?.holds === false)
    return (
      <>
        <Press onPress={press}>Took off</Press>
        <Link className="btn main" href={`/${flight.id}/loaded`}>
          Load it otherwise
        </Link>
      </>
    );
  if (!asked || odd === null) return <Main onPress={press}>Took off</Main>;
  return (
    <>
      <Notice kind="check" word="Really now?" title={odd} />
      <div className="two">
        <Press onPress={() => setAsked(false)}>Not yet</Press>
        <Press onPress={onPress}>Took off now</Press>
      </div>
    </>
  );
};
