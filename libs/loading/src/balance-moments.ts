import { type Inches, type Pounds, pounds } from '@drumline/units';
import type { AircraftType, CabinConfiguration } from './aircraft-type.js';
import { type fuelOnLeg, outOfTheDoor, type Standing } from './cabin.js';
import { centreOfGravity, envelopeAt, type Mass } from './envelope.js';
import { rampLimits } from './moment-window.js';

export type BalanceMomentName = 'ramp' | 'zero fuel' | 'take-off' | 'landing';

/** Where the centre of gravity lies at one moment of one leg, against the envelope; limits null: weight outside it. */
export interface BalanceMoment extends Mass {
  readonly leg: string;
  readonly moment: BalanceMomentName;
  readonly forwardIn: Inches | null;
  readonly aftIn: Inches | null;
  readonly inside: boolean;
}

/** The tail-heaviest stage of unloading at the end of a leg. */
export interface TipCheck {
  readonly leg: string;
  readonly drumsOut: number;
  readonly armIn: Inches;
  readonly tipArmIn: Inches;
  readonly holds: boolean;
}

/** Rounding noise in inches: an arm on the limit is inside. */
const noise = 1e-9;

/** The centre of gravity of an aeroplane with that load at the moments of one leg. */
export function balanceMoments(
  type: AircraftType,
  configuration: CabinConfiguration,
  fuel: ReturnType<typeof fuelOnLeg>,
  aboard: readonly Standing[],
): Omit<BalanceMoment, 'leg'>[] {
  const dry = dryMasses(configuration, aboard);
  const at = (moment: BalanceMomentName, fuelLb: number): Omit<BalanceMoment, 'leg'> => {
    const total = centreOfGravity([...dry, { weightLb: pounds(fuelLb), armIn: type.fuelArmIn }]);
    const limits =
      moment === 'ramp'
        ? rampLimits(type.envelope, total.weightLb)
        : envelopeAt(type.envelope, total.weightLb);
    return {
      ...total,
      moment,
      forwardIn: limits?.forwardIn ?? null,
      aftIn: limits?.aftIn ?? null,
      inside:
        limits !== null && limits.forwardIn - noise <= total.armIn && total.armIn <= limits.aftIn + noise,
    };
  };
  return [
    ...(fuel.rampLb === null ? [] : [at('ramp', fuel.rampLb)]),
    at('zero fuel', 0),
    at('take-off', fuel.takeoffLb),
    at('landing', fuel.landingLb),
  ];
}

const dryMasses = (configuration: CabinConfiguration, aboard: readonly Standing[]): Mass[] => [
  { weightLb: configuration.operatingWeightLb, armIn: configuration.operatingArmIn },
  ...aboard.map(({ place, weightLb }) => ({ weightLb: pounds(weightLb), armIn: place.armIn })),
];

/** The tail-heaviest stage while the leaving drums are taken out; null: nothing leaves, or no tip arm is published. */
export function worstTip(
  type: AircraftType,
  configuration: CabinConfiguration,
  fuelLb: Pounds,
  aboard: readonly Standing[],
  leaving: readonly Standing[],
): Omit<TipCheck, 'leg'> | null {
  if (type.tipArmIn === null || leaving.length === 0) return null;
  const tipArmIn = type.tipArmIn;
  const out = outOfTheDoor(leaving, tipArmIn);
  const fuel = { weightLb: fuelLb, armIn: type.fuelArmIn };
  const stages = Array.from({ length: out.length + 1 }, (_, drumsOut) => {
    const left = aboard.filter((standing) => !out.slice(0, drumsOut).includes(standing));
    return { drumsOut, armIn: centreOfGravity([...dryMasses(configuration, left), fuel]).armIn };
  });
  const worst = stages.reduce((a, b) => (b.armIn > a.armIn ? b : a));
  return { ...worst, tipArmIn, holds: worst.armIn <= tipArmIn + noise };
}
