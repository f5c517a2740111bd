import { bookCrews } from '../crews/book-crews.js';
import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';

/** The plan without trips, the booked routes crewed and without packs. Throws where they cannot be crewed. */
export function emptyPlan(problem: Problem): Plan {
  const booked = bookCrews(problem);
  if ('shortDays' in booked)
    throw new Error(`booked routes without a crew on days ${booked.shortDays.join()}`);
  return {
    trips: [],
    bookedDrops: problem.booked.map((route) => route.stops.map(() => 0)),
    bookedCrews: booked.crews,
  };
}
