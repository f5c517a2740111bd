import { print } from '@drumline/units';
import { type CabinConfiguration, configurationOf } from './aircraft-type.js';
import { type BalanceMoment, balanceMoments, type TipCheck, worstTip } from './balance-moments.js';
import { cargoOnLeg, type FlightCabin, fuelOnLeg, type PlacedDrum, placeOf, type Standing } from './cabin.js';
import { type BalanceFault, blocked, overFloor, takenTwice, withoutPlace } from './loading-faults.js';
import { outsideWords } from './outside-words.js';

export interface BalanceReport {
  readonly holds: boolean;
  readonly moments: readonly BalanceMoment[];
  /** Null: the type's tip arm is not published, so tipping was not checked. */
  readonly tips: readonly TipCheck[] | null;
  readonly faults: readonly BalanceFault[];
}

/**
 * The balance of a loading on every leg: envelope at ramp, zero fuel, take-off and landing, floor limits, drums that
 * block others at a stop, and tipping on the tail while drums are taken out. Arms in inches aft of the datum, unrounded.
 */
export function checkBalance(cabin: FlightCabin, drums: readonly PlacedDrum[]): BalanceReport {
  const configuration = configurationOf(cabin.type, cabin.configuration);
  const legs = cabin.fuel.legs.map((_, leg) => checkLeg(cabin, configuration, drums, leg));
  const faults = legs.flatMap((leg) => leg.faults);
  return {
    holds: faults.length === 0,
    moments: legs.flatMap((leg) => leg.moments),
    tips: cabin.type.tipArmIn === null ? null : legs.flatMap((leg) => leg.tips),
    faults,
  };
}

function checkLeg(
  { type, fuel, cargo }: FlightCabin,
  configuration: CabinConfiguration,
  drums: readonly PlacedDrum[],
  legIndex: number,
) {
  const { from, to } = fuel.legs[legIndex]!;
  const leg = `${from}-${to}`;
  const faults = (kind: BalanceFault['kind'], texts: readonly string[]): BalanceFault[] =>
    texts.map((text) => ({ kind, leg, text }));
  const lost = withoutPlace(configuration, cargo, drums, legIndex);
  if (lost.length > 0) return { moments: [], tips: [], faults: faults('no place', lost) };

  const standing = (placed: readonly PlacedDrum[]): Standing[] =>
    placed.map(({ position, weightLb }) => ({ place: placeOf(configuration, position)!, weightLb }));
  const otherCargo = cargoOnLeg(configuration, cargo, legIndex);
  const leaving = standing(drums.filter(({ offAfterLeg }) => offAfterLeg === legIndex));
  const staying = standing(drums.filter(({ offAfterLeg }) => offAfterLeg > legIndex));
  const aboard = [...otherCargo, ...staying, ...leaving];
  const legFuel = fuelOnLeg(fuel, legIndex);
  const moments = balanceMoments(type, configuration, legFuel, aboard).map((one) => ({ ...one, leg }));
  const tip = worstTip(type, configuration, legFuel.landingLb, aboard, leaving);
  return {
    moments,
    tips: tip ? [{ leg, ...tip }] : [],
    faults: [
      ...faults('place taken', takenTwice(configuration, aboard)),
      ...faults('floor limit', overFloor(aboard)),
      ...faults('envelope', moments.filter(({ inside }) => !inside).map(outside)),
      ...faults('unload order', blocked(configuration, leaving, [...staying, ...otherCargo])),
      ...faults('tail tip', tip && !tip.holds ? [tipped(tip, to)] : []),
    ],
  };
}

const outside = ({ forwardIn, aftIn, ...one }: BalanceMoment): string =>
  forwardIn === null || aftIn === null
    ? `${one.moment}: ${print(one.weightLb, 'lb')} is outside the weights of the envelope`
    : outsideWords({ ...one, forwardIn, aftIn });

const tipped = ({ drumsOut, armIn, tipArmIn }: Omit<TipCheck, 'leg'>, place: string): string =>
  `at ${place} with ${drumsOut} drums out: ${print(armIn, 'in', 1)}, sits on its tail aft of ${print(tipArmIn, 'in', 1)}`;
