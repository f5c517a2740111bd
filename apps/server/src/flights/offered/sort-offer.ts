import { dayOverWords, type Fault, type PlannedFlight, replanFreedom } from '@drumline/planning';
import { addDays, localDate } from '@drumline/units';
import type { Board } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';
import type { OfferedPlan } from './offer-flights.service.js';

/** A plan beside the flights that stand by now: what is written, what goes, what stays as people left it. */
export interface Offer {
  readonly planned: readonly PlannedFlight[];
  /** Offered before and not in the plan. */
  readonly replaced: readonly Flight[];
  /** Settled flights, flights held in place, and those that somebody changed since the plan was asked for. */
  readonly kept: readonly Flight[];
  readonly faults: readonly Fault[];
}

/**
 * Only flights of the days that are offered; the later ones remain ideas of the plan. What people did since the plan
 * was asked for wins over the plan: an amended flight stays as amended. A flight of the plan that was declined or
 * called off since makes the plan another one than was accepted: a fault.
 */
export const sortOffer = (
  { scenario, flights }: Board,
  { plan, frozen }: OfferedPlan,
  changedSince: ReadonlySet<string>,
): Offer => {
  const today = localDate(scenario.asOf, scenario.timeZone);
  const last = addDays(plan.firstDay, plan.offeredDays - 1);
  const isFree = ({ id, state, heldInPlace }: Flight): boolean =>
    replanFreedom(state) === 'free' && !heldInPlace && !frozen.includes(id);
  const stands = ({ state }: Flight): boolean => state !== 'declined' && state !== 'called off';

  const kept = flights.filter((flight) => stands(flight) && (!isFree(flight) || changedSince.has(flight.id)));
  const keptIds = new Set(kept.map(({ id }) => id));
  const offered = plan.flights.filter(
    ({ id, date, drums, state }) => state === 'offered' && drums > 0 && date <= last && !keptIds.has(id),
  );
  const offeredIds = new Set(offered.map(({ id }) => id));
  const dropped = flights.filter(
    (flight) => !stands(flight) && offeredIds.has(flight.id) && changedSince.has(flight.id),
  );
  return {
    planned: offered,
    replaced: flights.filter(
      (flight) => isFree(flight) && !keptIds.has(flight.id) && !offeredIds.has(flight.id),
    ),
    kept,
    faults: [
      ...dropped.map(droppedFault),
      ...offered.filter(({ date }) => date < today).map(overFault(today)),
    ],
  };
};

const droppedFault = ({ id, state, changedByName, reason }: Flight): Fault => ({
  where: id,
  what: `${changedByName} has ${state} it since the plan was asked for${reason === null ? '' : `: ${reason}`}.`,
  mend: 'Plan again from now.',
  flights: [id],
});

const overFault =
  (today: string) =>
  ({ id, date }: PlannedFlight): Fault => ({
    where: id,
    what: dayOverWords(date, today),
    mend: 'Plan again from now.',
    flights: [id],
  });
