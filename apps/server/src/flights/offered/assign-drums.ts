import type { Scenario } from '@drumline/planning';
import { pickDrums } from '@drumline/stock';
import type { ClockTime, IsoDate } from '@drumline/units';
import { plannedUse } from '../office/planned-use.js';
import type { Load } from '../store/flight.table.js';

/** A flight that wants drums. */
export interface DrumRequest {
  readonly id: string;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly fromPlace: string;
  readonly stops: readonly {
    readonly place: string;
    readonly drums: number;
    /** Drums it has, or is to have, by number; more are picked, what is too many is left. */
    readonly numbers: readonly string[];
  }[];
}

/**
 * Loads of the flights, by flight: the drums they name, then the oldest that are still fit when the plan burns them,
 * the earliest flight first; what no drum stands ready for is to be filled (`drum` null).
 */
export const assignDrums = (
  scenario: Scenario,
  requests: readonly DrumRequest[],
  taken: ReadonlySet<string>,
): ReadonlyMap<string, readonly Load[]> => {
  const named = new Set(requests.flatMap(({ stops }) => stops.flatMap(({ numbers }) => numbers)));
  const free = scenario.drums.filter(({ number }) => !taken.has(number) && !named.has(number));
  const inOrder = [...requests].sort((one, other) => whenOf(one).localeCompare(whenOf(other)));
  const wants = inOrder.flatMap(({ id, date, fromPlace, stops }) =>
    stops.map(({ place, drums, numbers }, stop) => ({
      id: `${id} ${stop}`,
      place: fromPlace,
      drums: Math.max(0, drums - numbers.length),
      plannedUse: plannedUse(scenario, place, date),
    })),
  );
  const picks = new Map(pickDrums(wants, free, scenario.batches).map((pick) => [pick.id, pick]));
  return new Map(
    requests.map(({ id, stops }) => {
      const loads = stops.flatMap(({ place, drums, numbers }, stop) => {
        const pick = picks.get(`${id} ${stop}`);
        const picked = pick?.drums.map(({ number }) => number) ?? [];
        const toFill = Array.from({ length: pick?.toFill ?? 0 }, () => null);
        return [...numbers.slice(0, drums), ...picked, ...toFill].map((drum) => ({ stop, place, drum }));
      });
      return [
        id,
        loads.map((load, index) => ({
          flightId: id,
          load: index + 1,
          settled: false,
          position: null,
          toldKg: null,
          ...load,
        })),
      ];
    }),
  );
};

const whenOf = ({ date, departs, id }: DrumRequest): string => `${date} ${departs} ${id}`;
