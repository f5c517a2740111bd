import type { AircraftType, CabinConfiguration, EnvelopePoint } from './aircraft-type.js';
import { envelopeAt } from './envelope.js';

/** Fuel aboard at the moments of one leg at which the balance is looked at. */
export interface FuelMoments {
  /** Before taxi; null on legs that follow another. */
  readonly rampLb: number | null;
  readonly takeoffLb: number;
  readonly landingLb: number;
}

/** Moments in lb in of everything aboard but fuel and aeroplane that keep the balance on a leg. */
export interface MomentWindow {
  readonly from: number;
  readonly to: number;
}

/**
 * What the moment of the load may be on one leg so that the envelope holds at ramp, zero fuel, take-off and landing.
 * Wherever the load stands its weight is the same, so each fuel state gives one window and the leg their overlap.
 * Empty (`from` > `to`) where a weight lies outside the envelope.
 */
export function momentWindow(
  type: AircraftType,
  configuration: CabinConfiguration,
  fuel: FuelMoments,
  loadLb: number,
): MomentWindow {
  const dryLb = configuration.operatingWeightLb + loadLb;
  const emptyMoment = configuration.operatingWeightLb * configuration.operatingArmIn;
  let from = Number.NEGATIVE_INFINITY;
  let to = Number.POSITIVE_INFINITY;
  const narrow = (fuelLb: number, limits: ReturnType<typeof envelopeAt>) => {
    const own = emptyMoment + fuelLb * type.fuelArmIn;
    from = limits ? Math.max(from, limits.forwardIn * (dryLb + fuelLb) - own) : Number.POSITIVE_INFINITY;
    to = limits ? Math.min(to, limits.aftIn * (dryLb + fuelLb) - own) : Number.NEGATIVE_INFINITY;
  };
  for (const fuelLb of [0, fuel.takeoffLb, fuel.landingLb])
    narrow(fuelLb, envelopeAt(type.envelope, dryLb + fuelLb));
  if (fuel.rampLb !== null) narrow(fuel.rampLb, rampLimits(type.envelope, dryLb + fuel.rampLb));
  return { from, to };
}

/** Taxi fuel may lift the ramp weight over the envelope's top, which is a take-off weight: there the top's arms hold. */
export const rampLimits = (envelope: readonly EnvelopePoint[], weightLb: number) =>
  envelopeAt(envelope, Math.min(weightLb, envelope.at(-1)?.weightLb ?? 0));
