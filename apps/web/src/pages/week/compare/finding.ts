import { figure } from '../../../ui/qty.js';
import { type PrintedCost, printedRise } from './add-up.js';
import type { Differences, Totals } from './differences-read.js';

/**
 * The finding in one sentence: what the flight bill does, what the whole plan does, and the one figure that says most about
 * why. "The flight bill falls by 876 cr and the whole plan rises by 406 cr, because ten more drums come from MER."
 */
export const findingOf = (differences: Differences, currency: string): string => {
  const { before, after } = differences.totals;
  if (isNothing(differences)) return nothingWords(differences);
  if (before.drums === 0)
    return `${flightWords(after.flights)} ${after.flights === 1 ? 'lands' : 'land'} ${drumWords(after.drums)} for ${money(after.cost.total, currency)}; no plan stood before.`;
  const rise = printedRise(before.cost, after.cost);
  const cause = causeOf(before, after, rise);
  return `${billWords(rise, currency)}${cause === null ? '' : `, because ${cause}`}.`;
};

/** Where something is wanting, that nothing changes is no good news: beside it stands what stays short, and why. */
const nothingWords = ({ cannotKeep, totals }: Differences): string => {
  if (cannotKeep.length === 0) return 'Nothing changes: the flights that stand are the plan.';
  const short = 'what is short stays so: see what it cannot keep, and why';
  return totals.after.flights === 0
    ? `No flight was found, and ${short}.`
    : `No better flights were found than those that stand, and ${short}.`;
};

const isNothing = ({ removed, added, moved, drumsChanged }: Differences): boolean =>
  [removed, added, moved, drumsChanged].every((list) => list.length === 0);

const billWords = ({ flight, total }: PrintedCost, currency: string): string => {
  const [bill, whole] = [moves(flight, currency), moves(total, currency)];
  if (bill === null && whole === null) return 'The flight bill and the whole plan cost the same as before';
  if (bill === null) return `The flight bill stays and the whole plan ${whole}`;
  if (whole === null) return `The flight bill ${bill} and the whole plan costs the same as before`;
  return `The flight bill ${bill} and the whole plan ${whole}`;
};

const moves = (by: number, currency: string): string | null =>
  by === 0 ? null : `${by < 0 ? 'falls' : 'rises'} by ${figure(Math.abs(by))} ${currency}`;

/** What the larger part of the change is about, if it goes the way of the whole. */
const causeOf = (before: Totals, after: Totals, rise: PrintedCost): string | null => {
  const { flight, fuel, total } = rise;
  if (total === 0) return null;
  const goesThatWay = (part: number) => Math.sign(part) === Math.sign(total);
  if (goesThatWay(fuel) && Math.abs(fuel) >= Math.abs(goesThatWay(flight) ? flight : 0))
    return baseCause(before, after, Math.sign(total)) ?? litreCause(before, after, Math.sign(total));
  return goesThatWay(flight) ? flightCause(before, after, Math.sign(total)) : null;
};

/** Where a base gives more, it is because drums come from it instead of from another, or because more are landed in all: the larger of the two. */
const baseCause = (before: Totals, after: Totals, way: number): string | null => {
  const places = new Set([...before.drumsFromBase, ...after.drumsFromBase].map(({ place }) => place));
  const from = ({ drumsFromBase }: Totals, at: string) =>
    drumsFromBase.find(({ place }) => place === at)?.drums ?? 0;
  const changed = [...places]
    .map((place) => ({ place, more: (from(after, place) - from(before, place)) * way }))
    .filter(({ more }) => more !== 0)
    .sort((one, other) => other.more - one.more);
  const [most] = changed;
  if (most === undefined || most.more < 0) return null;
  const inAll = changed.reduce((sum, { more }) => sum + more, 0);
  const isMoreInAll = changed.length > 1 && inAll >= most.more - inAll;
  const drums = isMoreInAll ? inAll : most.more;
  const count = `${counted(drums)} ${way > 0 ? 'more' : 'fewer'} ${drums === 1 ? 'drum' : 'drums'}`;
  if (isMoreInAll) return `${count} ${drums === 1 ? 'is' : 'are'} landed`;
  return `${count} ${drums === 1 ? 'comes' : 'come'} from ${most.place}`;
};

const litreCause = (before: Totals, after: Totals, way: number): string | null => {
  const more = (after.litres - before.litres) * way;
  return more > 0 ? `${figure(more)} L ${way > 0 ? 'more' : 'less'} are landed` : null;
};

const flightCause = (before: Totals, after: Totals, way: number): string | null => {
  const more = (after.flights - before.flights) * way;
  if (more > 0)
    return `${counted(more)} ${way > 0 ? 'more' : 'fewer'} ${more === 1 ? 'flight is' : 'flights are'} flown`;
  const longer = (after.blockHours - before.blockHours) * way;
  return longer >= 0.05 ? `${figure(longer, 1)} h ${way > 0 ? 'more' : 'less'} are flown` : null;
};

const flightWords = (flights: number) => `${figure(flights)} ${flights === 1 ? 'flight' : 'flights'}`;
const drumWords = (drums: number) => `${figure(drums)} ${drums === 1 ? 'drum' : 'drums'}`;
const money = (cents: number, currency: string) => `${figure(Math.round(cents / 100))} ${currency}`;

const small = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

const counted = (number: number): string => small[number] ?? figure(number);
