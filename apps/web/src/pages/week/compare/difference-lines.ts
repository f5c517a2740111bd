import { figure } from '../../../ui/qty.js';
import { isFrozen } from '../board/box-words.js';
import { printedHours, wholeMoney } from './add-up.js';
import {
  bindsWords,
  changeWords,
  type DayWords,
  drumsWords,
  flightWords,
  movedWords,
  purposeWords,
  routeWords,
  type Words,
  withoutWords,
} from './difference-words.js';
import type { ComparedFlight, Differences, FlightChange } from './differences-read.js';

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
  /** What the server calls the line that can be left out; null: nothing is decided by it. */
  readonly key: string | null;
  readonly isLeftOut: boolean;
}

export interface DifferenceGroup {
  readonly name: 'Removed' | 'Moved' | 'Added' | 'Drums changed' | 'Same';
  readonly flights: number;
  readonly lines: readonly DifferenceLine[];
}

/** Of the flights of an accepted plan, by the number they had in it. */
type Numbers = ReadonlyMap<string, string>;

type Unnumbered = Omit<DifferenceLine, 'number' | 'flightCost' | 'isLeftOut'> & {
  readonly cents: number | null;
};

/** The fixed groups, always all five, with line numbers through all of them; costs and hours add up as printed. */
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
  const leftOut = new Set(differences.leftOut);
  const taken = groups.map(
    ([name, flights, lines]) => [name, flights, lines.map((line) => takenOrNot(line, leftOut))] as const,
  );
  const costs = wholeMoney(taken.flatMap(([, , lines]) => lines.map(({ cents }) => cents ?? 0)));
  const hours = printedHours(taken.flatMap(([, , lines]) => lines.map(({ blockHours }) => blockHours ?? 0)));
  let at = 0;
  return taken.map(([name, flights, lines]) => ({
    name,
    flights,
    lines: lines.map(({ cents, ...line }) => {
      at += 1;
      return {
        ...line,
        number: at,
        blockHours: line.blockHours === null ? null : hours[at - 1]!,
        flightCost: cents === null ? null : costs[at - 1]!,
      };
    }),
  }));
};

/** A line that is left out changes nothing: the sums under the list are of the lines that are taken. */
const takenOrNot = (line: Unnumbered, leftOut: ReadonlySet<string>) => {
  const isLeftOut = line.key !== null && leftOut.has(line.key);
  const nothing = { litres: null, blockHours: null, cents: null };
  return { ...line, isLeftOut, ...(isLeftOut ? nothing : {}) };
};

const telling = (differences: Differences, day: DayWords, numbers: Numbers) => {
  const { faults, lastOfferedDay, mayLeaveOut } = differences;
  const keyOf = ({ id }: ComparedFlight) => (mayLeaveOut.includes(id) ? id : null);
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
      why: faultOf(flight) ?? withoutWords(flight, differences),
      litres: -flight.litres,
      blockHours: -blockHoursOf(flight),
      cents: -flight.cost.flight,
      isIdea: isIdea(flight),
      key: stoodAs(flight) === null ? null : keyOf(flight),
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
      key: keyOf(flight),
    }),
    changed: ({ before, after }: FlightChange): Unnumbered => ({
      flight: stoodAs(before) ?? numberOf(after),
      was: flightWords(before, day),
      wouldBe: changeWords({ before, after }, day),
      why:
        faultOf(before) ??
        `${movedWords({ before, after }, differences)}${purposeWords(after, day)}${bindsWords(after)}`,
      litres: after.litres - before.litres,
      blockHours: blockHoursOf(after) - blockHoursOf(before),
      cents: after.cost.flight - before.cost.flight,
      isIdea: isIdea(after),
      key: keyOf(after),
    }),
  };
};

/** Flights that fly anyway take no hours of the plan. */
const blockHoursOf = ({ kind, blockHours }: ComparedFlight): number =>
  kind === 'positioning' ? blockHours : 0;

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
        key: null,
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
