import type { Store } from '../problem.js';

/** What any plan keeps to at a store, by day, in stock units. */
export interface LevelRange {
  /** Lowest and highest level at the end of the day. */
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** Most stock after deliveries: the capacity, or what stands there without any delivery. */
  readonly afterDeliveries: readonly number[];
  /** Most that can be left undrawn or unlost for want of stock. */
  readonly unmet: readonly number[];
}

/** `mostDelivered`: stock units that routes can bring on one day. */
export function levelRange(store: Store, days: number, mostDelivered: number): LevelRange {
  const low: number[] = [];
  const high: number[] = [];
  const afterDeliveries: number[] = [];
  const unmet: number[] = [];
  let lowest = store.opening;
  let highest = store.opening;
  for (let day = 0; day < days; day++) {
    const { [day]: loss } = store.losses;
    const { [day]: demand } = store.demand;
    const undelivered = highest + store.arrivals[day];
    const capacity = store.capacity?.[day] ?? Number.POSITIVE_INFINITY;
    const most = Math.max(undelivered, Math.min(capacity, undelivered + mostDelivered));
    const least = lowest + store.arrivals[day] - loss;
    afterDeliveries.push(most);
    unmet.push(demand + Math.max(0, -least));
    // Demand is drawn down to the floor and no further; losses take what there is.
    lowest = Math.min(store.floor, Math.max(0, least));
    highest = Math.max(most - loss - demand, Math.min(store.floor, Math.max(0, most - loss)));
    low.push(lowest);
    high.push(highest);
  }
  return { low, high, afterDeliveries, unmet };
}
