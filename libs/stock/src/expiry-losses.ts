import { type Litres, litres } from '@drumline/units';
import { projectCaches, type StockOutlook } from './project-caches.js';
import type { AgedOutDrum } from './projection.js';

/** Fuel of one cache that ages out before the known draws reach it. */
export interface ExpiryLoss {
  readonly place: string;
  /** Litres that leave usable on each day of the plan; entry 0 is the first day. */
  readonly litresByDay: readonly Litres[];
  /** The same drum by drum: in date today, but not when the plan would burn them. */
  readonly drums: readonly AgedOutDrum[];
}

/**
 * What leaves each cache through retest dates, given draws and slings only: a delivery is newer than what stands there,
 * so it is used after it and changes nothing here. Deliveries are taken to keep the reserve whole, so the old drums
 * are drawn to the last litre.
 */
export function expiryLosses(outlook: StockOutlook): readonly ExpiryLoss[] {
  const caches = outlook.caches.map((cache) => ({ ...cache, medevacReserveLitres: litres(0) }));
  return projectCaches({ ...outlook, caches, landings: [] }).map(({ place, pastRetest, agedOut }) => ({
    place,
    litresByDay: pastRetest.slice(1),
    drums: agedOut,
  }));
}
