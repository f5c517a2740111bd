import type { CabinConfiguration, LoadPlace } from './aircraft-type.js';
import { momentNoise } from './balanced-drums.js';
import {
  type Cargo,
  cargoOnLeg,
  type DrumAboard,
  type FlightCabin,
  fuelOnLeg,
  momentOf,
  type Standing,
  weightOf,
} from './cabin.js';
import { momentWindow } from './moment-window.js';

/** The question of which drum stands where, boiled down to sums of moments; all moments in lb in. */
export interface PositionProblem {
  readonly places: readonly LoadPlace[];
  /** The last stop's drums first: they go deepest into the cabin. */
  readonly groups: readonly DropGroup[];
  /** Whether a drum may stand in a place at all: floor limit, cargo in it or in the way. */
  readonly allowed: (drum: DrumAboard, place: LoadPlace) => boolean;
  /** Places that no rule tells apart. */
  readonly alike: (a: LoadPlace, b: LoadPlace) => boolean;
}

/** Drums that come out together, and the legs on which they and the drums of later stops are all that is aboard. */
export interface DropGroup {
  readonly drums: readonly DrumAboard[];
  readonly legs: number;
  /** What the moment of all drums aboard may be on those legs. */
  readonly from: number;
  readonly to: number;
  /** At the stop: moment of everything but drums about the tip arm; null: not published. */
  readonly tipMoment: number | null;
}

/** Boils a flight and its drums down to sums of moments. */
export function positionProblem(
  cabin: FlightCabin,
  configuration: CabinConfiguration,
  drums: readonly DrumAboard[],
): PositionProblem {
  const stops = [...new Set(drums.map(({ offAfterLeg }) => offAfterLeg))].sort((a, b) => b - a);
  const cargo = cabin.cargo.filter(({ place }) => configuration.drumPositions.some(({ id }) => id === place));
  const freeUntil = (place: LoadPlace): number =>
    Math.min(...cargo.filter((load) => load.place === place.id).map(({ firstLeg }) => firstLeg));
  return {
    places: configuration.drumPositions,
    groups: stops.map((stop, i) => dropGroup(cabin, configuration, drums, stop, stops[i + 1] ?? -1)),
    allowed: (drum, place) =>
      drum.weightLb <= place.limitLb &&
      drum.offAfterLeg < freeUntil(place) &&
      !cargoInTheWay(configuration, cargo, drum, place),
    alike: (a, b) =>
      a.armIn === b.armIn &&
      a.limitLb === b.limitLb &&
      a.unloadOrder === b.unloadOrder &&
      freeUntil(a) === freeUntil(b),
  };
}

const cargoInTheWay = (
  configuration: CabinConfiguration,
  cargo: readonly Cargo[],
  { offAfterLeg }: DrumAboard,
  { unloadOrder }: LoadPlace,
): boolean =>
  cargoOnLeg(configuration, cargo, offAfterLeg).some(({ place }) => place.unloadOrder < unloadOrder);

function dropGroup(
  cabin: FlightCabin,
  configuration: CabinConfiguration,
  drums: readonly DrumAboard[],
  stop: number,
  stopBefore: number,
): DropGroup {
  const aboard = drums.filter(({ offAfterLeg }) => offAfterLeg >= stop);
  const legs = Array.from({ length: stop - stopBefore }, (_, i) => stopBefore + 1 + i);
  const windows = legs.map((leg) => drumWindow(cabin, configuration, leg, weightOf(aboard)));
  return {
    // Equal weights stand together, so that swapping them is tried once.
    drums: aboard.filter(({ offAfterLeg }) => offAfterLeg === stop).sort((a, b) => b.weightLb - a.weightLb),
    legs: legs.length,
    from: Math.max(...windows.map(({ from }) => from)) - momentNoise,
    to: Math.min(...windows.map(({ to }) => to)) + momentNoise,
    tipMoment: tipMoment(cabin, configuration, stop),
  };
}

/** What the moment of so many lb of drums may be on a leg, beside its cargo. */
export function drumWindow(
  { type, fuel, cargo }: FlightCabin,
  configuration: CabinConfiguration,
  leg: number,
  drumsLb: number,
) {
  const other = cargoOnLeg(configuration, cargo, leg);
  const { from, to } = momentWindow(type, configuration, fuelOnLeg(fuel, leg), weightOf(other) + drumsLb);
  return { from: from - momentOf(other), to: to - momentOf(other) };
}

function tipMoment(
  { type, fuel, cargo }: FlightCabin,
  configuration: CabinConfiguration,
  leg: number,
): number | null {
  if (type.tipArmIn === null) return null;
  const tipArmIn = type.tipArmIn;
  const other: readonly Standing[] = cargoOnLeg(configuration, cargo, leg);
  return (
    configuration.operatingWeightLb * (configuration.operatingArmIn - tipArmIn) +
    fuelOnLeg(fuel, leg).landingLb * (type.fuelArmIn - tipArmIn) +
    momentOf(other) -
    weightOf(other) * tipArmIn
  );
}
