import { type KilogramsPerLitre, kilogramsFromPounds, litres, pounds, volumeOf } from '@drumline/units';
import type { OwnFuel, RouteLoad } from './route-load.js';

/**
 * Litres a flight takes out of stock for itself at the given book density: each planned uplift out of the cache where
 * it is taken, the rest of what the flight burns (taxi and legs) out of the bulk of the base it leaves.
 * Rule "Whose stock own fuel draws" of the conventions.
 */
export function ownFuel({ legs, burnLb }: RouteLoad, density: KilogramsPerLitre): OwnFuel {
  const volume = (fuelLb: number) => volumeOf(kilogramsFromPounds(pounds(fuelLb)), density);
  const uplifts = legs.slice(1).flatMap((leg, i) => {
    const fuelLb = leg.fuelAtTakeoffLb - legs[i]!.fuelAtLandingLb;
    return fuelLb > 0 ? [{ place: leg.from, fuelLb }] : [];
  });
  const upliftedLb = uplifts.reduce((sum, { fuelLb }) => sum + fuelLb, 0);
  return {
    fromBaseLitres: litres(Math.max(0, volume(burnLb - upliftedLb))),
    uplifts: uplifts.map(({ place, fuelLb }) => ({ place, litres: volume(fuelLb) })),
  };
}
