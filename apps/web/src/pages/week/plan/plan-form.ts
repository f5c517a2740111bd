import { figure } from '../../../ui/qty.js';
import { isFrozen } from '../board/box-words.js';
import type { WeekFlight } from '../week-read.js';
import type { ListedPlan } from './plan-read.js';

export type EndTarget = ListedPlan['request']['endTarget'];

/** What is asked for, as it is typed. */
export interface PlanForm {
  /** First day whose flights may change. */
  readonly from: string;
  readonly days: string;
  readonly offeredDays: string;
  readonly endTarget: EndTarget;
  /** In whole money. */
  readonly changePrice: string;
  readonly seconds: string;
  readonly note: string;
  /** Frozen flights that the person lets go, and offered ones that this run leaves as they are. */
  readonly letGo: ReadonlySet<string>;
  readonly keep: ReadonlySet<string>;
}

/** What a re-plan may do with the flights that stand. */
export interface Freedoms {
  readonly never: readonly WeekFlight[];
  readonly whenLetGo: readonly WeekFlight[];
  readonly free: readonly WeekFlight[];
}

const standing = (flight: WeekFlight): boolean => !['declined', 'called off', 'idea'].includes(flight.state);
const canBeLetGo = ({ state }: WeekFlight): boolean => state === 'approved' || state === 'given';

export const freedomsOf = (flights: readonly WeekFlight[]): Freedoms => ({
  never: flights.filter((flight) => standing(flight) && isFrozen(flight) && !canBeLetGo(flight)),
  whenLetGo: flights
    .filter(canBeLetGo)
    .toSorted((one, other) => Number(one.needsDecision === null) - Number(other.needsDecision === null)),
  free: flights.filter((flight) => standing(flight) && !isFrozen(flight)),
});

interface Heard {
  readonly place: string;
  readonly state: string;
  readonly at: string;
}

/** "XLOR soft 06:52, XHAS soft 06:40": why a plan is asked for, where something was heard since the last. */
export const heardWords = (heard: readonly Heard[], time: (at: string) => string): string => {
  const latest = new Map(heard.map((report) => [report.place, report]));
  return [...latest.values()].map(({ place, state, at }) => `${place} ${state} ${time(at)}`).join(', ');
};

type Faults = Partial<Record<keyof PlanForm, string>>;

const whole = (text: string, least: number, most: number): boolean =>
  /^\d+$/.test(text.trim()) && Number(text) >= least && Number(text) <= most;

export const faultsOf = (form: PlanForm): Faults => ({
  ...(whole(form.days, 1, 60) ? {} : { days: 'a whole number of days from 1 to 60.' }),
  ...(whole(form.offeredDays, 1, 60) ? {} : { offeredDays: 'a whole number of days from 1 to 60.' }),
  ...(whole(form.changePrice, 0, 10_000_000) ? {} : { changePrice: 'a whole number, 0 or more.' }),
  ...(whole(form.seconds, 1, 600) ? {} : { seconds: 'a whole number of seconds from 1 to 600.' }),
  ...(form.letGo.size > 0 && form.note.trim().length < 3
    ? { note: 'who lets a flight go says why, in a few words.' }
    : {}),
});

/** Body of PUT /api/plans/:id. */
export const requestOf = (form: PlanForm, { free }: Freedoms, today: string) => {
  const frozen = free
    .filter(({ id, date }) => form.keep.has(id) || date < form.from)
    .map(({ id }) => id)
    .filter((id) => !form.letGo.has(id));
  const letGo = [...form.letGo];
  const note = form.note.trim();
  return {
    from: today,
    days: Number(form.days),
    offeredDays: Math.min(Number(form.days), Number(form.offeredDays)),
    endTarget: form.endTarget,
    seconds: Number(form.seconds),
    changePrice: Number(form.changePrice) * 100,
    frozen,
    ...(letGo.length === 0 ? {} : { letGo }),
    ...(note === '' ? {} : { note }),
  };
};

/** "F05 approved, Tue 15, XALD-XLOR-XALD, 6 drums". */
export const standingWords = (
  { id, state, date, route, drums, needsDecision }: WeekFlight,
  day: (date: string) => string,
): string =>
  [
    `${id} ${state}`,
    day(date),
    route.join('-'),
    `${figure(drums)} ${drums === 1 ? 'drum' : 'drums'}`,
    ...(needsDecision === null ? [] : ['needs a decision']),
  ].join(', ');
