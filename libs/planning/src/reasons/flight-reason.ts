import type { FlightReason } from '../flight-plan.js';
import { drumsOf, heldDrumsOf } from '../problem/standing-flights.js';
import type { StandingFlight } from '../scenario.js';
import { countWords, dayWords, drumWords, litreWords, stockWords, unmetWords } from '../wording.js';
import { type Compared, comparedLevels, type ReasonPicture } from './compared-levels.js';
import { byCache, fallsWords } from './fall-words.js';
import { byDayThenHarm, type Fall, fallsOf } from './falls.js';

/**
 * Why a flight flies: it is taken out of the plan and the levels are worked out again. The first cache and day that
 * falls short without it is what it protects; every cache that suffers is told, the worst first.
 */
export function flightReason(picture: ReasonPicture, flight: StandingFlight, day: number): FlightReason {
  if (drumsOf(flight) === 0)
    return { protects: null, daysInHand: null, ifDeclined: 'It carries no drums.', text: 'It flies anyway.' };
  const held = heldDrumsOf(flight);
  if (held === 0) return reasonByLevels(picture, flight, day);
  if (held < drumsOf(flight)) {
    const reason = reasonByLevels(picture, flight, day);
    return { ...reason, text: `${reason.text} Without the ${drumWords(held)} of it on HOLD.` };
  }
  return {
    protects: null,
    daysInHand: null,
    ifDeclined: 'Without it no level changes: its drums are all on HOLD.',
    text: 'Its drums are all on HOLD: they count in no level until fit ones go in their place.',
  };
}

function reasonByLevels(picture: ReasonPicture, flight: StandingFlight, day: number): FlightReason {
  const compared = comparedLevels(picture, flight, null);
  const falls = compared.flatMap((cache) => fallsOf(picture.endTargets.get(cache.without.place) ?? 0, cache));
  const first = (falls.find(({ already }) => !already) ? falls.filter(({ already }) => !already) : falls)
    .toSorted(byDayThenHarm)
    .at(0);
  if (!first) return noShortage(flight, compared);
  const { place, date, level } = first;
  const daysInHand = first.day - day;
  return {
    protects: { place, date, level },
    daysInHand,
    ifDeclined: byCache(falls)
      .map((each) => `Without it ${each[0]!.place} ${fallsWords(each)}.`)
      .join(' '),
    text: `${protectsWords(first)}; ${daysInHand === 0 ? 'no day' : countWords(daysInHand, 'day')} in hand.`,
  };
}

function protectsWords(fall: Fall): string {
  const { place, level, date, withLitres, litres, limit, already } = fall;
  const day = dayWords(date);
  const figures = `${stockWords(withLitres)} with it, ${stockWords(litres)} without`;
  if (already)
    return level === 'run out'
      ? `Lessens the shortage of ${place} on ${day}, which runs out anyway`
      : `Lessens the shortage of ${place} on ${day}: ${figures}, of ${litreWords(limit)}`;
  switch (level) {
    case 'run out':
      return `Keeps ${place} from running out on ${day}: ${runOutFigures(fall)}`;
    case 'below critical':
      return `Keeps ${place} above critical on ${day}: ${figures}, critical ${litreWords(limit)}`;
    case 'below minimum':
      return `Keeps ${place} above minimum on ${day}: ${figures}, minimum ${litreWords(limit)}`;
    case 'short of the end target':
      return `Brings ${place} to its end target on ${day}: ${figures}, target ${litreWords(limit)}`;
  }
}

function runOutFigures({ withLitres, unmetLitres, askedLitres, reserve }: Fall): string {
  const without = unmetLitres > 0 ? unmetWords(unmetLitres, askedLitres, reserve) : 'nothing usable is left';
  return `${stockWords(withLitres)} left with it; without it ${without}`;
}

function noShortage(flight: StandingFlight, compared: readonly Compared[]): FlightReason {
  const changed = compared.find(({ without, withIt }) => without.usable.at(-1)! < withIt.usable.at(-1)!);
  if (!changed) {
    const text = `Moves ${drumWords(drumsOf(flight))}; no cache falls short without it.`;
    return { protects: null, daysInHand: null, ifDeclined: 'Without it no cache falls short.', text };
  }
  const { place } = changed.without;
  const end = `${place} ends at ${litreWords(changed.without.usable.at(-1)!)} instead of ${litreWords(changed.withIt.usable.at(-1)!)}`;
  return {
    protects: null,
    daysInHand: null,
    ifDeclined: `Without it no cache falls short; ${end}.`,
    text: `Adds stock that no cache needs by the end: without it ${end}.`,
  };
}
