import type { AircraftType, EnvelopePoint, LoadPlace } from '@drumline/loading';
import { poundsFromKilograms } from '@drumline/units';
import type { Fault } from '../flight-plan.js';
import { drumWords } from '../wording.js';
import { flightFault } from './fault.js';
import type { FlownLeg } from './recompute-legs.js';
import type { Survey, SurveyedFlight } from './survey.js';

/**
 * Whether the drums of every flight can stand so that each leg balances at zero fuel, at take-off and at landing, the
 * drums of the next stop are nearest the door, and the nose wheel stays down while they are unloaded. Every choice of
 * places is tried. Legs with passengers are not judged, since their seats are not given; freight stands where it suits.
 */
export function checkBalance(survey: Survey): readonly Fault[] {
  const drumLb = poundsFromKilograms(survey.scenario.policy.drum.grossKg);
  return survey.flights
    .filter(({ isFact, legs }) => !isFact && legs[0]!.drums > 0)
    .flatMap((flown) => {
      const unbalanced = firstUnbalancedLeg(flown, drumLb);
      if (!unbalanced) return [];
      return [
        flightFault(
          flown,
          unbalanced,
          `${drumWords(unbalanced.drums)} stand in no places that balance at zero fuel, at take-off and at landing.`,
          'Take another number of drums, or another order of stops.',
        ),
      ];
    });
}

/** Null: the flight balances; else the earliest leg from which no choice of places goes on. */
function firstUnbalancedLeg(flown: SurveyedFlight, drumLb: number): FlownLeg | null {
  const places = flown.configuration.drumPositions.filter((place) => place.limitLb >= drumLb);
  const legs = flown.legs.filter((leg) => leg.drums > 0);
  let reached = 0;
  const goesOn = (index: number, from: readonly LoadPlace[]): boolean => {
    const leg = legs[index];
    if (!leg) return true;
    reached = Math.max(reached, index);
    return choices(from, leg.drums).some(
      (aboard) =>
        canComeOut(from, aboard, index) &&
        legBalances(flown, leg, aboard, drumLb) &&
        goesOn(index + 1, aboard),
    );
  };
  return goesOn(0, places) ? null : legs[reached]!;
}

function* subsets<T>(items: readonly T[], count: number, start = 0): Generator<readonly T[]> {
  if (count === 0) yield [];
  for (let index = start; count > 0 && index <= items.length - count; index++)
    for (const rest of subsets(items, count - 1, index + 1)) yield [items[index]!, ...rest];
}

const choices = <T>(items: readonly T[], count: number): readonly (readonly T[])[] => [
  ...subsets(items, count),
];

/** Drums that left on the way here stood no farther from the door than any that stayed. */
function canComeOut(before: readonly LoadPlace[], staying: readonly LoadPlace[], leg: number): boolean {
  if (leg === 0) return true;
  const nearestStaying = Math.min(...staying.map((place) => place.unloadOrder));
  return before.every((place) => staying.includes(place) || place.unloadOrder <= nearestStaying);
}

const noise = 1e-6;

/** Whether one leg balances with drums in those places; freight stands anywhere in its own places. */
export function legBalances(
  { type, configuration }: SurveyedFlight,
  leg: FlownLeg,
  aboard: readonly LoadPlace[],
  drumLb: number,
): boolean {
  const freight = freightSpread(configuration.freightPlaces, leg.freightLb);
  if (leg.passengers > 0 || !freight) return true;
  const drumMoment = aboard.reduce((sum, place) => sum + place.armIn * drumLb, 0);
  const dry = configuration.operatingWeightLb * configuration.operatingArmIn + drumMoment;
  let least = freight.least;
  let most = freight.most;
  for (const fuelLb of [0, leg.takeoffFuelLb, leg.landingFuelLb]) {
    const weight = leg.zeroFuelLb + fuelLb;
    const arms = armsAt(type.envelope, weight);
    if (!arms) return false;
    const moment = dry + fuelLb * type.fuelArmIn;
    least = Math.max(least, arms.forward * weight - moment);
    most = Math.min(most, arms.aft * weight - moment);
  }
  return least <= most + noise && staysOffItsTail(type, leg, aboard, drumLb, dry - drumMoment, least);
}

function staysOffItsTail(
  type: AircraftType,
  leg: FlownLeg,
  aboard: readonly LoadPlace[],
  drumLb: number,
  emptyMoment: number,
  freightMoment: number,
): boolean {
  if (type.tipArmIn === null) return true;
  const tip = type.tipArmIn;
  const weightBare = leg.zeroFuelLb - leg.drums * drumLb + leg.landingFuelLb;
  const bare = emptyMoment + freightMoment + leg.landingFuelLb * type.fuelArmIn;
  // Drums far from the door are the last aboard: with none, one, two ... of them left the nose must stay down.
  const lastOutFirst = [...aboard].sort(
    (one, other) => other.unloadOrder - one.unloadOrder || one.armIn - other.armIn,
  );
  let weight = weightBare;
  let moment = bare;
  return [null, ...lastOutFirst].every((place) => {
    if (place) {
      weight += drumLb;
      moment += drumLb * place.armIn;
    }
    return moment <= weight * tip + noise;
  });
}

function armsAt(envelope: readonly EnvelopePoint[], weightLb: number) {
  for (const [index, above] of envelope.entries()) {
    if (weightLb > above.weightLb + noise) continue;
    const below = envelope[index - 1] ?? above;
    if (weightLb < below.weightLb - noise) return null;
    const span = above.weightLb - below.weightLb;
    const share = span === 0 ? 1 : (weightLb - below.weightLb) / span;
    return {
      forward: below.forwardIn + share * (above.forwardIn - below.forwardIn),
      aft: below.aftIn + share * (above.aftIn - below.aftIn),
    };
  }
  return null;
}

/** Least and most moment of the freight over its places; null where they do not hold it. */
function freightSpread(places: readonly LoadPlace[], freightLb: number) {
  const fill = (order: readonly LoadPlace[]) => {
    let left = freightLb;
    let moment = 0;
    for (const place of order) {
      const here = Math.min(left, place.limitLb);
      moment += here * place.armIn;
      left -= here;
    }
    return left > noise ? null : moment;
  };
  const fromFront = [...places].sort((one, other) => one.armIn - other.armIn);
  const least = fill(fromFront);
  const most = fill(fromFront.toReversed());
  return least === null || most === null ? null : { least, most };
}
