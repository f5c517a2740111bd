import { type BaseStock } from '@drumline/stock';
import { daysFrom, kilogramsFromPounds, pounds } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { dayWords, drumWords, litreWords } from '../wording.js';
import type { Survey, SurveyedFlight } from './survey.js';

/**
 * Whether every base has the drums ready and the litres that the flights take (conventions, "Drums ready at a base",
 * "Base stock"): a drum filled on a day flies from the next; bulk, filled drums and resupplies up to a day cover the
 * drums taken and the own fuel up to that day.
 */
export function checkBases(survey: Survey): readonly Fault[] {
  return survey.scenario.bases.flatMap((base) => firstShortDay(survey, base));
}

function firstShortDay(survey: Survey, base: BaseStock): readonly Fault[] {
  const { scenario } = survey;
  const fill = scenario.policy.drum.fillLitres;
  const filled = filledDrums(survey, base);
  let taken = 0;
  let ownFuel = 0;
  let fresh = 0;
  let bulk = base.bulkLitres as number;
  for (const [index, date] of daysFrom(scenario.firstDay, scenario.days).entries()) {
    if (index > 0)
      fresh = Math.min(fresh + base.fillDrumsPerDay, base.emptiesFitForUse, Math.floor(bulk / fill));
    for (const resupply of base.resupplies) if (resupply.date === date) bulk += resupply.litres;
    const leaving = survey.flights.filter(
      (flown) => flown.day === index + 1 && flown.legs[0]!.from.code === base.place,
    );
    taken += sum(leaving, drumsOf);
    ownFuel += sum(leaving, (flown) => ownFuelLitres(survey, flown));
    if (leaving.length === 0 || leaving.every((flown) => flown.isFact)) continue;
    const where = `${base.place}, ${dayWords(date)}`;
    const flights = idsOf(leaving);
    const takers = idsOf(leaving.filter((flown) => drumsOf(flown) > 0));
    if (taken > filled + fresh && takers.length > 0)
      return [
        {
          where,
          flights: takers,
          what: `${drumWords(taken)} would have been taken by then; ${filled} stood filled and fit, and ${fresh} more can be filled.`,
          mend: `Take ${drumWords(taken - filled - fresh)} less, later, or from another base.`,
        },
      ];
    const has = filled * fill + bulk;
    const needs = taken * fill + ownFuel;
    if (needs > has)
      return [
        {
          where,
          flights,
          what: `Drums and own fuel would need ${litreWords(Math.ceil(needs))} by then; filled drums, bulk and resupplies come to ${litreWords(Math.floor(has))}.`,
          mend: `Save ${litreWords(Math.ceil(needs - has))}, or have it resupplied before.`,
        },
      ];
  }
  return [];
}

function filledDrums({ scenario }: Survey, base: BaseStock): number {
  const batches = new Map(scenario.batches.map((batch) => [batch.id, batch]));
  return scenario.drums.filter((drum) => {
    const batch = batches.get(drum.batch)!;
    const fit = !drum.held && !batch.held && scenario.firstDay <= batch.retestDue;
    return drum.place === base.place && drum.content === 'filled sealed' && fit;
  }).length;
}

const drumsOf = ({ flight }: SurveyedFlight): number =>
  flight.stops.reduce((drums, stop) => drums + stop.drums, 0);

const idsOf = (flights: readonly SurveyedFlight[]): readonly string[] =>
  flights.map(({ flight }) => flight.id);

const ownFuelLitres = ({ scenario }: Survey, flown: SurveyedFlight): number =>
  kilogramsFromPounds(pounds(flown.burnLb)) / scenario.policy.bookDensityKgPerLitre;

const sum = (flights: readonly SurveyedFlight[], of: (flown: SurveyedFlight) => number): number =>
  flights.reduce((total, flown) => total + of(flown), 0);
