import type { Route } from '@drumline/routing';
import { departureWindow } from '../flights/departure-window.js';
import type { RouteMaker } from './routes.js';

/** Hours of a day that flights to strips which follow each other have together; days count from 0. */
export interface AwayHours {
  readonly ofAircraft: (type: string, home: string, day: number) => number;
  /** Of a person, whichever aircraft it is. */
  readonly ofPerson: (day: number) => number;
}

/**
 * Flights that follow each other last no longer together than from the earliest departure towards the first strip of any
 * route to the latest return from the last strip of any, turn-round included. Where strips are dark before the base
 * is, or light after it, that is less than the flying day at the base. No limit without a route.
 */
export function awayHours(maker: AwayMaker, routes: readonly Route[]): AwayHours {
  const ends = [...legsAtTheEnds(maker, routes)];
  const windows = maker.territory.dates.map(
    (_, day) => new Map(ends.map(([key, own]) => [key, windowOf(maker, own, day)])),
  );
  return {
    ofAircraft: (type, home, day) => {
      const window = windows[day]!.get(`${type} ${home}`);
      return hoursOf(window === undefined ? [] : [window]);
    },
    ofPerson: (day) => hoursOf([...windows[day]!.values()]),
  };
}

type AwayMaker = Pick<RouteMaker, 'scenario' | 'territory' | 'loads' | 'stores'>;

/** Minutes after local midnight; none: `until` is before `from`. */
interface Window {
  readonly from: number;
  readonly until: number;
}

function hoursOf(windows: readonly Window[]): number {
  if (windows.length === 0) return Number.POSITIVE_INFINITY;
  const from = Math.min(...windows.map((window) => window.from));
  const until = Math.max(...windows.map((window) => window.until));
  return Math.max(0, (until - from) / 60);
}

type Leg = readonly [from: string, to: string];

interface Ends {
  readonly type: string;
  readonly out: Map<string, Leg>;
  readonly back: Map<string, Leg>;
}

/** First and last legs of the routes, each once, by type and home. */
function legsAtTheEnds({ stores }: AwayMaker, routes: readonly Route[]): ReadonlyMap<string, Ends> {
  const ends = new Map<string, Ends>();
  const leg = (from: number, to: number): Leg => [stores[from]!.place, stores[to]!.place];
  for (const { kind, source, stops, end } of routes) {
    const key = `${kind} ${stores[source]!.place}`;
    const own = ends.get(key) ?? { type: kind, out: new Map(), back: new Map() };
    ends.set(key, own);
    const [out, back] = [leg(source, stops[0]!), leg(stops.at(-1)!, end)];
    own.out.set(out.join(), out);
    own.back.set(back.join(), back);
  }
  return ends;
}

function windowOf({ scenario, territory, loads }: AwayMaker, { type, out, back }: Ends, day: number): Window {
  const { turnRoundMinutes } = territory.type(type);
  const inLight = (legs: ReadonlyMap<string, Leg>) =>
    [...legs.values()]
      .map(([from, to]) => {
        const { blockHours } = loads.loadOf(type, [from, to], day).load.legs[0]!;
        const flown = { from: territory.place(from), to: territory.place(to), blockHours };
        const date = territory.dates[day]!;
        const window = departureWindow(scenario, { date, legs: [flown], turnRoundMinutes, hasLeft: false });
        return { ...window, home: window.latest + blockHours * 60 + turnRoundMinutes };
      })
      .filter(({ earliest, latest }) => earliest <= latest);
  return {
    from: Math.min(...inLight(out).map(({ earliest }) => earliest)),
    until: Math.max(...inLight(back).map(({ home }) => home)),
  };
}
