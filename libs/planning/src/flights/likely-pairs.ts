import { daysBetween, type IsoDate } from '@drumline/units';
import { groupBy } from '../group-by.js';

/** What a flight is recognised by in another plan. */
export interface Recognisable {
  readonly id?: string;
  readonly kind?: string;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly from: string;
  readonly stops: readonly { readonly place: string; readonly drums: number }[];
  readonly to: string;
}

export interface LikelyPair<Earlier, Later> {
  readonly earlier: Earlier;
  readonly later: Later;
}

/**
 * Every pair of flights of two plans on the same route, the likeliest to be the same flight first: by the nearest day, the same
 * aircraft, the same drums and the same number, in this order.
 */
export function likelyPairs<Earlier extends Recognisable, Later extends Recognisable>(
  before: readonly Earlier[],
  after: readonly Later[],
): readonly LikelyPair<Earlier, Later>[] {
  const laterByRoute = groupBy(after, routeOf);
  return before
    .flatMap((earlier) =>
      (laterByRoute.get(routeOf(earlier)) ?? []).map((later) => ({
        earlier,
        later,
        unlike: unlikeness(earlier, later),
      })),
    )
    .sort((one, other) => compareInOrder(one.unlike, other.unlike));
}

/** Base, stops, base, of a kind of flight. */
export const routeOf = ({ kind, from, stops, to }: Recognisable): string =>
  [kind, from, ...stops.map(({ place }) => place), to].join('-');

export const drumsByStop = ({ stops }: Pick<Recognisable, 'stops'>): string =>
  stops.map(({ drums }) => drums).join(' ');

const unlikeness = (earlier: Recognisable, later: Recognisable): readonly number[] => [
  Math.abs(daysBetween(earlier.date, later.date)),
  Number(earlier.aircraft !== later.aircraft),
  Number(drumsByStop(earlier) !== drumsByStop(later)),
  Number(earlier.id !== later.id),
];

function compareInOrder(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at < 0 ? 0 : one[at]! - other[at]!;
}
