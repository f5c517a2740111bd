import { expectedSurface, type SurfaceState } from '@drumline/network';
import { openingStock } from '@drumline/stock';
import {
  daysFrom,
  epochMinutes,
  type IsoDate,
  instantOf,
  kilogramsPerLitre,
  print,
  printNumber,
} from '@drumline/units';
import type { Risk } from '../flight-plan.js';
import { stockOutlook } from '../problem/stock-outlook.js';
import type { Scenario } from '../scenario.js';
import { dayWords, drumWords, listWords } from '../wording.js';
import type { DescribedFlights } from './describe-flights.js';

/** Assumptions and facts that were not used, in plain sentences. */
export function planRemarks(
  scenario: Scenario,
  described: DescribedFlights,
  risk: Risk | null,
): readonly string[] {
  return [
    ...windRemarks(described),
    fuelRemark(scenario),
    ...surfaceRemarks(scenario),
    ...noticeRemarks(scenario),
    ...countRemarks(scenario),
    ...balanceRemarks(scenario, described),
    ...riskRemarks(risk, described),
  ];
}

function windRemarks({ flights }: DescribedFlights): readonly string[] {
  const legs = flights.flatMap((flight) => flight.legs);
  const still = legs.filter(({ windKt }) => windKt === null).length;
  if (still === 0) return [];
  return [
    still === legs.length ? 'Still air on every leg.' : `Still air on ${still} of ${legs.length} legs.`,
  ];
}

function fuelRemark({ policy }: Scenario): string {
  const { contingencyPercent, finalReserveMinutes, roundUpToLb, reference } = policy.fuel;
  const density = print(kilogramsPerLitre(policy.bookDensityKgPerLitre), 'kg/L', 2);
  return `Ramp fuel: contingency ${printNumber(contingencyPercent)} % of the trip, final reserve ${print(finalReserveMinutes, 'min')}, up to the next ${print(roundUpToLb, 'lb')} (${reference}); litres at ${density}.`;
}

/** Strips that a report makes the plan take otherwise than as usual. */
function surfaceRemarks(scenario: Scenario): readonly string[] {
  const hours = { timeZone: scenario.timeZone, ...scenario.policy.flyingDay };
  const surface = expectedSurface(scenario.surfaceReports, scenario.asOf, hours);
  const notKnown = scenario.surfaceReports.filter(({ at }) => epochMinutes(at) > epochMinutes(scenario.asOf));
  return [
    ...scenario.places.flatMap((place) => {
      const states = daysFrom(scenario.firstDay, scenario.days).map((date) => ({
        date,
        state: surface(place, date),
      }));
      const unusual = states.filter(({ state }) => state !== place.surface.expected);
      return unusual.length > 0
        ? [`${place.code} is planned ${spells(unusual)}; else ${place.surface.expected}.`]
        : [];
    }),
    ...notKnown.map(
      ({ place, state, at }) =>
        `${place}: the report "${state}" of ${at} is later than the picture and was not used.`,
    ),
  ];
}

/** "soft on Tue 15 Jun and Wed 16 Jun" */
function spells(days: readonly { readonly date: IsoDate; readonly state: SurfaceState }[]): string {
  const states = [...new Set(days.map(({ state }) => state))];
  return listWords(
    states.map((state) => {
      const dates = days.filter((day) => day.state === state).map(({ date }) => dayWords(date));
      return `${state} on ${dates.length > 3 ? `${dates[0]} to ${dates.at(-1)}` : listWords(dates)}`;
    }),
  );
}

function noticeRemarks({ notices, firstDay, days, timeZone }: Scenario): readonly string[] {
  const from = epochMinutes(instantOf(firstDay, '00:00', timeZone));
  const until = from + days * 1440;
  return notices
    .filter((notice) => epochMinutes(notice.from) < until && epochMinutes(notice.until) > from)
    .map(
      ({ id, source, text, from: since, until: ends }) =>
        `Notice ${id} (${source}), ${since} to ${ends}: ${text}`,
    );
}

function countRemarks(scenario: Scenario): readonly string[] {
  const { picture } = stockOutlook(scenario);
  const places = scenario.caches.map(({ place }) => place);
  return [...openingStock(places, picture, scenario.firstDay).values()].flatMap(({ remarks }) => remarks);
}

function balanceRemarks(scenario: Scenario, { flights }: DescribedFlights): readonly string[] {
  const used = new Set(flights.filter(({ drums }) => drums > 0).map(({ type }) => type));
  const noTip = scenario.aircraftTypes.filter(({ id, tipArmIn }) => used.has(id) && tipArmIn === null);
  const unplaced = flights.filter(
    ({ drums, legs }) =>
      drums > 0 && legs.some(({ drumsAboard, positions }) => drumsAboard > 0 && positions.length === 0),
  );
  return [
    ...(noTip.length > 0
      ? [`Tip arm not published, tail-tipping not checked: type ${listWords(noTip.map(({ id }) => id))}.`]
      : []),
    ...unplaced.map(
      ({ id }) => `${id}: positions of the drums are not worked out (no place is given for its freight).`,
    ),
  ];
}

function riskRemarks(risk: Risk | null, { flights }: DescribedFlights): readonly string[] {
  if (risk === null) return [];
  const drums = flights.reduce((sum, flight) => sum + flight.drums, 0);
  return [
    `Weather: in ${printNumber(risk.belowCritical * 100, 1)} % of ${printNumber(risk.fortnights)} drawn fortnights (seed ${risk.seed}) a cache ends a day below critical; ${printNumber(risk.expectedDrums, 1)} of ${drumWords(drums)} are expected to land.`,
  ];
}
