import { describeFlights, type FlightReason, projectScenario, type Scenario } from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import type { IsoDate, Litres } from '@drumline/units';

/** What happens if a flight is declined, said before it is done. */
export interface Consequence {
  readonly flight: string;
  readonly ifDeclined: string;
  readonly protects: FlightReason['protects'];
  /** Each cache that would hold less, with the flight and without it. */
  readonly caches: readonly {
    readonly place: string;
    readonly minimumLitres: Litres;
    readonly criticalLitres: Litres;
    readonly withIt: Levels;
    readonly without: Levels;
  }[];
}

interface Levels {
  readonly lowestLitres: number;
  readonly endLitres: number;
  /** First day that ends below; null: none. */
  readonly belowMinimum: IsoDate | null;
  readonly belowCritical: IsoDate | null;
}

/** Worked out on today's facts with every flight that stands. */
export const consequenceOf = (scenario: Scenario, id: string): Consequence => {
  const described = describeFlights(scenario, scenario.flights, 'operator');
  const flight = described.flights.find((each) => each.id === id);
  const without = projectScenario(
    scenario,
    scenario.flights.filter((each) => each.id !== id),
  );
  const less = described.caches.flatMap((withIt) => {
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
    ifDeclined: flight?.reason.ifDeclined ?? 'It is no part of the days ahead: nothing changes.',
    protects: flight?.reason.protects ?? null,
    caches: less,
  };
};

const levelsOf = ({ usable, dates, minimumLitres, criticalLitres }: CacheProjection): Levels => {
  const ends = usable.slice(1);
  const firstBelow = (limit: number): IsoDate | null =>
    dates[ends.findIndex((level) => level < limit)] ?? null;
  return {
    lowestLitres: Math.min(...ends),
    endLitres: ends.at(-1) ?? 0,
    belowMinimum: firstBelow(minimumLitres),
    belowCritical: firstBelow(criticalLitres),
  };
};
