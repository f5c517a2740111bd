import type { LoadAnswer } from '@drumline/contract';
import { holdOn } from '@drumline/stock';
import type { Board } from '../board/board.service.js';
import { assignDrums } from '../offered/assign-drums.js';
import type { Flight, Load } from '../store/flight.table.js';

type InsteadOfHeld = NonNullable<LoadAnswer['insteadOfHeld']>;

/** The flight with the oldest fit drums in the place of those that are held; null: none of them is held. */
export const insteadOfHeld = (
  board: Board,
  flight: Flight,
  loads: readonly Load[],
): LoadAnswer['insteadOfHeld'] => {
  const { scenario, takenBy } = board;
  const byNumber = new Map(scenario.drums.map((drum) => [drum.number, drum]));
  const isHeld = (number: string | null) => {
    const drum = byNumber.get(number ?? '');
    return drum !== undefined && holdOn(drum, scenario.batches) !== undefined;
  };
  const held = loads.flatMap(({ drum }) => (drum !== null && isHeld(drum) ? [drum] : []));
  if (held.length === 0) return null;
  const kept = flight.stops.map((each, stop) => {
    const own = loads.filter((load) => load.stop === stop);
    const numbers = own.flatMap(({ drum }) => (drum === null || isHeld(drum) ? [] : [drum]));
    return { ...each, drums: own.length, numbers };
  });
  const asked = { ...flight, id: 'instead', stops: kept };
  const found = assignDrums(scenario, [asked], new Set(takenBy.keys())).get('instead') ?? [];
  const numbersAt = (stop: number) =>
    found.flatMap((load) => (load.stop === stop && load.drum !== null ? [load.drum] : []));
  const fit = kept.flatMap(({ numbers }, stop) =>
    numbersAt(stop).filter((number) => !numbers.includes(number)),
  );
  return {
    held,
    fit,
    setAside: fit.length < held.length ? setAsideForOthers(board, flight) : [],
    stops: kept.map(({ place, drums }, stop) => ({ place, drums, numbers: numbersAt(stop) })),
  };
};

/** Drums at the base that would be fit for it, by the flight that they are set aside for: offered, nobody has decided on it. */
const setAsideForOthers = (
  { scenario, takenBy, flights }: Board,
  flight: Flight,
): InsteadOfHeld['setAside'] => {
  const offered = new Set(
    flights.flatMap(({ id, state }) => (state === 'offered' && id !== flight.id ? [id] : [])),
  );
  const firm = [...takenBy].flatMap(([drum, by]) => (offered.has(by) ? [] : [drum]));
  const everyDrum = flight.stops.map(({ place }) => ({ place, drums: scenario.drums.length, numbers: [] }));
  const fitForOne = (stop: (typeof everyDrum)[number]) =>
    assignDrums(scenario, [{ ...flight, id: 'any', stops: [stop] }], new Set(firm)).get('any') ?? [];
  const fit = new Set(everyDrum.flatMap(fitForOne).flatMap(({ drum }) => drum ?? []));
  const byFlight = new Map<string, number>();
  for (const [drum, by] of takenBy)
    if (offered.has(by) && fit.has(drum)) byFlight.set(by, (byFlight.get(by) ?? 0) + 1);
  return [...byFlight]
    .map(([id, drums]) => ({ flight: id, drums }))
    .sort((one, other) => one.flight.localeCompare(other.flight));
};
