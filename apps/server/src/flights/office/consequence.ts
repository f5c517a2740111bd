import type { ConsequenceAnswer } from '@drumline/contract';
import {
  describeOneFlight,
  lowestLevel,
  nothingIfDeclined,
  projectScenario,
  type Scenario,
} from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';

/** What happens if a flight is declined, said before it is done. */
export type Consequence = ConsequenceAnswer;

/** Worked out on today's facts with every flight that stands. */
export const consequenceOf = (scenario: Scenario, id: string): Consequence => {
  const { ifDeclined, protects } =
    describeOneFlight(scenario, scenario.flights, id)?.reason ?? nothingIfDeclined;
  const withAll = projectScenario(scenario, scenario.flights);
  const without = projectScenario(
    scenario,
    scenario.flights.filter((each) => each.id !== id),
  );
  const less = withAll.flatMap((withIt) => {
    const other = without.find(({ place }) => place === withIt.place);
    return other?.usable.some((level, day) => level < (withIt.usable[day] ?? level))
      ? [
          {
            place: withIt.place,
            minimumLitres: withIt.minimumLitres,
            criticalLitres: withIt.criticalLitres,
            withIt: levelsOf(withIt),
            without: levelsOf(other),
          },
        ]
      : [];
  });
  return {
    flight: id,
    ifDeclined,
    protects,
    caches: less,
  };
};

const levelsOf = (projection: CacheProjection) => {
  const { usable, dates, minimumLitres, criticalLitres } = projection;
  const ends = usable.slice(1);
  const firstBelow = (limit: number): IsoDate | null =>
    dates[ends.findIndex((level) => level < limit)] ?? null;
  return {
    lowestLitres: lowestLevel(projection).litres,
    endLitres: ends.at(-1) ?? 0,
    belowMinimum: firstBelow(minimumLitres),
    belowCritical: firstBelow(criticalLitres),
  };
};
