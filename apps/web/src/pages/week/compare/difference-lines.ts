import { figure, inWords } from '../../../ui/qty.js';
import { isFrozen, limitWords } from '../box-words.js';
import { wholeMoney } from './add-up.js';
import type { ComparedFlight, Differences, FlightChange } from './differences-read.js';

/** Words of a cell, what is new in bold. */
export type Words = readonly { readonly text: string; readonly isNew: boolean }[];

export interface DifferenceLine {
  readonly number: number;
  /** Number of the flight; null: it gets one when the plan is accepted. */
  readonly flight: string | null;
  readonly was: string | null;
  readonly wouldBe: Words;
  readonly why: string;
  /** Changes by this line; null: a line of flights that stay. */
  readonly litres: number | null;
  readonly blockHours: number | null;
  readonly flightCost: number | null;
  /** Of days whose flights are not offered yet: nothing is decided by accepting. */
  readonly isIdea: boolean;
}

export interface DifferenceGroup {
  readonly name: 'Removed' | 'Moved' | 'Added' | 'Drums changed' | 'Same';
  readonly flights: number;
  readonly lines: readonly DifferenceLine[];
}

/** "Tue 15" of a day. */
type DayWords = (date: string) => string;

/** Of the flights of an accepted plan, by the number they had in it. */
type Numbers = ReadonlyMap<string, string>;

type Unnumbered = Omit<DifferenceLine, 'number' | 'flightCost'> & { readonly cents: number | null };

/** The fixed groups, always all five, with line numbers through all of them and costs that add up as printed. */
export const differenceGroups = (
  differences: Differences,
  day: DayWords,
  numbers: Numbers = new Map(),
): readonly DifferenceGroup[] => {
  const told = telling(differences, day, numbers);
  const groups: readonly (readonly [DifferenceGroup['name'], number, readonly Unnumbered[]])[] = [
    ['Removed', differences.removed.length, differences.removed.map(told.removed)],
    ['Moved', differences.moved.length, differences.moved.map(told.changed)],
    ['Added', differences.added.length, differences.added.map(told.added)],
    ['Drums changed', differences.drumsChanged.length, differences.drumsChanged.map(told.changed)],
    ['Same', differences.same.length, sameLines(differences.same, day)],
  ];
  const costs = wholeMoney(groups.flatMap(([, , lines]) => lines.map(({ cents }) => cents ?? 0)));
  let at = 0;
  return groups.map(([name, flights, lines]) => ({
    name,
    flights,
    lines: lines.map(({ cents, ...line }) => {
      at += 1;
      return { ...line, number: at, flightCost: cents === null ? null : costs[at - 1]! };
    }),
  }));
};

const telling = ({ faults, lastOfferedDay }: Differences, day: DayWords, numbers: Numbers) => {
  const faultOf = (flight: ComparedFlight) => faults.find((fault) => fault.flight === flight.id)?.text;
  const isIdea = (flight: ComparedFlight) => flight.date > lastOfferedDay;
  // An idea of the plan before may have the planner's number of another flight in this one.
  const stoodAs = ({ id }: ComparedFlight) => (/^P\d+$/.test(id) ? null : id);
  const numberOf = (flight: ComparedFlight) => numbers.get(flight.id) ?? stoodAs(flight);
  return {
    removed: (flight: ComparedFlight): Unnumbered => ({
      flight: stoodAs(flight),
      was: flightWords(flight, day),
      wouldBe: [{ text: 'Removed', isNew: true }],
      why: faultOf(flight) ?? 'The plan does without it.',
      litres: -flight.litres,
      blockHours: -blockHoursOf(flight),
      cents: -flight.cost.flight,
      isIdea: isIdea(flight),
    }),
    added: (flight: ComparedFlight): Unnumbered => ({
      flight: numberOf(flight),
      was: null,
      wouldBe: [
        { text: flight.aircraft, isNew: true },
        { text: ` ${day(flight.date)}, ${routeWords(flight)}, `, isNew: false },
        { text: drumsWords(flight), isNew: true },
      ],
      why: `${purposeWords(flight, day)}${bindsWords(flight)}`,
      litres: flight.litres,
      blockHours: blockHoursOf(flight),
      cents: flight.cost.flight,
      isIdea: isIdea(flight),
    }),
    changed: ({ before, after }: FlightChange): Unnumbered => ({
      flight: stoodAs(before) ?? numberOf(after),
      was: flightWords(before, day),
      wouldBe: changeWords({ before, after }, day),
      why: faultOf(before) ?? `${purposeWords(after, day)}${bindsWords(after)}`,
      litres: after.litres - before.litres,
      blockHours: blockHoursOf(after) - blockHoursOf(before),
      cents: after.cost.flight - before.cost.flight,
      isIdea: isIdea(after),
    }),
  };
};

/** Flights that fly anyway take no hours of the plan. */
const blockHoursOf = ({ kind, blockHours }: ComparedFlight): number =>
  kind === 'positioning' ? blockHours : 0;

const routeWords = ({ from, stops }: ComparedFlight): string =>
  [from, ...stops.map(({ place }) => place)].join('-');

const drumsWords = ({ stops, drums }: ComparedFlight): string =>
  stops.length < 2 ? inWords(drums, 'drums') : `${stops.map((stop) => stop.drums).join(' and ')} drums`;

const flightWords = (flight: ComparedFlight, day: DayWords): string =>
  `${flight.aircraft} ${day(flight.date)}, ${routeWords(flight)}, ${drumsWords(flight)}`;

const changeWords = ({ before, after }: FlightChange, day: DayWords): Words => {
  const load =
    drumsWords(before) === drumsWords(after)
      ? { text: 'same load', isNew: false }
      : { text: drumsWords(after), isNew: true };
  return [
    { text: after.aircraft, isNew: before.aircraft !== after.aircraft },
    { text: ' ', isNew: false },
    { text: day(after.date), isNew: before.date !== after.date },
    { text: ', ', isNew: false },
    load,
  ];
};

/** What would fall short without the flight. */
const purposeWords = ({ reason }: ComparedFlight, day: DayWords): string => {
  if (reason.protects === null) return 'Nothing falls short without it.';
  const { place, date, level } = reason.protects;
  if (level === 'short of the end target') return `For what ${place} is to hold at the end.`;
  return level === 'run out'
    ? `${place} runs out without it, ${day(date)}.`
    : `Keeps ${place} ${level.replace('below', 'above')}, ${day(date)}.`;
};

const bindsWords = ({ legs }: ComparedFlight): string => {
  const tightest = legs
    .filter(({ drumsAboard }) => drumsAboard > 0)
    .toSorted((one, other) => one.spareLb - other.spareLb)[0];
  if (tightest === undefined) return '';
  if (tightest.drumsAboard < tightest.drumsPossible) return ` Room for ${tightest.drumsPossible}.`;
  const { name, place } = tightest.binding;
  return ` Binds: ${limitWords(name, place ?? null)}.`;
};

/** Those that stay, together by why they stay. */
const sameLines = (same: readonly FlightChange[], day: DayWords): readonly Unnumbered[] => {
  const kinds = [
    { was: 'Flown or away', why: 'Never changes.', has: isGone },
    { was: 'Frozen', why: 'Changes only when a person lets it go.', has: isKept },
    { was: 'Offered', why: 'Not touched.', has: isOpen },
  ];
  return kinds.flatMap(({ was, why, has }) => {
    const flights = same.map(({ before }) => before).filter(has);
    if (flights.length === 0) return [];
    const days = [...new Set(flights.map(({ date }) => day(date)))];
    const span = days.length === 1 ? days[0]! : `${days[0]} to ${days.at(-1)}`;
    return [
      {
        flight: was,
        was: `${namesOf(flights)}, ${span}`,
        wouldBe: [{ text: 'Same', isNew: false }],
        why,
        litres: null,
        blockHours: null,
        cents: null,
        isIdea: false,
      },
    ];
  });
};

const goneStates = ['loaded', 'away', 'home', 'reported', 'closed'];
const isGone = ({ state }: ComparedFlight): boolean => goneStates.includes(state);
const isKept = (flight: ComparedFlight): boolean =>
  !isGone(flight) && isFrozen({ state: flight.state, heldInPlace: false });
const isOpen = (flight: ComparedFlight): boolean => !isGone(flight) && !isKept(flight);

/** "F01, F02 and 2 ideas". */
const namesOf = (flights: readonly ComparedFlight[]): string => {
  const numbers = flights.flatMap(({ id }) => (/^P\d+$/.test(id) ? [] : [id]));
  const ideas = flights.length - numbers.length;
  const ideaWords = ideas === 0 ? [] : [`${figure(ideas)} ${ideas === 1 ? 'idea' : 'ideas'}`];
  return [...numbers, ...ideaWords].join(', ');
};
