export {
  type BookedRoom,
  type BookedSpare,
  bookedRoom,
  bookedSpares,
} from './booked/booked-room.js';
export { mostPassengers, routeOfBooked } from './booked/booked-route.js';
export {
  type ForLanding,
  faultsOfAdding,
  roomByRules,
  spareElsewhere,
  standingWith,
} from './booked/drums-on-booked.js';
export { type CacheOutlook, cacheOutlooks, type FlightToCome, type SlingToCome } from './cache-outlooks.js';
export { bookedFaults } from './check/booked-faults.js';
export { checkFlights } from './check/check-flights.js';
export { type CheckedPlan, checkPlan } from './check/check-plan.js';
export { faultWords } from './check/fault.js';
export { type SortedFaults, sortFaults } from './check/sort-faults.js';
export { type ComparedPlan, comparePlans } from './differences/compare-plans.js';
export { type OpenLine, openLines, withoutLines } from './differences/leave-out.js';
export { type LowestLevel, lowestLevel } from './differences/lowest-level.js';
export { planTotals } from './differences/plan-totals.js';
export type * from './flight-plan.js';
export * from './flight-states/index.js';
export { asStandingFlight } from './flights/as-standing-flight.js';
export { departureWindow, type TimedFlight } from './flights/departure-window.js';
export { type DescribedFlights, describeFlights, describeOneFlight } from './flights/describe-flights.js';
export { drumsLanded } from './flights/drums-landed.js';
export { type PlanFindings, planDocument } from './flights/plan-document.js';
export { isPlannersNumber, plannedTrips } from './flights/planned-trips.js';
export { projectScenario, withLandings } from './flights/project.js';
export { readPlan } from './flights/read-plan.js';
export { type DayFlight, type DaySchedule, type ScheduleClash, scheduleDay } from './flights/schedule-day.js';
export { type CostedFlight, deliveredCosts, foreseenRecharge } from './foreseen-recharge.js';
export { heardSince } from './heard-since.js';
export { type Done, type DrawNotReported, drawsNotReported, leftToDo } from './left-to-do.js';
export { approvalsOnFile } from './load-sheet/approvals.js';
export { crewOfFlight } from './load-sheet/crew-of-flight.js';
export { type LoadOfFlight, loadOfFlight, type PickedDrum } from './load-sheet/load-of-flight.js';
export { plannedBars, plannedLoadOfFlight } from './load-sheet/planned-load.js';
export { type SheetSettings, sheetOfFlight, sheetRequest } from './load-sheet/sheet-of-flight.js';
export { surfaceHeard } from './load-sheet/surface-heard.js';
export { type PayloadRow, payloadTable } from './payload-table.js';
export { type PlanByHand, planByHand } from './plan-by-hand.js';
export { type AfterStage, type PlanOptions, type PlanOutcome, planScenario } from './plan-scenario.js';
export { type PlannedForProgramme, plannedByProgramme } from './planned-by-programme.js';
export { buildProblem } from './problem/build-problem.js';
export { whyNotFit } from './problem/crew-fit.js';
export { type FlyingWindow, flyingWindow } from './problem/flying-window.js';
export { planFromFlights } from './problem/plan-from-flights.js';
export type * from './problem/problem-map.js';
export { stockOutlook } from './problem/stock-outlook.js';
export { type DrawnFor, type ProgrammeTotal, programmeTotals } from './programme-totals.js';
export { ifDeclinedByFlight, nothingIfDeclined } from './reasons/if-declined.js';
export { type FlightQuestion, type WhyNot, whyNot } from './reasons/why-not.js';
export { oneWindow, type WindowFlight } from './risk/one-window.js';
export { riskOfFlights } from './risk/risk-of-flights.js';
export { type SimulationInput, simulate, type WeatherLanding } from './risk/simulate.js';
export type * from './scenario.js';
export {
  type CacheBelowCritical,
  type CacheBelowMinimum,
  cachesBelowCritical,
  cachesBelowMinimum,
} from './shortages/caches-below.js';
export type { Solver } from './shortages/find-blockers.js';
export { notesOfPart, type PlanNotes } from './shortages/notes-of-part.js';
export {
  type LowestLevels,
  type SlingMoved,
  type SlingRemedy,
  slingRemedies,
} from './sling-remedies/sling-remedies.js';
export { stillToCome } from './still-to-come.js';
export { type CacheSuggestion, suggestedMinimums } from './suggested-minimums.js';
export {
  type FewerDrums,
  type FlightCard,
  flightCard,
  type Heard,
  type WhoIsFit,
} from './week/flight-card.js';
export type { LegLimitLine, LegWithLimits } from './week/leg-limits.js';
export { legsToday } from './week/legs-today.js';
export { type ShortBy, type WeekTally, weekTally } from './week/week-tally.js';
export { dayWords, momentWords } from './wording.js';
