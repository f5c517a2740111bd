export type {
  FillListAnswer,
  PickedDrum,
  PickListAnswer,
  RetestComingAnswer,
} from '../answers/drums/drum-lists.js';
export type { BookedLoadAnswer } from '../answers/flights/booked-load.js';
export type { ConsequenceAnswer } from '../answers/flights/consequence.js';
export type { CardAnswer } from '../answers/flights/flight-card.js';
export type { TouchedByChangeAnswer } from '../answers/flights/touched-flights.js';
export type { BlindMoment } from '../answers/loads/balance.js';
export type { Fallback } from '../answers/loads/go-back.js';
export type {
  CrewSaid,
  LoadAnswer,
  Loading,
  LoadPicture,
  LoadStanding,
  PlannedLoad,
} from '../answers/loads/load.js';
export type { BlindSheet } from '../answers/loads/load-sheet.js';
export type { CheckCodeAnswer, TotalsAnswer } from '../answers/loads/two-totals.js';
export type { MyDay, PhoneDrum, PhoneFlight, PhonePlace, SameReport } from '../answers/phones/my-day.js';
export type { MyPlaces } from '../answers/phones/my-places.js';
export type { LowestBeside, PlanDifferencesAnswer } from '../answers/plans/plan-differences.js';
export type { ListedPlan } from '../answers/plans/plans.js';
export type { StandingPlan } from '../answers/plans/standing-plan.js';
export type { WeekAnswer, WeekBooked, WeekFlight, WeekLanding } from '../answers/plans/week.js';
export type { ProgrammeTotalsAnswer } from '../answers/programmes/programme-totals.js';
export type { CacheAnswer, LevelsAnswer } from '../answers/projections/cache.js';
export type {
  CacheCourse,
  ForeseenForProgramme,
  ProjectionChangeAnswer,
} from '../answers/projections/projection-change.js';
export type { ProjectionAnswer, ProjectionsAnswer } from '../answers/projections/projections.js';
export type { SlingRemedyAnswer } from '../answers/projections/sling-remedies.js';
export * from './flight-acts.js';
export * from './flight-report.js';
export * from './flights-change.js';
export * from './load-requests.js';
export * from './movement-schema.js';
export { type PagePath, pagePaths } from './page-paths.js';
export * from './plan-request.js';
export * from './projection-change.js';
export * from './stock-requests.js';
