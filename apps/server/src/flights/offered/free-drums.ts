import type { Board } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';
import { assignDrums } from './assign-drums.js';

export type FromBase = Pick<Flight, 'date' | 'departs' | 'fromPlace'>;

/** Drums at the base of a flight that are fit when the plan burns them there and that no flight has, the oldest first. */
export const freeDrums = (
  { scenario, takenBy }: Board,
  flight: FromBase,
  { place, atMost }: { readonly place: string; readonly atMost: number },
): readonly string[] => {
  const request = { ...flight, id: 'free', stops: [{ place, drums: atMost, numbers: [] }] };
  const loads = assignDrums(scenario, [request], new Set(takenBy.keys())).get('free') ?? [];
  return loads.flatMap(({ drum }) => drum ?? []);
};
