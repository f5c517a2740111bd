import type { PlannedFlight } from '../flight-plan.js';
import type { StandingFlight } from '../scenario.js';

/** A flight as people read it, back to the bare flight that stands: who, when, where, how many drums. */
export const asStandingFlight = (flight: PlannedFlight): StandingFlight => ({
  id: flight.id,
  state: flight.state,
  date: flight.date,
  aircraft: flight.aircraft,
  from: flight.from,
  stops: flight.stops.map(({ place, drums }) => ({ place, drums })),
  to: flight.to,
  departs: flight.departs,
  ...(flight.pilot !== null && { pilot: flight.pilot }),
});
