import type { AircraftType, CabinConfiguration, LoadPlace } from './aircraft-type.js';
import { type FuelMoments, momentWindow } from './moment-window.js';

/** Rounding noise allowed when moments (lb in) are compared. */
export const momentNoise = 1e-6;

/**
 * The most drums of one planning weight, up to `most`, such that this and every smaller number can stand in some
 * positions that balance on the leg and keep the nose wheel down while they are taken out at its end; -1 when the
 * aeroplane is out of balance without a drum. Freight without a stated place is spread over the freight places as it
 * suits the balance; passengers are not looked at (a leg with passengers takes no drum).
 */
export function balancedDrums(
  type: AircraftType,
  configuration: CabinConfiguration,
  fuel: FuelMoments,
  freightLb: number,
  drumLb: number,
  most: number,
): number {
  const standings = standingsOf(configuration.drumPositions, drumLb, type.tipArmIn);
  const freight = freightMoments(configuration.freightPlaces, freightLb);
  for (let drums = 0; drums <= most; drums++) {
    const window = momentWindow(type, configuration, fuel, freightLb + drums * drumLb);
    const tipRoom = tipMomentRoom(type, configuration, fuel.landingLb, freightLb);
    const fits = (standings[drums] ?? []).some(({ armSum, tipPeak }) => {
      const leastFreight = Math.max(freight.from, window.from - drumLb * armSum);
      const mostFreight = Math.min(freight.to, window.to - drumLb * armSum);
      return (
        leastFreight <= mostFreight + momentNoise && drumLb * tipPeak + leastFreight <= tipRoom + momentNoise
      );
    });
    if (!fits) return drums - 1;
  }
  return most;
}

/** Moment of the load about the datum at which the empty aeroplane with that fuel would sit on its tail. */
function tipMomentRoom(
  type: AircraftType,
  configuration: CabinConfiguration,
  fuelLb: number,
  freightLb: number,
): number {
  if (type.tipArmIn === null) return Number.POSITIVE_INFINITY;
  const own = configuration.operatingWeightLb * (configuration.operatingArmIn - type.tipArmIn);
  return freightLb * type.tipArmIn - own - fuelLb * (type.fuelArmIn - type.tipArmIn);
}

/** A choice of places for equal drums: the sum of their arms, and the worst tail-heavy moment per lb while unloading. */
interface Standing {
  readonly armSum: number;
  /** Largest sum of (arm - tip arm) over the drums still aboard, over all stages of unloading; -Infinity: no tip arm. */
  readonly tipPeak: number;
}

// Tens of thousands of legs share a few cabins: the choices of places are worked out once for each tip arm and weight.
const known = new WeakMap<readonly LoadPlace[], Map<number | null, Map<number, readonly Standing[][]>>>();

function standingsOf(places: readonly LoadPlace[], drumLb: number, tipArmIn: number | null) {
  const byTip = known.get(places) ?? new Map<number | null, Map<number, readonly Standing[][]>>();
  const byWeight = byTip.get(tipArmIn) ?? new Map<number, readonly Standing[][]>();
  const found = byWeight.get(drumLb);
  if (found) return found;
  const strong = places.filter((place) => place.limitLb >= drumLb);
  const standings = listStandings(strong, tipArmIn);
  known.set(places, byTip.set(tipArmIn, byWeight.set(drumLb, standings)));
  return standings;
}

/** By number of drums, the different standings; of those with the same arms only the safest against tipping. */
function listStandings(places: readonly LoadPlace[], tipArmIn: number | null): readonly Standing[][] {
  const lastOutFirst = [...places].sort((a, b) => b.unloadOrder - a.unloadOrder || a.armIn - b.armIn);
  let chosen: Map<number, number>[] = [new Map([[0, tipArmIn === null ? Number.NEGATIVE_INFINITY : 0]])];
  for (const { armIn } of lastOutFirst) {
    const longer: Map<number, number>[] = chosen.map((sums) => new Map(sums));
    longer.push(new Map());
    chosen.forEach((sums, drums) => {
      for (const [sum, peak] of sums) {
        const armSum = sum + armIn;
        const tipPeak = tipArmIn === null ? peak : Math.max(peak, armSum - (drums + 1) * tipArmIn);
        const seen = longer[drums + 1]!.get(armSum);
        if (seen === undefined || tipPeak < seen) longer[drums + 1]!.set(armSum, tipPeak);
      }
    });
    chosen = longer;
  }
  return chosen.map((sums) => [...sums].map(([armSum, tipPeak]) => ({ armSum, tipPeak })));
}

/** Least and greatest moment that so much freight can have, spread over its places within their limits. */
export function freightMoments(places: readonly LoadPlace[], freightLb: number) {
  const fromFront = [...places].sort((a, b) => a.armIn - b.armIn);
  return { from: spread(fromFront, freightLb), to: spread(fromFront.reverse(), freightLb) };
}

function spread(places: readonly LoadPlace[], freightLb: number): number {
  let left = freightLb;
  let moment = 0;
  for (const { armIn, limitLb } of places) {
    const here = Math.min(left, limitLb);
    moment += here * armIn;
    left -= here;
  }
  return moment;
}
